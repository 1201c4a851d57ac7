<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="vi_VN" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>% of nominal</source>
        <translation type="unfinished">% danh nghĩa</translation>
    </message>
    <message>
        <source>% of the lot in bags</source>
        <translation type="unfinished">% lô vào túi</translation>
    </message>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 SẢN PHẨM</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation type="unfinished">1 túi</translation>
    </message>
    <message>
        <source>1 run was purged on {day}, export {folder}</source>
        <translation type="unfinished">1 đợt đã xóa ngày {day}, bản lưu {folder}</translation>
    </message>
    <message>
        <source>100 % together</source>
        <translation type="unfinished">tổng 100 %</translation>
    </message>
    <message>
        <source>2 LOTS</source>
        <translation type="unfinished">2 LÔ HÀNG</translation>
    </message>
    <message>
        <source>3 CREW</source>
        <translation type="unfinished">3 TỔ</translation>
    </message>
    <message>
        <source>A code was scanned, but no field waits for one: open the page it is for</source>
        <translation type="unfinished">Đã quét mã nhưng không ô nào chờ mã: mở trang cần mã đó</translation>
    </message>
    <message>
        <source>A copy of {sscc} comes.</source>
        <translation type="unfinished">Đang in bản sao {sscc}.</translation>
    </message>
    <message>
        <source>A manager approves a proposal as a new version of the product.</source>
        <translation type="unfinished">Quản lý duyệt đề xuất thành bản mới của sản phẩm.</translation>
    </message>
    <message>
        <source>A new scale: connect it, touch LOOK, then check it with the test weights.</source>
        <translation type="unfinished">Cân mới: nối vào, chạm XEM, rồi kiểm tra bằng quả cân chuẩn.</translation>
    </message>
    <message>
        <source>A scale that is to be asked needs its request above.</source>
        <translation type="unfinished">Cân phải hỏi thì cần câu hỏi ở trên.</translation>
    </message>
    <message>
        <source>ADD</source>
        <translation type="unfinished">THÊM</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">CẢNH BÁO</translation>
    </message>
    <message>
        <source>ALL</source>
        <translation type="unfinished">TẤT CẢ</translation>
    </message>
    <message>
        <source>ALL DAYS</source>
        <translation type="unfinished">MỌI NGÀY</translation>
    </message>
    <message>
        <source>ALL WEIGHED</source>
        <translation type="unfinished">ĐÃ CÂN HẾT</translation>
    </message>
    <message>
        <source>APPLIED</source>
        <translation type="unfinished">ĐÃ DÁN</translation>
    </message>
    <message>
        <source>APPROVE</source>
        <translation type="unfinished">DUYỆT</translation>
    </message>
    <message>
        <source>ASKED</source>
        <translation type="unfinished">ĐÃ HỎI</translation>
    </message>
    <message>
        <source>AT REST</source>
        <translation type="unfinished">ĐỨNG YÊN</translation>
    </message>
    <message>
        <source>ATTEND</source>
        <translation type="unfinished">CHÚ Ý</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation type="unfinished">Đang cộng …</translation>
    </message>
    <message>
        <source>An open run keeps the dates it was opened with.</source>
        <translation type="unfinished">Đợt đang mở giữ ngày đã đặt khi mở.</translation>
    </message>
    <message>
        <source>Arrived at</source>
        <translation type="unfinished">Nhiệt độ khi đến</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation type="unfinished">QUAY LẠI</translation>
    </message>
    <message>
        <source>BAG AGAIN</source>
        <translation type="unfinished">LÀM LẠI TÚI</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">ĐẶT TÚI</translation>
    </message>
    <message>
        <source>BAGS</source>
        <translation type="unfinished">TÚI</translation>
    </message>
    <message>
        <source>BEFORE</source>
        <translation type="unfinished">TRƯỚC</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">THÙNG LOẠI</translation>
    </message>
    <message>
        <source>BLEND LOT</source>
        <translation type="unfinished">LÔ TRỘN</translation>
    </message>
    <message>
        <source>BLENDS</source>
        <translation type="unfinished">LÔ TRỘN</translation>
    </message>
    <message>
        <source>BLOCKED {count}</source>
        <translation type="unfinished">BỊ CHẶN {count}</translation>
    </message>
    <message>
        <source>BY DAY</source>
        <translation type="unfinished">THEO NGÀY</translation>
    </message>
    <message>
        <source>BY HOUR</source>
        <translation type="unfinished">THEO GIỜ</translation>
    </message>
    <message>
        <source>BY POSITION</source>
        <translation type="unfinished">THEO VỊ TRÍ</translation>
    </message>
    <message>
        <source>BY PRODUCT</source>
        <translation type="unfinished">THEO SẢN PHẨM</translation>
    </message>
    <message>
        <source>Bag {serial} and {count} around it</source>
        <translation type="unfinished">Túi {serial} và {count} túi quanh nó</translation>
    </message>
    <message>
        <source>Bag {serial} was not set aside: LOOK UP shows it.</source>
        <translation type="unfinished">Túi {serial} không bị để riêng: xem ở TRA CỨU.</translation>
    </message>
    <message>
        <source>Bags since the last good check of the scale before are covered by no check of it any more: QA decides about them.</source>
        <translation type="unfinished">Các túi từ lần kiểm tra tốt cuối của cân cũ không còn được kiểm chứng: QA quyết định.</translation>
    </message>
    <message>
        <source>Below T1</source>
        <translation type="unfinished">Dưới T1</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">Dùng tốt nhất trước</translation>
    </message>
    <message>
        <source>Best before {day}</source>
        <translation type="unfinished">Tốt nhất trước {day}</translation>
    </message>
    <message>
        <source>By {what}</source>
        <translation type="unfinished">Theo {what}</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">GỌI HỖ TRỢ</translation>
    </message>
    <message>
        <source>CAME BACK</source>
        <translation type="unfinished">TRẢ VỀ</translation>
    </message>
    <message>
        <source>CASE</source>
        <translation type="unfinished">THÙNG</translation>
    </message>
    <message>
        <source>CASES</source>
        <translation type="unfinished">THÙNG</translation>
    </message>
    <message>
        <source>CHANGE</source>
        <translation type="unfinished">THAY ĐỔI</translation>
    </message>
    <message>
        <source>CHANGE, CLOCK</source>
        <translation type="unfinished">THAY ĐỔI, ĐỒNG HỒ</translation>
    </message>
    <message>
        <source>CHECK</source>
        <translation type="unfinished">KIỂM</translation>
    </message>
    <message>
        <source>CHECK IT</source>
        <translation type="unfinished">KIỂM TRA NÓ</translation>
    </message>
    <message>
        <source>CHECK THE SCALE</source>
        <translation type="unfinished">KIỂM TRA CÂN</translation>
    </message>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished">KIỂM TRA</translation>
    </message>
    <message>
        <source>CHECKS (F4) settles it.</source>
        <translation type="unfinished">Xử lý ở KIỂM TRA (F4).</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">XÓA</translation>
    </message>
    <message>
        <source>CLEAR LINE</source>
        <translation type="unfinished">DỌN DÂY CHUYỀN</translation>
    </message>
    <message>
        <source>CLEAR TARE</source>
        <translation type="unfinished">XÓA BÌ</translation>
    </message>
    <message>
        <source>CLOCK</source>
        <translation type="unfinished">ĐỒNG HỒ</translation>
    </message>
    <message>
        <source>CLOSE PALLET</source>
        <translation type="unfinished">ĐÓNG PALLET</translation>
    </message>
    <message>
        <source>COOLER TEMPERATURE</source>
        <translation type="unfinished">NHIỆT ĐỘ KHO LẠNH</translation>
    </message>
    <message>
        <source>COUNT</source>
        <translation type="unfinished">ĐẾM</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">ĐÃ ĐẾM</translation>
    </message>
    <message>
        <source>CUSTOMERS</source>
        <translation type="unfinished">KHÁCH HÀNG</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">NGÀY CẮT</translation>
    </message>
    <message>
        <source>Came</source>
        <translation type="unfinished">Đã đến</translation>
    </message>
    <message>
        <source>Case {sscc} is filled; its label comes.</source>
        <translation type="unfinished">Thùng {sscc} đã đầy; đang in nhãn.</translation>
    </message>
    <message>
        <source>Checked {stage}. Bags wait meanwhile.</source>
        <translation type="unfinished">Kiểm tra: {stage}. Túi phải chờ.</translation>
    </message>
    <message>
        <source>Choose cells, then say what they are: VALUE and, where they are there, UNIT, FLAG, CHECK. Type the digits of the scale's display, its unit, and what else is true now.</source>
        <translation type="unfinished">Chọn ô, rồi nói là gì: GIÁ TRỊ và, nếu có, ĐƠN VỊ, CỜ, KIỂM. Gõ chữ số trên cân, đơn vị và điều gì khác đang đúng.</translation>
    </message>
    <message>
        <source>Choose the cells first: touch them, or use the arrow keys.</source>
        <translation type="unfinished">Chọn ô trước: chạm, hoặc dùng phím mũi tên.</translation>
    </message>
    <message>
        <source>Commands of level 2</source>
        <translation type="unfinished">Lệnh mức 2</translation>
    </message>
    <message>
        <source>Correct the decision about {bags}?</source>
        <translation type="unfinished">Sửa quyết định về {bags}?</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">QUYẾT ĐỊNH</translation>
    </message>
    <message>
        <source>DESTROYED</source>
        <translation type="unfinished">ĐÃ HỦY</translation>
    </message>
    <message>
        <source>DIAGNOSE</source>
        <translation type="unfinished">CHẨN ĐOÁN</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">KHÔNG KÝ</translation>
    </message>
    <message>
        <source>DOES NOT SUIT</source>
        <translation type="unfinished">KHÔNG HỢP</translation>
    </message>
    <message>
        <source>DOUBT</source>
        <translation type="unfinished">NGHI NGỜ</translation>
    </message>
    <message>
        <source>DOWNGRADED</source>
        <translation type="unfinished">HẠ CẤP</translation>
    </message>
    <message>
        <source>DRAW</source>
        <translation type="unfinished">RÚT MẪU</translation>
    </message>
    <message>
        <source>DUMP</source>
        <translation type="unfinished">ĐỔ BỎ</translation>
    </message>
    <message>
        <source>DUMPED</source>
        <translation type="unfinished">ĐÃ ĐỔ BỎ</translation>
    </message>
    <message>
        <source>Decided: {decision}.</source>
        <translation type="unfinished">Đã quyết định: {decision}.</translation>
    </message>
    <message>
        <source>Disk</source>
        <translation type="unfinished">Ổ đĩa</translation>
    </message>
    <message>
        <source>Due at {time}.</source>
        <translation type="unfinished">Đến hạn lúc {time}.</translation>
    </message>
    <message>
        <source>EMPTY</source>
        <translation type="unfinished">TRỐNG</translation>
    </message>
    <message>
        <source>EMPTY BAG</source>
        <translation type="unfinished">TÚI RỖNG</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">DỌN ĐĨA</translation>
    </message>
    <message>
        <source>EMPTY THE PAN</source>
        <translation type="unfinished">BỎ HẾT KHỎI ĐĨA</translation>
    </message>
    <message>
        <source>END</source>
        <translation type="unfinished">KẾT THÚC</translation>
    </message>
    <message>
        <source>END RUN</source>
        <translation type="unfinished">ĐÓNG ĐỢT</translation>
    </message>
    <message>
        <source>ENTER</source>
        <translation type="unfinished">NHẬP</translation>
    </message>
    <message>
        <source>EVIDENCE</source>
        <translation type="unfinished">BẰNG CHỨNG</translation>
    </message>
    <message>
        <source>Everything the scale sends goes into {file}</source>
        <translation type="unfinished">Mọi thứ cân gửi đều vào {file}</translation>
    </message>
    <message>
        <source>FAILED</source>
        <translation type="unfinished">KHÔNG ĐẠT</translation>
    </message>
    <message>
        <source>FAILED: check again</source>
        <translation type="unfinished">KHÔNG ĐẠT: kiểm tra lại</translation>
    </message>
    <message>
        <source>FAILING</source>
        <translation type="unfinished">KHÔNG ĐẠT</translation>
    </message>
    <message>
        <source>FAILS</source>
        <translation type="unfinished">KHÔNG ĐẠT</translation>
    </message>
    <message>
        <source>FILL CASE</source>
        <translation type="unfinished">ĐẦY THÙNG</translation>
    </message>
    <message>
        <source>FILTER</source>
        <translation type="unfinished">LỌC</translation>
    </message>
    <message>
        <source>FINISHING</source>
        <translation type="unfinished">SẮP HẾT</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">NHÃN ĐẦU</translation>
    </message>
    <message>
        <source>FLAG</source>
        <translation type="unfinished">CỜ</translation>
    </message>
    <message>
        <source>Fri {number}</source>
        <translation type="unfinished">Thứ 6 {number}</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished">Thứ Sáu</translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished">Từ ai</translation>
    </message>
    <message>
        <source>From the recording {file}: TAKE a line.</source>
        <translation type="unfinished">Từ bản ghi {file}: LẤY một dòng.</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">BỎ DỞ</translation>
    </message>
    <message>
        <source>GIVEN AWAY</source>
        <translation type="unfinished">CHO DƯ</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">TIẾP TỤC</translation>
    </message>
    <message>
        <source>GOOD</source>
        <translation type="unfinished">ĐẠT</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation type="unfinished">Cho dư</translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation type="unfinished">Đã bỏ.</translation>
    </message>
    <message>
        <source>Given up: nothing is recorded.</source>
        <translation type="unfinished">Đã bỏ: không ghi gì.</translation>
    </message>
    <message>
        <source>Good bags: {count} of {order}, set aside: {aside}</source>
        <translation type="unfinished">Túi đạt: {count}/{order}, để riêng: {aside}</translation>
    </message>
    <message>
        <source>Good bags: {count}, set aside: {aside}</source>
        <translation type="unfinished">Túi đạt: {count}, để riêng: {aside}</translation>
    </message>
    <message>
        <source>HELD</source>
        <translation type="unfinished">BỊ GIỮ</translation>
    </message>
    <message>
        <source>HISTORY</source>
        <translation type="unfinished">LỊCH SỬ</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation type="unfinished">GIỮ LẠI</translation>
    </message>
    <message>
        <source>HOLD IT</source>
        <translation type="unfinished">GIỮ NÓ</translation>
    </message>
    <message>
        <source>HOLD STAYS</source>
        <translation type="unfinished">VẪN GIỮ</translation>
    </message>
    <message>
        <source>HOLD STILL</source>
        <translation type="unfinished">GIỮ YÊN</translation>
    </message>
    <message>
        <source>HOLDS</source>
        <translation type="unfinished">LỆNH GIỮ</translation>
    </message>
    <message>
        <source>HOUSE</source>
        <translation type="unfinished">TRONG KHO</translation>
    </message>
    <message>
        <source>Held: {what}</source>
        <translation type="unfinished">Bị giữ: {what}</translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished">Ở đây</translation>
    </message>
    <message>
        <source>How many bags have which net. Touch a bar to read it.</source>
        <translation type="unfinished">Bao nhiêu túi có tịnh nào. Chạm một cột để đọc.</translation>
    </message>
    <message>
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">TÔI ĐÃ THẤY</translation>
    </message>
    <message>
        <source>I see it there</source>
        <translation type="unfinished">tôi thấy trên túi</translation>
    </message>
    <message>
        <source>IN DOUBT</source>
        <translation type="unfinished">CHƯA CHẮC</translation>
    </message>
    <message>
        <source>IN USE.</source>
        <translation type="unfinished">ĐANG DÙNG.</translation>
    </message>
    <message>
        <source>INBOX</source>
        <translation type="unfinished">VIỆC CHỜ</translation>
    </message>
    <message>
        <source>INPUT LOT</source>
        <translation type="unfinished">LÔ ĐẦU VÀO</translation>
    </message>
    <message>
        <source>INPUT LOTS</source>
        <translation type="unfinished">LÔ ĐẦU VÀO</translation>
    </message>
    <message>
        <source>INSPECTOR</source>
        <translation type="unfinished">THANH TRA</translation>
    </message>
    <message>
        <source>In the settings</source>
        <translation type="unfinished">Trong cài đặt</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">Đang dùng</translation>
    </message>
    <message>
        <source>Is the scale on, and are baud rate and parity those of its menu?</source>
        <translation type="unfinished">Cân đã bật chưa, tốc độ baud và chẵn lẻ có như trong menu của cân?</translation>
    </message>
    <message>
        <source>Issued − used − spoiled − samples − returned</source>
        <translation type="unfinished">Cấp − dùng − hỏng − mẫu − trả</translation>
    </message>
    <message>
        <source>It cannot be released</source>
        <translation type="unfinished">Chưa giải phóng được</translation>
    </message>
    <message>
        <source>Its lines</source>
        <translation type="unfinished">Các dòng của nó</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation type="unfinished">LƯU</translation>
    </message>
    <message>
        <source>KEEP CHART</source>
        <translation type="unfinished">LƯU BIỂU ĐỒ</translation>
    </message>
    <message>
        <source>KEEP LINE</source>
        <translation type="unfinished">GIỮ DÒNG</translation>
    </message>
    <message>
        <source>Kept as {name} (PNG, SVG, CSV) in {folder}</source>
        <translation type="unfinished">Đã lưu là {name} (PNG, SVG, CSV) trong {folder}</translation>
    </message>
    <message>
        <source>Key in how many bags lie in the bin.</source>
        <translation type="unfinished">Nhập số túi trong thùng loại.</translation>
    </message>
    <message>
        <source>LABEL ON BAG</source>
        <translation type="unfinished">NHÃN TRÊN TÚI</translation>
    </message>
    <message>
        <source>LABEL ROLL</source>
        <translation type="unfinished">CUỘN NHÃN</translation>
    </message>
    <message>
        <source>LABEL {state}</source>
        <translation type="unfinished">NHÃN {state}</translation>
    </message>
    <message>
        <source>LABELS</source>
        <translation type="unfinished">NHÃN</translation>
    </message>
    <message>
        <source>LABELS (F5) settles it.</source>
        <translation type="unfinished">Xử lý ở NHÃN (F5).</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">NGÔN NGỮ</translation>
    </message>
    <message>
        <source>LAST</source>
        <translation type="unfinished">CUỐI</translation>
    </message>
    <message>
        <source>LAST 7 DAYS</source>
        <translation type="unfinished">7 NGÀY QUA</translation>
    </message>
    <message>
        <source>LAST DAY</source>
        <translation type="unfinished">NGÀY QUA</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">TỔ TRƯỞNG</translation>
    </message>
    <message>
        <source>LEAVE</source>
        <translation type="unfinished">THOÁT</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">NHẤC TÚI</translation>
    </message>
    <message>
        <source>LIFT THE BAG OFF</source>
        <translation type="unfinished">NHẤC TÚI RA</translation>
    </message>
    <message>
        <source>LIFT THE WEIGHTS OFF</source>
        <translation type="unfinished">NHẤC QUẢ CÂN RA</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">DÂY CHUYỀN</translation>
    </message>
    <message>
        <source>LISTEN</source>
        <translation type="unfinished">NGHE</translation>
    </message>
    <message>
        <source>LISTEN to the scale, or open a RECORDING; put a known weight on the pan and TAKE a line.</source>
        <translation type="unfinished">NGHE cân, hoặc mở BẢN GHI; đặt vật biết khối lượng và LẤY một dòng.</translation>
    </message>
    <message>
        <source>LOAD</source>
        <translation type="unfinished">NẠP</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">ĐẶT LẠI</translation>
    </message>
    <message>
        <source>LOAD CLEAN</source>
        <translation type="unfinished">NẠP SẠCH</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation type="unfinished">XEM</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">TRA CỨU</translation>
    </message>
    <message>
        <source>LOSSES</source>
        <translation type="unfinished">HAO HỤT</translation>
    </message>
    <message>
        <source>LOT</source>
        <translation type="unfinished">LÔ HÀNG</translation>
    </message>
    <message>
        <source>LOTS</source>
        <translation type="unfinished">LÔ HÀNG</translation>
    </message>
    <message>
        <source>Label roll {roll}: a difference of {difference} is open</source>
        <translation type="unfinished">Cuộn nhãn {roll}: còn chênh {difference}</translation>
    </message>
    <message>
        <source>Label {serial} is in doubt</source>
        <translation type="unfinished">Nhãn {serial} chưa chắc chắn</translation>
    </message>
    <message>
        <source>Labels in doubt</source>
        <translation type="unfinished">Nhãn chưa chắc chắn</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">Ngôn ngữ màn hình đóng gói</translation>
    </message>
    <message>
        <source>Languages</source>
        <translation type="unfinished">Ngôn ngữ</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished">Tổ trưởng</translation>
    </message>
    <message>
        <source>Lead is wanted at this line</source>
        <translation type="unfinished">Dây chuyền này cần tổ trưởng</translation>
    </message>
    <message>
        <source>Lead {who}, on the scale {person}</source>
        <translation type="unfinished">Tổ trưởng {who}, người cân {person}</translation>
    </message>
    <message>
        <source>Line stands: {reason}. Look, then touch</source>
        <translation type="unfinished">Dây chuyền dừng: {reason}. Xem rồi chạm</translation>
    </message>
    <message>
        <source>Look, then touch</source>
        <translation type="unfinished">Xem rồi chạm</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation type="unfinished">Đang tìm …</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished">Lô</translation>
    </message>
    <message>
        <source>Lot {lot} is held, and every bag that may hold some of it.</source>
        <translation type="unfinished">Lô {lot} bị giữ, cùng mọi túi có thể chứa lô này.</translation>
    </message>
    <message>
        <source>Lot {lot} is released, and the bags that were held with it.</source>
        <translation type="unfinished">Lô {lot} được giải phóng, cùng các túi bị giữ theo.</translation>
    </message>
    <message>
        <source>Lot {lot} received and held.</source>
        <translation type="unfinished">Đã nhận và giữ lô {lot}.</translation>
    </message>
    <message>
        <source>Lot {lot} received.</source>
        <translation type="unfinished">Đã nhận lô {lot}.</translation>
    </message>
    <message>
        <source>Lot {lot}: {move}, on record.</source>
        <translation type="unfinished">Lô {lot}: {move}, đã ghi.</translation>
    </message>
    <message>
        <source>MANAGER</source>
        <translation type="unfinished">QUẢN LÝ</translation>
    </message>
    <message>
        <source>METAL DETECTOR</source>
        <translation type="unfinished">MÁY DÒ KIM LOẠI</translation>
    </message>
    <message>
        <source>MISMATCH</source>
        <translation type="unfinished">KHÔNG KHỚP</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">THÊM NỮA</translation>
    </message>
    <message>
        <source>MOVING</source>
        <translation type="unfinished">ĐANG ĐỘNG</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation type="unfinished">Hãng và kiểu</translation>
    </message>
    <message>
        <source>Max / e = {number}, class {code} allows {least} to {most}</source>
        <translation type="unfinished">Max / e = {number}, cấp {code} cho {least} đến {most}</translation>
    </message>
    <message>
        <source>Mean needed</source>
        <translation type="unfinished">TB cần đạt</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Khối lượng tịnh trung bình {mass}</translation>
    </message>
    <message>
        <source>Mean so far</source>
        <translation type="unfinished">TB đến nay</translation>
    </message>
    <message>
        <source>Mon {number}</source>
        <translation type="unfinished">Thứ 2 {number}</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished">Thứ Hai</translation>
    </message>
    <message>
        <source>NEAR MAX</source>
        <translation type="unfinished">GẦN MỨC TỐI ĐA</translation>
    </message>
    <message>
        <source>NEAR THE TARE</source>
        <translation type="unfinished">GẦN MỨC BÌ</translation>
    </message>
    <message>
        <source>NET</source>
        <translation type="unfinished">TỊNH</translation>
    </message>
    <message>
        <source>NEVER CAME OUT</source>
        <translation type="unfinished">KHÔNG RA</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">LỆNH GIỮ MỚI</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation type="unfinished">TIẾP</translation>
    </message>
    <message>
        <source>NEXT CASE</source>
        <translation type="unfinished">THÙNG TIẾP</translation>
    </message>
    <message>
        <source>NO FORECAST</source>
        <translation type="unfinished">CHƯA DỰ BÁO</translation>
    </message>
    <message>
        <source>NO MARKS</source>
        <translation type="unfinished">BỎ DẤU</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">MẤT SỐ CÂN</translation>
    </message>
    <message>
        <source>NO RUN IS OPEN</source>
        <translation type="unfinished">CHƯA MỞ ĐỢT</translation>
    </message>
    <message>
        <source>NOBODY</source>
        <translation type="unfinished">KHÔNG AI</translation>
    </message>
    <message>
        <source>NOMINAL</source>
        <translation type="unfinished">DANH NGHĨA</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation type="unfinished">KHÔNG</translation>
    </message>
    <message>
        <source>NOT MET</source>
        <translation type="unfinished">KHÔNG ĐẠT</translation>
    </message>
    <message>
        <source>NOW</source>
        <translation type="unfinished">BÂY GIỜ</translation>
    </message>
    <message>
        <source>NUMBERS</source>
        <translation type="unfinished">SỐ LIỆU</translation>
    </message>
    <message>
        <source>Next: {what}</source>
        <translation type="unfinished">Tiếp theo: {what}</translation>
    </message>
    <message>
        <source>No alarm stands. What needs nobody is kept as an event.</source>
        <translation type="unfinished">Không có cảnh báo. Việc không cần ai xử lý được lưu là sự kiện.</translation>
    </message>
    <message>
        <source>No bag is on record yet.</source>
        <translation type="unfinished">Chưa ghi túi nào.</translation>
    </message>
    <message>
        <source>No bag is suspect.</source>
        <translation type="unfinished">Không có túi nghi ngờ.</translation>
    </message>
    <message>
        <source>No case stands here</source>
        <translation type="unfinished">Không có thùng ở đây</translation>
    </message>
    <message>
        <source>No description yet</source>
        <translation type="unfinished">Chưa có mô tả</translation>
    </message>
    <message>
        <source>No good bag yet</source>
        <translation type="unfinished">Chưa có túi đạt</translation>
    </message>
    <message>
        <source>No label is in doubt</source>
        <translation type="unfinished">Không có nhãn nghi ngờ</translation>
    </message>
    <message>
        <source>No lot is on the line: scan one.</source>
        <translation type="unfinished">Không có lô trên dây chuyền: hãy quét.</translation>
    </message>
    <message>
        <source>No roll is in</source>
        <translation type="unfinished">Chưa có cuộn</translation>
    </message>
    <message>
        <source>No run is open</source>
        <translation type="unfinished">Chưa mở đợt nào</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">Chưa mở đợt nào</translation>
    </message>
    <message>
        <source>No target can be proposed: {why}.</source>
        <translation type="unfinished">Không đề xuất được mục tiêu: {why}.</translation>
    </message>
    <message>
        <source>No whole line was heard yet.</source>
        <translation type="unfinished">Chưa nghe được dòng nào trọn vẹn.</translation>
    </message>
    <message>
        <source>Not kept: {why}, {folder}</source>
        <translation type="unfinished">Chưa lưu: {why}, {folder}</translation>
    </message>
    <message>
        <source>Not recorded: {why}</source>
        <translation type="unfinished">Chưa ghi: {why}</translation>
    </message>
    <message>
        <source>Nothing is held or packed.</source>
        <translation type="unfinished">Không có gì bị giữ hay đã đóng.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">Không có gì cần làm.</translation>
    </message>
    <message>
        <source>Nothing keeps it.</source>
        <translation type="unfinished">Không có gì cản.</translation>
    </message>
    <message>
        <source>Nothing waits for a signature.</source>
        <translation type="unfinished">Không có gì chờ ký.</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">CỦA NGƯỜI ĐÓNG GÓI</translation>
    </message>
    <message>
        <source>OLD ONE DESTROYED</source>
        <translation type="unfinished">NHÃN CŨ ĐÃ HỦY</translation>
    </message>
    <message>
        <source>ON ITS BAG</source>
        <translation type="unfinished">TRÊN TÚI</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation type="unfinished">MỞ</translation>
    </message>
    <message>
        <source>OPEN ONLY</source>
        <translation type="unfinished">CHỈ CÒN MỞ</translation>
    </message>
    <message>
        <source>ORDER DONE</source>
        <translation type="unfinished">ĐỦ ĐƠN</translation>
    </message>
    <message>
        <source>OVER</source>
        <translation type="unfinished">QUÁ TẢI</translation>
    </message>
    <message>
        <source>OVERDUE {minutes} min</source>
        <translation type="unfinished">TRỄ {minutes} min</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}</source>
        <translation type="unfinished">Đã ghi {bags}, đếm được {count}</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} fewer. Why?</source>
        <translation type="unfinished">Đã ghi {bags}, đếm được {count}: thiếu {difference}. Vì sao?</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} more. Why?</source>
        <translation type="unfinished">Đã ghi {bags}, đếm được {count}: thừa {difference}. Vì sao?</translation>
    </message>
    <message>
        <source>On record; it holds from the next run on.</source>
        <translation type="unfinished">Đã ghi; có hiệu lực từ đợt tới.</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished">Người cân</translation>
    </message>
    <message>
        <source>Open a run first: a check is made at its loads.</source>
        <translation type="unfinished">Hãy mở đợt trước: kiểm tra theo tải của đợt.</translation>
    </message>
    <message>
        <source>Order: open</source>
        <translation type="unfinished">Đơn: không giới hạn</translation>
    </message>
    <message>
        <source>Order: {count} bags</source>
        <translation type="unfinished">Đơn: {count} túi</translation>
    </message>
    <message>
        <source>PACKED ON</source>
        <translation type="unfinished">NGÀY ĐÓNG</translation>
    </message>
    <message>
        <source>PACKER</source>
        <translation type="unfinished">ĐÓNG GÓI</translation>
    </message>
    <message>
        <source>PALLET</source>
        <translation type="unfinished">PALLET</translation>
    </message>
    <message>
        <source>PALLETS</source>
        <translation type="unfinished">PALLET</translation>
    </message>
    <message>
        <source>PAN WHEN EMPTY</source>
        <translation type="unfinished">ĐĨA KHI TRỐNG</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation type="unfinished">PHIẾU</translation>
    </message>
    <message>
        <source>PASSED</source>
        <translation type="unfinished">ĐẠT</translation>
    </message>
    <message>
        <source>PEOPLE</source>
        <translation type="unfinished">NGƯỜI</translation>
    </message>
    <message>
        <source>PLUS/MINUS</source>
        <translation type="unfinished">CỘNG/TRỪ</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">IN</translation>
    </message>
    <message>
        <source>PRINT AGAIN</source>
        <translation type="unfinished">IN LẠI</translation>
    </message>
    <message>
        <source>PRODUCT TEMPERATURE</source>
        <translation type="unfinished">NHIỆT ĐỘ SẢN PHẨM</translation>
    </message>
    <message>
        <source>PROPOSE</source>
        <translation type="unfinished">ĐỀ XUẤT</translation>
    </message>
    <message>
        <source>PROPOSE when they differ enough.</source>
        <translation type="unfinished">ĐỀ XUẤT khi đã khác đủ.</translation>
    </message>
    <message>
        <source>PUT AN EMPTY BAG ON</source>
        <translation type="unfinished">ĐẶT TÚI RỖNG LÊN</translation>
    </message>
    <message>
        <source>PUT ON {weights}</source>
        <translation type="unfinished">ĐẶT {weights} LÊN</translation>
    </message>
    <message>
        <source>PUT {serial} ON</source>
        <translation type="unfinished">ĐẶT {serial} LÊN</translation>
    </message>
    <message>
        <source>Pallet {sscc} is closed; its label comes.</source>
        <translation type="unfinished">Pallet {sscc} đã đóng; đang in nhãn.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished">Thành phần</translation>
    </message>
    <message>
        <source>Plate in the settings</source>
        <translation type="unfinished">Biển cân trong cài đặt</translation>
    </message>
    <message>
        <source>Print again: {what}</source>
        <translation type="unfinished">In lại: {what}</translation>
    </message>
    <message>
        <source>Protocol</source>
        <translation type="unfinished">Giao thức</translation>
    </message>
    <message>
        <source>Put another weight on, and TAKE a line at rest and one in motion too.</source>
        <translation type="unfinished">Đặt vật nặng khác, LẤY một dòng lúc đứng yên và một lúc động.</translation>
    </message>
    <message>
        <source>Put its number into station.toml.</source>
        <translation type="unfinished">Ghi số của nó vào station.toml.</translation>
    </message>
    <message>
        <source>QA check</source>
        <translation type="unfinished">kiểm tra QA</translation>
    </message>
    <message>
        <source>QA decides</source>
        <translation type="unfinished">QA quyết định</translation>
    </message>
    <message>
        <source>QA decides: release all, or let the hold stay</source>
        <translation type="unfinished">QA quyết định: giải phóng hết, hoặc vẫn giữ</translation>
    </message>
    <message>
        <source>QA holds the button</source>
        <translation type="unfinished">QA giữ nút</translation>
    </message>
    <message>
        <source>QA or a manager releases a lot: touch WHO and choose your name</source>
        <translation type="unfinished">QA hoặc quản lý giải phóng lô: chạm AI rồi chọn tên</translation>
    </message>
    <message>
        <source>QA said go on</source>
        <translation type="unfinished">QA cho tiếp tục</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">CHẤT LƯỢNG</translation>
    </message>
    <message>
        <source>READY</source>
        <translation type="unfinished">SẴN SÀNG</translation>
    </message>
    <message>
        <source>REASON TO REFUSE</source>
        <translation type="unfinished">LÝ DO TỪ CHỐI</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">NHẬN HÀNG</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">GHI LẠI</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">GHI ĐỀ XUẤT</translation>
    </message>
    <message>
        <source>RECORDED</source>
        <translation type="unfinished">ĐÃ GHI</translation>
    </message>
    <message>
        <source>RECORDING</source>
        <translation type="unfinished">BẢN GHI</translation>
    </message>
    <message>
        <source>REFUSE</source>
        <translation type="unfinished">TỪ CHỐI</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">DIỄN TẬP</translation>
    </message>
    <message>
        <source>REJECTS</source>
        <translation type="unfinished">TÚI LOẠI</translation>
    </message>
    <message>
        <source>RELEASE</source>
        <translation type="unfinished">GIẢI PHÓNG</translation>
    </message>
    <message>
        <source>RELEASE ALL</source>
        <translation type="unfinished">GIẢI PHÓNG HẾT</translation>
    </message>
    <message>
        <source>RELEASE BEFORE STEP</source>
        <translation type="unfinished">GIẢI PHÓNG PHẦN TRƯỚC</translation>
    </message>
    <message>
        <source>REPORT</source>
        <translation type="unfinished">BÁO CÁO</translation>
    </message>
    <message>
        <source>REPRINT</source>
        <translation type="unfinished">IN LẠI</translation>
    </message>
    <message>
        <source>RETURN</source>
        <translation type="unfinished">TRẢ LẠI</translation>
    </message>
    <message>
        <source>RETURNED</source>
        <translation type="unfinished">TRẢ LẠI</translation>
    </message>
    <message>
        <source>REWORKED</source>
        <translation type="unfinished">LÀM LẠI</translation>
    </message>
    <message>
        <source>ROLL</source>
        <translation type="unfinished">CUỘN</translation>
    </message>
    <message>
        <source>ROLL IN</source>
        <translation type="unfinished">LẮP CUỘN</translation>
    </message>
    <message>
        <source>ROLL OUT</source>
        <translation type="unfinished">THÁO CUỘN</translation>
    </message>
    <message>
        <source>ROOM TEMPERATURE</source>
        <translation type="unfinished">NHIỆT ĐỘ PHÒNG</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">ĐỢT</translation>
    </message>
    <message>
        <source>RUN, then SERVICE (F9), SWAP</source>
        <translation type="unfinished">ĐỢT, rồi BẢO TRÌ (F9), ĐỔI CÂN</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">ĐỢT, rồi {door} ({key})</translation>
    </message>
    <message>
        <source>RUNS</source>
        <translation type="unfinished">ĐỢT</translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished">Tầm cân</translation>
    </message>
    <message>
        <source>Reading the record</source>
        <translation type="unfinished">Đang đọc sổ ghi</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Hồ sơ</translation>
    </message>
    <message>
        <source>Recorded as refused</source>
        <translation type="unfinished">Đã ghi là bị từ chối</translation>
    </message>
    <message>
        <source>Recorded: {file}</source>
        <translation type="unfinished">Đã ghi: {file}</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation type="unfinished">Bị từ chối</translation>
    </message>
    <message>
        <source>Refused. Count the bags first.</source>
        <translation type="unfinished">Bị từ chối. Hãy đếm túi trước.</translation>
    </message>
    <message>
        <source>Refused. Look at another clock and say why first.</source>
        <translation type="unfinished">Bị từ chối. Hãy xem đồng hồ khác và nêu lý do trước.</translation>
    </message>
    <message>
        <source>Refused. No run is open.</source>
        <translation type="unfinished">Bị từ chối. Chưa mở đợt nào.</translation>
    </message>
    <message>
        <source>Refused. Say which label, why, and where the old one is.</source>
        <translation type="unfinished">Bị từ chối. Nêu nhãn nào, vì sao và nhãn cũ ở đâu.</translation>
    </message>
    <message>
        <source>Refused. Scan the roll and key in its labels first.</source>
        <translation type="unfinished">Bị từ chối. Quét cuộn và nhập số nhãn trước.</translation>
    </message>
    <message>
        <source>Refused. Touch the two who sign, the lead first.</source>
        <translation type="unfinished">Bị từ chối. Chạm hai người ký, tổ trưởng trước.</translation>
    </message>
    <message>
        <source>Refused. Touch who signs.</source>
        <translation type="unfinished">Bị từ chối. Chạm người ký.</translation>
    </message>
    <message>
        <source>Refused. Who signs? Touch WHO and choose your name.</source>
        <translation type="unfinished">Bị từ chối. Ai ký? Chạm AI rồi chọn tên.</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Bị từ chối. {why}</translation>
    </message>
    <message>
        <source>Rehearsing …</source>
        <translation type="unfinished">Đang diễn tập …</translation>
    </message>
    <message>
        <source>Roll {roll} is in. Count it out</source>
        <translation type="unfinished">Cuộn {roll} đang lắp. Đếm khi tháo</translation>
    </message>
    <message>
        <source>Roll {roll}: why {difference}?</source>
        <translation type="unfinished">Cuộn {roll}: vì sao {difference}?</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Đợt đang mở</translation>
    </message>
    <message>
        <source>SAFE</source>
        <translation type="unfinished">AN TOÀN</translation>
    </message>
    <message>
        <source>SAMPLED</source>
        <translation type="unfinished">LẤY MẪU</translation>
    </message>
    <message>
        <source>SAMPLES</source>
        <translation type="unfinished">MẪU</translation>
    </message>
    <message>
        <source>SAVE</source>
        <translation type="unfinished">LƯU</translation>
    </message>
    <message>
        <source>SCALE</source>
        <translation type="unfinished">CÂN</translation>
    </message>
    <message>
        <source>SCAN</source>
        <translation type="unfinished">QUÉT</translation>
    </message>
    <message>
        <source>SCAN A BAG</source>
        <translation type="unfinished">QUÉT MỘT TÚI</translation>
    </message>
    <message>
        <source>SCAN THE FILM LOT</source>
        <translation type="unfinished">QUÉT LÔ MÀNG</translation>
    </message>
    <message>
        <source>SEAL</source>
        <translation type="unfinished">HÀN TÚI</translation>
    </message>
    <message>
        <source>SEAL CHECK</source>
        <translation type="unfinished">MỐI HÀN</translation>
    </message>
    <message>
        <source>SERIALS</source>
        <translation type="unfinished">SỐ TÚI</translation>
    </message>
    <message>
        <source>SERVICE</source>
        <translation type="unfinished">BẢO TRÌ</translation>
    </message>
    <message>
        <source>SET ASIDE</source>
        <translation type="unfinished">ĐỂ RIÊNG</translation>
    </message>
    <message>
        <source>SHELVE</source>
        <translation type="unfinished">HOÃN</translation>
    </message>
    <message>
        <source>SHIP</source>
        <translation type="unfinished">GIAO</translation>
    </message>
    <message>
        <source>SHIPPING</source>
        <translation type="unfinished">GIAO HÀNG</translation>
    </message>
    <message>
        <source>SIGN</source>
        <translation type="unfinished">KÝ</translation>
    </message>
    <message>
        <source>SIGN DAY</source>
        <translation type="unfinished">KÝ NGÀY</translation>
    </message>
    <message>
        <source>SIGNS</source>
        <translation type="unfinished">NGƯỜI KÝ</translation>
    </message>
    <message>
        <source>SMA SCP-0499 level {code}</source>
        <translation type="unfinished">SMA SCP-0499 mức {code}</translation>
    </message>
    <message>
        <source>SPOILED</source>
        <translation type="unfinished">HỎNG</translation>
    </message>
    <message>
        <source>SPOOLED</source>
        <translation type="unfinished">TRONG HÀNG IN</translation>
    </message>
    <message>
        <source>SPREAD</source>
        <translation type="unfinished">ĐỘ PHÂN TÁN</translation>
    </message>
    <message>
        <source>START CHECK</source>
        <translation type="unfinished">BẮT ĐẦU KIỂM TRA</translation>
    </message>
    <message>
        <source>START OVER</source>
        <translation type="unfinished">LÀM LẠI TỪ ĐẦU</translation>
    </message>
    <message>
        <source>START RUN</source>
        <translation type="unfinished">MỞ ĐỢT</translation>
    </message>
    <message>
        <source>STARTING</source>
        <translation type="unfinished">ĐANG KHỞI ĐỘNG</translation>
    </message>
    <message>
        <source>STATION</source>
        <translation type="unfinished">TRẠM</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished">DỪNG</translation>
    </message>
    <message>
        <source>STOP RECORDING</source>
        <translation type="unfinished">DỪNG GHI</translation>
    </message>
    <message>
        <source>STOPS</source>
        <translation type="unfinished">LẦN DỪNG</translation>
    </message>
    <message>
        <source>STUDY {count} BAGS</source>
        <translation type="unfinished">KHẢO SÁT {count} TÚI</translation>
    </message>
    <message>
        <source>SUBMITTED</source>
        <translation type="unfinished">ĐÃ GỬI</translation>
    </message>
    <message>
        <source>SUSPECT BAGS</source>
        <translation type="unfinished">TÚI NGHI NGỜ</translation>
    </message>
    <message>
        <source>SUSPECT WINDOW</source>
        <translation type="unfinished">KHOẢNG NGHI NGỜ</translation>
    </message>
    <message>
        <source>SWAP</source>
        <translation type="unfinished">ĐỔI CÂN</translation>
    </message>
    <message>
        <source>Same product?</source>
        <translation type="unfinished">Cùng sản phẩm?</translation>
    </message>
    <message>
        <source>Sat {number}</source>
        <translation type="unfinished">Thứ 7 {number}</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished">Thứ Bảy</translation>
    </message>
    <message>
        <source>Scale {what} failed its last check</source>
        <translation type="unfinished">Cân {what} không đạt lần kiểm tra cuối</translation>
    </message>
    <message>
        <source>Scan a label, or type a serial or a blend lot.</source>
        <translation type="unfinished">Quét nhãn, hoặc gõ số túi hay lô trộn.</translation>
    </message>
    <message>
        <source>Scan the bags, type first..last, or touch NEXT CASE</source>
        <translation type="unfinished">Quét túi, gõ đầu..cuối, hoặc chạm THÙNG TIẾP</translation>
    </message>
    <message>
        <source>Scan the cases of the pallet</source>
        <translation type="unfinished">Quét các thùng của pallet</translation>
    </message>
    <message>
        <source>Scan the label on a bag</source>
        <translation type="unfinished">Quét nhãn trên một túi</translation>
    </message>
    <message>
        <source>Scan the pallets and cases that leave</source>
        <translation type="unfinished">Quét pallet và thùng xuất đi</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation type="unfinished">Số sê-ri</translation>
    </message>
    <message>
        <source>Settings and record are being read: no bag is taken yet</source>
        <translation type="unfinished">Đang đọc cài đặt và hồ sơ: chưa nhận túi nào</translation>
    </message>
    <message>
        <source>Shipment {number} is on record.</source>
        <translation type="unfinished">Đã ghi chuyến {number}.</translation>
    </message>
    <message>
        <source>Shipments</source>
        <translation type="unfinished">Chuyến giao</translation>
    </message>
    <message>
        <source>Sign as the second person to {act}</source>
        <translation type="unfinished">Người thứ hai ký để {act}</translation>
    </message>
    <message>
        <source>Sign to {act}</source>
        <translation type="unfinished">Ký để {act}</translation>
    </message>
    <message>
        <source>Signed and on record.</source>
        <translation type="unfinished">Đã ký và ghi lại.</translation>
    </message>
    <message>
        <source>Solid: mean so far, dotted: its limits. Dashed: mean of about 40 bags. Touch a bag.</source>
        <translation type="unfinished">Nét liền: trung bình đến nay, chấm: giới hạn. Nét đứt: trung bình khoảng 40 túi. Chạm một túi.</translation>
    </message>
    <message>
        <source>Start a run</source>
        <translation type="unfinished">Mở một đợt</translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished">Trạm</translation>
    </message>
    <message>
        <source>Stop and start the station to use it</source>
        <translation type="unfinished">Tắt và bật lại trạm để dùng</translation>
    </message>
    <message>
        <source>Study kept: mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">Đã lưu khảo sát: trung bình {mean}, s {spread}, {count} túi</translation>
    </message>
    <message>
        <source>Sun {number}</source>
        <translation type="unfinished">CN {number}</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished">Chủ Nhật</translation>
    </message>
    <message>
        <source>Suspect window of {what}: {count} bags are held</source>
        <translation type="unfinished">Khoảng nghi ngờ của {what}: giữ {count} túi</translation>
    </message>
    <message>
        <source>T1 packs in the official sample</source>
        <translation type="unfinished">túi T1 trong mẫu chính thức</translation>
    </message>
    <message>
        <source>T1 packs of the whole batch</source>
        <translation type="unfinished">túi T1 của cả mẻ</translation>
    </message>
    <message>
        <source>T2 packs in the long run</source>
        <translation type="unfinished">túi T2 về lâu dài</translation>
    </message>
    <message>
        <source>T2 packs in the official sample</source>
        <translation type="unfinished">túi T2 trong mẫu chính thức</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, danh định</translation>
    </message>
    <message>
        <source>TAKE INTO USE</source>
        <translation type="unfinished">ĐƯA VÀO DÙNG</translation>
    </message>
    <message>
        <source>TAKE LINE</source>
        <translation type="unfinished">LẤY DÒNG</translation>
    </message>
    <message>
        <source>TAKE OUT</source>
        <translation type="unfinished">BỚT</translation>
    </message>
    <message>
        <source>TAKE READING</source>
        <translation type="unfinished">LẤY SỐ ĐỌC</translation>
    </message>
    <message>
        <source>TARE</source>
        <translation type="unfinished">BÌ</translation>
    </message>
    <message>
        <source>TARGET</source>
        <translation type="unfinished">MỤC TIÊU</translation>
    </message>
    <message>
        <source>TEACH</source>
        <translation type="unfinished">DẠY</translation>
    </message>
    <message>
        <source>TELL</source>
        <translation type="unfinished">BÁO</translation>
    </message>
    <message>
        <source>THE BAG</source>
        <translation type="unfinished">TÚI NÀY</translation>
    </message>
    <message>
        <source>THE DAY</source>
        <translation type="unfinished">NGÀY</translation>
    </message>
    <message>
        <source>THE SCALE FAILS: its bags are held, call maintenance</source>
        <translation type="unfinished">CÂN KHÔNG ĐẠT: các túi bị giữ, gọi bảo trì</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS</source>
        <translation type="unfinished">CÂN ĐẠT</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS, beyond its first limit: have it adjusted soon</source>
        <translation type="unfinished">CÂN ĐẠT, nhưng vượt giới hạn đầu: sớm cho chỉnh</translation>
    </message>
    <message>
        <source>THIN</source>
        <translation type="unfinished">SÁT</translation>
    </message>
    <message>
        <source>THIS HOUR</source>
        <translation type="unfinished">GIỜ NÀY</translation>
    </message>
    <message>
        <source>TIME</source>
        <translation type="unfinished">THỜI GIAN</translation>
    </message>
    <message>
        <source>TOPPED UP</source>
        <translation type="unfinished">THÊM ĐỦ</translation>
    </message>
    <message>
        <source>TRACE</source>
        <translation type="unfinished">TRUY VẾT</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">TẬP HUẤN</translation>
    </message>
    <message>
        <source>TRAINING IS OVER</source>
        <translation type="unfinished">HẾT HẠN ĐÀO TẠO</translation>
    </message>
    <message>
        <source>Take a line, mark its value and say the unit first.</source>
        <translation type="unfinished">Lấy dòng, đánh dấu giá trị và nêu đơn vị trước.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished">Mục tiêu</translation>
    </message>
    <message>
        <source>Target {target} instead of {now}, held up by {what}: {then} given away a bag instead of {old}.</source>
        <translation type="unfinished">Mục tiêu {target} thay cho {now}, vướng {what}: cho dư {then} mỗi túi thay vì {old}.</translation>
    </message>
    <message>
        <source>The bin of {day} is counted: {count}.</source>
        <translation type="unfinished">Đã đếm thùng loại ngày {day}: {count}.</translation>
    </message>
    <message>
        <source>The clock</source>
        <translation type="unfinished">Đồng hồ</translation>
    </message>
    <message>
        <source>The line is the lowest mean that holds for a spread. Touch it to read it.</source>
        <translation type="unfinished">Đường là trung bình thấp nhất đủ cho một độ phân tán. Chạm để đọc.</translation>
    </message>
    <message>
        <source>The next check is {stage}.</source>
        <translation type="unfinished">Lần kiểm tra tới: {stage}.</translation>
    </message>
    <message>
        <source>The port is opened again. What the scale says of itself stands beside.</source>
        <translation type="unfinished">Cổng mở lại. Bên cạnh là điều cân tự cho biết.</translation>
    </message>
    <message>
        <source>The proposal is on record. A manager approves it, as a new version.</source>
        <translation type="unfinished">Đã ghi đề xuất. Quản lý duyệt thành bản mới.</translation>
    </message>
    <message>
        <source>The recording ended: {why}</source>
        <translation type="unfinished">Bản ghi đã kết thúc: {why}</translation>
    </message>
    <message>
        <source>The reject bin of {day} was not counted</source>
        <translation type="unfinished">Chưa đếm thùng loại ngày {day}</translation>
    </message>
    <message>
        <source>The run ended: nothing is recorded.</source>
        <translation type="unfinished">Đợt đã kết thúc: không ghi gì.</translation>
    </message>
    <message>
        <source>The run ended: the check was given up.</source>
        <translation type="unfinished">Đợt đã kết thúc: bỏ kiểm tra.</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">Lấy số trên cân làm chuẩn. Nếu màn hình và cân khác nhau thì theo cân: dừng lại và gọi tổ trưởng.</translation>
    </message>
    <message>
        <source>The scan of label {serial} does not match</source>
        <translation type="unfinished">Mã quét của nhãn {serial} không khớp</translation>
    </message>
    <message>
        <source>The test is on record, as {what}.</source>
        <translation type="unfinished">Đã ghi phép thử, là {what}.</translation>
    </message>
    <message>
        <source>There is no chart to keep.</source>
        <translation type="unfinished">Không có biểu đồ để lưu.</translation>
    </message>
    <message>
        <source>There is no recording: make one on the page WIRE.</source>
        <translation type="unfinished">Không có bản ghi: hãy tạo ở trang DÂY CÁP.</translation>
    </message>
    <message>
        <source>There is no run before</source>
        <translation type="unfinished">Không có đợt trước</translation>
    </message>
    <message>
        <source>There is nothing to keep yet.</source>
        <translation type="unfinished">Chưa có gì để lưu.</translation>
    </message>
    <message>
        <source>This run stays as it is.</source>
        <translation type="unfinished">Đợt này giữ nguyên.</translation>
    </message>
    <message>
        <source>This screen is left at RUN, MORE, LEAVE, by somebody who may</source>
        <translation type="unfinished">Rời màn hình này ở ĐỢT, THÊM NỮA, THOÁT, bởi người có quyền</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation type="unfinished">Luồng</translation>
    </message>
    <message>
        <source>Thu {number}</source>
        <translation type="unfinished">Thứ 5 {number}</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished">Thứ Năm</translation>
    </message>
    <message>
        <source>Touch PASSED or FAILED.</source>
        <translation type="unfinished">Chạm ĐẠT hoặc KHÔNG ĐẠT.</translation>
    </message>
    <message>
        <source>Touch a line.</source>
        <translation type="unfinished">Chạm một dòng.</translation>
    </message>
    <message>
        <source>Touch the rejects it is about first.</source>
        <translation type="unfinished">Chạm các túi loại trước.</translation>
    </message>
    <message>
        <source>Touch what becomes of it first.</source>
        <translation type="unfinished">Chạm cách xử lý trước.</translation>
    </message>
    <message>
        <source>Touch what is checked first.</source>
        <translation type="unfinished">Chạm mục kiểm tra trước.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Chạm tên mình trước.</translation>
    </message>
    <message>
        <source>Tue {number}</source>
        <translation type="unfinished">Thứ 3 {number}</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished">Thứ Ba</translation>
    </message>
    <message>
        <source>UNDO</source>
        <translation type="unfinished">HỦY BỎ</translation>
    </message>
    <message>
        <source>UNIT</source>
        <translation type="unfinished">ĐƠN VỊ</translation>
    </message>
    <message>
        <source>UNIT {code}</source>
        <translation type="unfinished">ĐƠN VỊ {code}</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">Hạn sử dụng</translation>
    </message>
    <message>
        <source>Use by {day}</source>
        <translation type="unfinished">Hạn sử dụng {day}</translation>
    </message>
    <message>
        <source>VALUE</source>
        <translation type="unfinished">GIÁ TRỊ</translation>
    </message>
    <message>
        <source>VOIDED</source>
        <translation type="unfinished">ĐÃ HỦY</translation>
    </message>
    <message>
        <source>Version</source>
        <translation type="unfinished">Phiên bản</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">CHỜ</translation>
    </message>
    <message>
        <source>WARN</source>
        <translation type="unfinished">CẢNH BÁO</translation>
    </message>
    <message>
        <source>WASH RECORD</source>
        <translation type="unfinished">SỔ RỬA</translation>
    </message>
    <message>
        <source>WASTE</source>
        <translation type="unfinished">BỎ ĐI</translation>
    </message>
    <message>
        <source>WEIGH AN EMPTY BAG</source>
        <translation type="unfinished">CÂN MỘT TÚI RỖNG</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">CÂN MỘT TÚI</translation>
    </message>
    <message>
        <source>WEIGHED AGAIN</source>
        <translation type="unfinished">CÂN LẠI</translation>
    </message>
    <message>
        <source>WEIGHTS</source>
        <translation type="unfinished">KHỐI LƯỢNG</translation>
    </message>
    <message>
        <source>WHO</source>
        <translation type="unfinished">AI</translation>
    </message>
    <message>
        <source>WHOLE RUN</source>
        <translation type="unfinished">CẢ ĐỢT</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">LAU ĐĨA</translation>
    </message>
    <message>
        <source>WIRE</source>
        <translation type="unfinished">DÂY CÁP</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">TÍNH</translation>
    </message>
    <message>
        <source>WOULD BE ACCEPTED</source>
        <translation type="unfinished">SẼ ĐƯỢC CHẤP NHẬN</translation>
    </message>
    <message>
        <source>WOULD NOT BE ACCEPTED</source>
        <translation type="unfinished">SẼ KHÔNG ĐƯỢC CHẤP NHẬN</translation>
    </message>
    <message>
        <source>Wait until the day is read.</source>
        <translation type="unfinished">Chờ đọc xong ngày.</translation>
    </message>
    <message>
        <source>Wed {number}</source>
        <translation type="unfinished">Thứ 4 {number}</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished">Thứ Tư</translation>
    </message>
    <message>
        <source>Weigh again in this order: net as shown, less the whole error, less even growth</source>
        <translation type="unfinished">Cân lại theo thứ tự: tịnh đã hiện, trừ toàn bộ sai số, trừ sai số tăng đều</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">Cái gì</translation>
    </message>
    <message>
        <source>What becomes of the bags?</source>
        <translation type="unfinished">Xử lý các túi thế nào?</translation>
    </message>
    <message>
        <source>What becomes of {bags}?</source>
        <translation type="unfinished">Xử lý {bags} thế nào?</translation>
    </message>
    <message>
        <source>Who decides?</source>
        <translation type="unfinished">Ai quyết định?</translation>
    </message>
    <message>
        <source>Who is touched first signs; who is touched second witnesses or releases too</source>
        <translation type="unfinished">Người chạm trước ký; người chạm sau làm chứng hoặc cùng giải phóng</translation>
    </message>
    <message>
        <source>Who leads touches why the line may go on</source>
        <translation type="unfinished">Tổ trưởng chạm lý do dây chuyền được chạy tiếp</translation>
    </message>
    <message>
        <source>Why does the line stop?</source>
        <translation type="unfinished">Vì sao dây chuyền dừng?</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">Vì sao để riêng?</translation>
    </message>
    <message>
        <source>Why? Choose or type the reason.</source>
        <translation type="unfinished">Vì sao? Chọn hoặc gõ lý do.</translation>
    </message>
    <message>
        <source>Working a target out from the bags …</source>
        <translation type="unfinished">Đang tính mục tiêu từ các túi …</translation>
    </message>
    <message>
        <source>Working a target out from the bags: {count} tried …</source>
        <translation type="unfinished">Đang tính mục tiêu từ các túi: đã thử {count} …</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation type="unfinished">Đang ghi …</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation type="unfinished">Đã ghi: {file}</translation>
    </message>
    <message>
        <source>Written: {file} and {count} more in {folder}</source>
        <translation type="unfinished">Đã ghi: {file} và {count} tệp nữa trong {folder}</translation>
    </message>
    <message>
        <source>YIELD OF LOTS</source>
        <translation type="unfinished">HIỆU SUẤT LÔ</translation>
    </message>
    <message>
        <source>ZERO</source>
        <translation type="unfinished">VỀ KHÔNG</translation>
    </message>
    <message>
        <source>Zero stepped by {step} between {before} and {after}.</source>
        <translation type="unfinished">Điểm không nhảy {step} giữa {before} và {after}.</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">còn túi trên đĩa: làm xong, nhấc ra rồi đóng đợt</translation>
    </message>
    <message>
        <source>a bag that is {what} has no new bag</source>
        <translation type="unfinished">túi {what} không có túi mới</translation>
    </message>
    <message>
        <source>a bag that is {what} wants a witness: a second person signs</source>
        <translation type="unfinished">túi {what} cần người chứng: người thứ hai ký</translation>
    </message>
    <message>
        <source>a case was packed short or over</source>
        <translation type="unfinished">một thùng đóng thiếu hoặc thừa</translation>
    </message>
    <message>
        <source>a check failed</source>
        <translation type="unfinished">một kiểm tra không đạt</translation>
    </message>
    <message>
        <source>a check goes on at the scale: put no bag on it</source>
        <translation type="unfinished">đang kiểm tra cân: không đặt túi lên</translation>
    </message>
    <message>
        <source>a check is due soon</source>
        <translation type="unfinished">sắp đến giờ kiểm tra</translation>
    </message>
    <message>
        <source>a check is overdue</source>
        <translation type="unfinished">quá hạn kiểm tra</translation>
    </message>
    <message>
        <source>a check needs test weights: name at least one</source>
        <translation type="unfinished">kiểm tra cần quả cân: ghi ít nhất một</translation>
    </message>
    <message>
        <source>a copy was printed</source>
        <translation type="unfinished">đã in một bản sao</translation>
    </message>
    <message>
        <source>a cover is open: close it</source>
        <translation type="unfinished">nắp đang mở: đóng lại</translation>
    </message>
    <message>
        <source>a decision needs a reason: choose or write why</source>
        <translation type="unfinished">quyết định cần lý do: chọn hoặc gõ</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">cửa đang mở: đóng lại</translation>
    </message>
    <message>
        <source>a figure</source>
        <translation type="unfinished">một số</translation>
    </message>
    <message>
        <source>a forecast needs at least two packs</source>
        <translation type="unfinished">dự báo cần ít nhất hai túi</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">lô bị giữ đang trên dây chuyền</translation>
    </message>
    <message>
        <source>a hold needs a reason: write why</source>
        <translation type="unfinished">giữ lại cần lý do: hãy ghi</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">nhãn không khớp</translation>
    </message>
    <message>
        <source>a load was taken for zero when the scale came back: with the pan empty set the scale to zero, or switch it off and on</source>
        <translation type="unfinished">hàng đã bị coi là số không khi cân trở lại: khi đĩa trống hãy về số không, hoặc tắt rồi bật cân</translation>
    </message>
    <message>
        <source>a lot ends soon</source>
        <translation type="unfinished">lô sắp hết</translation>
    </message>
    <message>
        <source>a lot should be empty</source>
        <translation type="unfinished">lô lẽ ra đã hết</translation>
    </message>
    <message>
        <source>a new bag</source>
        <translation type="unfinished">túi mới</translation>
    </message>
    <message>
        <source>a new code is made</source>
        <translation type="unfinished">sẽ tạo mã mới</translation>
    </message>
    <message>
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">cuộn mới bắt đầu bằng nhãn đầu</translation>
    </message>
    <message>
        <source>a numbered copy</source>
        <translation type="unfinished">bản sao có số</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">lúc tạm dừng</translation>
    </message>
    <message>
        <source>a release needs a reason: write why</source>
        <translation type="unfinished">giải phóng cần lý do: hãy ghi</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">đang có đợt mở: đóng trước khi mở đợt mới</translation>
    </message>
    <message>
        <source>a run needs a lead and a person on the scale</source>
        <translation type="unfinished">đợt cần tổ trưởng và một người ở cân</translation>
    </message>
    <message>
        <source>a scale that says nothing</source>
        <translation type="unfinished">cân không báo gì</translation>
    </message>
    <message>
        <source>a suspect window of {what} is open ({count} bags)</source>
        <translation type="unfinished">khoảng nghi ngờ của {what} còn mở ({count} túi)</translation>
    </message>
    <message>
        <source>a version is not refused</source>
        <translation type="unfinished">phiên bản không bị từ chối</translation>
    </message>
    <message>
        <source>a weight every {gap} ms</source>
        <translation type="unfinished">một số cân mỗi {gap} ms</translation>
    </message>
    <message>
        <source>a whole run is not dumped: hold its bags first</source>
        <translation type="unfinished">không đổ bỏ cả đợt: giữ các túi trước</translation>
    </message>
    <message>
        <source>about {mass} in bags of {loaded} loaded</source>
        <translation type="unfinished">khoảng {mass} trong túi trên {loaded} đã đổ</translation>
    </message>
    <message>
        <source>above the highest of the description, {number}</source>
        <translation type="unfinished">trên mức cao nhất {number}</translation>
    </message>
    <message>
        <source>adds up</source>
        <translation type="unfinished">khớp</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">sau khi dừng</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation type="unfinished">tới trước</translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished">không khí</translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished">tất cả</translation>
    </message>
    <message>
        <source>all 999 lot codes of {day} are used: give a code by hand</source>
        <translation type="unfinished">đã dùng hết 999 mã lô của {day}: hãy tự đặt mã</translation>
    </message>
    <message>
        <source>all days</source>
        <translation type="unfinished">mọi ngày</translation>
    </message>
    <message>
        <source>all found</source>
        <translation type="unfinished">phát hiện đủ</translation>
    </message>
    <message>
        <source>all loads are taken</source>
        <translation type="unfinished">đã đo mọi tải</translation>
    </message>
    <message>
        <source>all reviewed</source>
        <translation type="unfinished">đã xem hết</translation>
    </message>
    <message>
        <source>all {count} lines are weights: compare them with what the scale showed</source>
        <translation type="unfinished">cả {count} dòng là số cân: so với số trên cân</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation type="unfinished">cho phép</translation>
    </message>
    <message>
        <source>allowed {floor} to {upper}, T1 {t1}, T2 {t2}</source>
        <translation type="unfinished">cho phép {floor} đến {upper}, T1 {t1}, T2 {t2}</translation>
    </message>
    <message>
        <source>an aid to the inspector, no official result</source>
        <translation type="unfinished">hỗ trợ thanh tra, không phải kết quả chính thức</translation>
    </message>
    <message>
        <source>an alarm is not shelved for {minutes} minutes: allowed are {allowed}</source>
        <translation type="unfinished">không hoãn cảnh báo {minutes} phút: cho phép {allowed}</translation>
    </message>
    <message>
        <source>an empty bag weighs {mass}, {more} more than the tare taken off</source>
        <translation type="unfinished">túi rỗng nặng {mass}, hơn bì đã trừ {more}</translation>
    </message>
    <message>
        <source>an order of {count} bags: give 1 or more, or leave it open</source>
        <translation type="unfinished">đơn {count} túi: nhập từ 1 trở lên hoặc để mở</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished">và {count} nữa</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">và {count} nữa ở dưới</translation>
    </message>
    <message>
        <source>another code was scanned</source>
        <translation type="unfinished">đã quét nhầm mã khác</translation>
    </message>
    <message>
        <source>another device is at {code}</source>
        <translation type="unfinished">thiết bị khác ở {code}</translation>
    </message>
    <message>
        <source>another one is set</source>
        <translation type="unfinished">đang đặt bản khác</translation>
    </message>
    <message>
        <source>another program has it: close that program, or name another port</source>
        <translation type="unfinished">chương trình khác đang giữ: đóng nó hoặc ghi cổng khác</translation>
    </message>
    <message>
        <source>another scale is here, {here}; in use is {known}: take it into use, {where}</source>
        <translation type="unfinished">có cân khác, {here}; đang dùng {known}: đưa vào dùng, {where}</translation>
    </message>
    <message>
        <source>any number</source>
        <translation type="unfinished">bất kỳ</translation>
    </message>
    <message>
        <source>applied</source>
        <translation type="unfinished">đã dán</translation>
    </message>
    <message>
        <source>approve a label</source>
        <translation type="unfinished">duyệt nhãn</translation>
    </message>
    <message>
        <source>approve a product version</source>
        <translation type="unfinished">duyệt phiên bản sản phẩm</translation>
    </message>
    <message>
        <source>approve or refuse a target</source>
        <translation type="unfinished">duyệt hoặc từ chối mục tiêu</translation>
    </message>
    <message>
        <source>approved</source>
        <translation type="unfinished">đã duyệt</translation>
    </message>
    <message>
        <source>as far as one approval goes</source>
        <translation type="unfinished">tới mức một lần duyệt cho phép</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">như hiện trạng</translation>
    </message>
    <message>
        <source>as left</source>
        <translation type="unfinished">sau khi chỉnh</translation>
    </message>
    <message>
        <source>as left, after its adjustment</source>
        <translation type="unfinished">sau khi chỉnh cân</translation>
    </message>
    <message>
        <source>as people.toml says</source>
        <translation type="unfinished">theo people.toml</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation type="unfinished">như đã cân</translation>
    </message>
    <message>
        <source>asked by, as in W\r\n</source>
        <translation type="unfinished">hỏi bằng, như W\r\n</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">đã hỏi dây chuyền …</translation>
    </message>
    <message>
        <source>at least {least} {unit}</source>
        <translation type="unfinished">ít nhất {least} {unit}</translation>
    </message>
    <message>
        <source>at most {most} {unit}</source>
        <translation type="unfinished">tối đa {most} {unit}</translation>
    </message>
    <message>
        <source>at once</source>
        <translation type="unfinished">ngay</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">ngẫu nhiên</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation type="unfinished">đứng yên</translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">lùi</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">túi</translation>
    </message>
    <message>
        <source>bag of the run</source>
        <translation type="unfinished">túi của đợt</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">túi {code}, lô màng {lot} chưa có khảo sát bì: làm ngay: {where}</translation>
    </message>
    <message>
        <source>bag {code}: rework of {lot}, last day {day}</source>
        <translation type="unfinished">túi {code}: làm lại của {lot}, ngày cuối {day}</translation>
    </message>
    <message>
        <source>bag {serial} has had {copies} already: the lead signs for the next one</source>
        <translation type="unfinished">túi {serial} đã có {copies}: tổ trưởng ký bản tiếp theo</translation>
    </message>
    <message>
        <source>bag {serial} has had {count} copies: set it aside</source>
        <translation type="unfinished">túi {serial} đã có {count} bản sao: để riêng</translation>
    </message>
    <message>
        <source>bag {serial} is held: it gets no label before QA has released it</source>
        <translation type="unfinished">túi {serial} bị giữ: chưa có nhãn đến khi QA giải phóng</translation>
    </message>
    <message>
        <source>bag {serial} is of blend lot {lot}, the case of {other}: close this case and begin another</source>
        <translation type="unfinished">túi {serial} thuộc lô trộn {lot}, thùng thuộc {other}: đóng thùng này và mở thùng khác</translation>
    </message>
    <message>
        <source>bag {serial} is {what}: scan the label of the new bag</source>
        <translation type="unfinished">túi {serial} {what}: quét nhãn túi mới</translation>
    </message>
    <message>
        <source>bag {serial} lies under the hold of {what}: have it released first, or dump it</source>
        <translation type="unfinished">túi {serial} nằm dưới lệnh giữ của {what}: cho giải phóng trước, hoặc đổ bỏ</translation>
    </message>
    <message>
        <source>bag {serial} was picked already</source>
        <translation type="unfinished">túi {serial} đã được chọn</translation>
    </message>
    <message>
        <source>bag {serial} was scanned already</source>
        <translation type="unfinished">túi {serial} đã quét rồi</translation>
    </message>
    <message>
        <source>bag, case, pallet or lot</source>
        <translation type="unfinished">túi, thùng, pallet hoặc lô</translation>
    </message>
    <message>
        <source>bag, record</source>
        <translation type="unfinished">túi, sổ</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">túi</translation>
    </message>
    <message>
        <source>bags are taken again: {why}</source>
        <translation type="unfinished">nhận túi trở lại: {why}</translation>
    </message>
    <message>
        <source>bags left on the line were set aside or cooled</source>
        <translation type="unfinished">túi còn trên dây chuyền đã để riêng hoặc làm lạnh</translation>
    </message>
    <message>
        <source>bags since then looked at</source>
        <translation type="unfinished">đã xem các túi từ lúc đó</translation>
    </message>
    <message>
        <source>before bag {count}</source>
        <translation type="unfinished">trước túi {count}</translation>
    </message>
    <message>
        <source>below T1</source>
        <translation type="unfinished">dưới T1</translation>
    </message>
    <message>
        <source>below T1: {count} of at most {most}</source>
        <translation type="unfinished">dưới T1: {count}, tối đa {most}</translation>
    </message>
    <message>
        <source>below T2</source>
        <translation type="unfinished">dưới T2</translation>
    </message>
    <message>
        <source>below T2: {count}</source>
        <translation type="unfinished">dưới T2: {count}</translation>
    </message>
    <message>
        <source>below T2: {count} of at most {most}</source>
        <translation type="unfinished">dưới T2: {count}, tối đa {most}</translation>
    </message>
    <message>
        <source>below floor</source>
        <translation type="unfinished">dưới mức tối thiểu</translation>
    </message>
    <message>
        <source>below the lowest of the description, {number}</source>
        <translation type="unfinished">dưới mức thấp nhất {number}</translation>
    </message>
    <message>
        <source>between the fields stands {one} and also {other}: mark what changes</source>
        <translation type="unfinished">giữa các trường có {one} và {other}: đánh dấu chỗ thay đổi</translation>
    </message>
    <message>
        <source>bin and belt empty</source>
        <translation type="unfinished">thùng và băng trống</translation>
    </message>
    <message>
        <source>bin count</source>
        <translation type="unfinished">đếm thùng loại</translation>
    </message>
    <message>
        <source>blend</source>
        <translation type="unfinished">trộn</translation>
    </message>
    <message>
        <source>blend lot</source>
        <translation type="unfinished">lô trộn</translation>
    </message>
    <message>
        <source>blend lot code</source>
        <translation type="unfinished">mã lô trộn</translation>
    </message>
    <message>
        <source>blend {lot}, use-by {day}</source>
        <translation type="unfinished">lô trộn {lot}, hạn dùng {day}</translation>
    </message>
    <message>
        <source>both on the label</source>
        <translation type="unfinished">cả hai trên nhãn</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">nghỉ</translation>
    </message>
    <message>
        <source>burst after its label, destroyed</source>
        <translation type="unfinished">vỡ sau khi dán nhãn, đã hủy</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">hở mối hàn</translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished">theo</translation>
    </message>
    <message>
        <source>by the record</source>
        <translation type="unfinished">theo sổ ghi</translation>
    </message>
    <message>
        <source>by {code}</source>
        <translation type="unfinished">bởi {code}</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity ({here}), and that this is the scale</source>
        <translation type="unfinished">có byte nhưng không có dòng nào bắt đầu hay kết thúc: xem tốc độ baud và chẵn lẻ ({here}), và đây có phải cân không</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity of the converter, and that this is the scale</source>
        <translation type="unfinished">có byte nhưng không có dòng nào bắt đầu hay kết thúc: xem tốc độ baud và chẵn lẻ của bộ chuyển, và đây có phải cân không</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity ({here})</source>
        <translation type="unfinished">có byte nhưng không thành khung: xem tốc độ baud và chẵn lẻ ({here})</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity of the converter</source>
        <translation type="unfinished">có byte nhưng không thành khung: xem tốc độ baud và chẵn lẻ của bộ chuyển</translation>
    </message>
    <message>
        <source>bytes that belong to no frame</source>
        <translation type="unfinished">byte không thuộc khung nào</translation>
    </message>
    <message>
        <source>bytes that belong to no line</source>
        <translation type="unfinished">byte không thuộc dòng nào</translation>
    </message>
    <message>
        <source>call QA</source>
        <translation type="unfinished">gọi QA</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">gọi người</translation>
    </message>
    <message>
        <source>case</source>
        <translation type="unfinished">thùng</translation>
    </message>
    <message>
        <source>case opened</source>
        <translation type="unfinished">đã mở thùng</translation>
    </message>
    <message>
        <source>case {code}</source>
        <translation type="unfinished">thùng {code}</translation>
    </message>
    <message>
        <source>category-b</source>
        <translation type="unfinished">loại B</translation>
    </message>
    <message>
        <source>centre of zero</source>
        <translation type="unfinished">giữa điểm không</translation>
    </message>
    <message>
        <source>chance to pass the official test</source>
        <translation type="unfinished">khả năng đạt kiểm tra chính thức</translation>
    </message>
    <message>
        <source>change every {count} ms</source>
        <translation type="unfinished">đổi mỗi {count} ms</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">đổi hoặc giải trình cuộn nhãn</translation>
    </message>
    <message>
        <source>changed after weighing</source>
        <translation type="unfinished">đổi sau khi cân</translation>
    </message>
    <message>
        <source>changed after weighing: {net} is recorded, {found} is on the pan</source>
        <translation type="unfinished">đổi sau khi cân: đã ghi {net}, trên đĩa {found}</translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished">kiểm tra</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">kiểm tra {what}</translation>
    </message>
    <message>
        <source>check the plug</source>
        <translation type="unfinished">xem phích cắm</translation>
    </message>
    <message>
        <source>check the plug, the cable and the {what}'s power</source>
        <translation type="unfinished">xem phích cắm, cáp và nguồn ({what})</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">kiểm tra cân sau {what}: {where}</translation>
    </message>
    <message>
        <source>checked again, good</source>
        <translation type="unfinished">kiểm tra lại, đạt</translation>
    </message>
    <message>
        <source>checked was {known}, here is {found}: CHECK IT again</source>
        <translation type="unfinished">đã kiểm tra {known}, ở đây là {found}: KIỂM TRA NÓ lại</translation>
    </message>
    <message>
        <source>checking …</source>
        <translation type="unfinished">đang kiểm tra …</translation>
    </message>
    <message>
        <source>checks made</source>
        <translation type="unfinished">kiểm tra đã làm</translation>
    </message>
    <message>
        <source>checksum {code} does not agree</source>
        <translation type="unfinished">tổng kiểm {code} không khớp</translation>
    </message>
    <message>
        <source>choose a lot of {component}</source>
        <translation type="unfinished">chọn lô {component}</translation>
    </message>
    <message>
        <source>choose a product</source>
        <translation type="unfinished">chọn sản phẩm</translation>
    </message>
    <message>
        <source>choose the product first, then its lots</source>
        <translation type="unfinished">chọn sản phẩm trước, rồi chọn lô</translation>
    </message>
    <message>
        <source>class {code}</source>
        <translation type="unfinished">cấp {code}</translation>
    </message>
    <message>
        <source>class {code} knows no scale interval of {interval} (R 76 Table 3)</source>
        <translation type="unfinished">cấp {code} không có độ chia {interval} (R 76 bảng 3)</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation type="unfinished">vệ sinh</translation>
    </message>
    <message>
        <source>clear a scan that differed</source>
        <translation type="unfinished">xử lý mã quét không khớp</translation>
    </message>
    <message>
        <source>clear the line and sign for it: {where}</source>
        <translation type="unfinished">dọn sạch dây chuyền và ký: {where}</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">đóng</translation>
    </message>
    <message>
        <source>code</source>
        <translation type="unfinished">mã</translation>
    </message>
    <message>
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">so nhãn rồi xử lý mã quét</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">đầy đủ</translation>
    </message>
    <message>
        <source>component {component} is not known: allowed are {allowed}</source>
        <translation type="unfinished">không rõ thành phần {component}: cho phép {allowed}</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">xác nhận ngày giờ</translation>
    </message>
    <message>
        <source>connected by {device}</source>
        <translation type="unfinished">nối qua {device}</translation>
    </message>
    <message>
        <source>cooler temperature</source>
        <translation type="unfinished">nhiệt độ kho lạnh</translation>
    </message>
    <message>
        <source>correct what was recorded</source>
        <translation type="unfinished">sửa điều đã ghi</translation>
    </message>
    <message>
        <source>count on the core was wrong</source>
        <translation type="unfinished">số ghi trên lõi sai</translation>
    </message>
    <message>
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">đếm túi của đợt trước: {where}</translation>
    </message>
    <message>
        <source>counted {count}</source>
        <translation type="unfinished">đã đếm {count}</translation>
    </message>
    <message>
        <source>counted {count}, agrees</source>
        <translation type="unfinished">đã đếm {count}, khớp</translation>
    </message>
    <message>
        <source>counted {count}, {difference}</source>
        <translation type="unfinished">đã đếm {count}, {difference}</translation>
    </message>
    <message>
        <source>counted {count}, {difference}: {why}</source>
        <translation type="unfinished">đã đếm {count}, {difference}: {why}</translation>
    </message>
    <message>
        <source>customer's own limits</source>
        <translation type="unfinished">giới hạn riêng của khách</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">ngày giờ chưa chắc chắn</translation>
    </message>
    <message>
        <source>dated step</source>
        <translation type="unfinished">bước nhảy có giờ</translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished">ngày</translation>
    </message>
    <message>
        <source>day after</source>
        <translation type="unfinished">ngày sau</translation>
    </message>
    <message>
        <source>day before</source>
        <translation type="unfinished">ngày trước</translation>
    </message>
    <message>
        <source>day, month</source>
        <translation type="unfinished">ngày, tháng</translation>
    </message>
    <message>
        <source>decide about suspect bags</source>
        <translation type="unfinished">quyết định về túi nghi ngờ</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">quyết định xử lý túi</translation>
    </message>
    <message>
        <source>declared tare {mass}</source>
        <translation type="unfinished">bì khai báo {mass}</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation type="unfinished">đã hủy</translation>
    </message>
    <message>
        <source>destructive</source>
        <translation type="unfinished">phá hủy</translation>
    </message>
    <message>
        <source>destructive-e-mark</source>
        <translation type="unfinished">phá hủy (℮)</translation>
    </message>
    <message>
        <source>device {code}</source>
        <translation type="unfinished">thiết bị {code}</translation>
    </message>
    <message>
        <source>differs</source>
        <translation type="unfinished">khác</translation>
    </message>
    <message>
        <source>digest</source>
        <translation type="unfinished">mã băm</translation>
    </message>
    <message>
        <source>digits it shows</source>
        <translation type="unfinished">chữ số hiển thị</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation type="unfinished">không khớp</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">xong</translation>
    </message>
    <message>
        <source>double</source>
        <translation type="unfinished">kép</translation>
    </message>
    <message>
        <source>downgraded</source>
        <translation type="unfinished">hạ cấp</translation>
    </message>
    <message>
        <source>dumped</source>
        <translation type="unfinished">đã đổ bỏ</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation type="unfinished">đã hết</translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished">hết</translation>
    </message>
    <message>
        <source>empty bag</source>
        <translation type="unfinished">túi rỗng</translation>
    </message>
    <message>
        <source>empty by now?</source>
        <translation type="unfinished">hết rồi?</translation>
    </message>
    <message>
        <source>empty pan</source>
        <translation type="unfinished">đĩa trống</translation>
    </message>
    <message>
        <source>end a run</source>
        <translation type="unfinished">đóng đợt</translation>
    </message>
    <message>
        <source>end the run</source>
        <translation type="unfinished">đóng đợt</translation>
    </message>
    <message>
        <source>enter this</source>
        <translation type="unfinished">ghi điều này</translation>
    </message>
    <message>
        <source>equal</source>
        <translation type="unfinished">giống</translation>
    </message>
    <message>
        <source>even</source>
        <translation type="unfinished">đều</translation>
    </message>
    <message>
        <source>even growth</source>
        <translation type="unfinished">tăng đều</translation>
    </message>
    <message>
        <source>even parity</source>
        <translation type="unfinished">chẵn lẻ chẵn</translation>
    </message>
    <message>
        <source>event</source>
        <translation type="unfinished">sự việc</translation>
    </message>
    <message>
        <source>example {number}, {line}</source>
        <translation type="unfinished">ví dụ {number}, {line}</translation>
    </message>
    <message>
        <source>expired</source>
        <translation type="unfinished">hết hạn</translation>
    </message>
    <message>
        <source>expired – take it off the line</source>
        <translation type="unfinished">hết hạn – bỏ khỏi dây chuyền</translation>
    </message>
    <message>
        <source>explained</source>
        <translation type="unfinished">đã giải thích</translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished">không đạt</translation>
    </message>
    <message>
        <source>failed: what is done</source>
        <translation type="unfinished">không đạt: đã làm gì</translation>
    </message>
    <message>
        <source>fetch the next lot</source>
        <translation type="unfinished">lấy lô tiếp theo</translation>
    </message>
    <message>
        <source>fetch the next roll</source>
        <translation type="unfinished">lấy cuộn tiếp theo</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation type="unfinished">ít hơn</translation>
    </message>
    <message>
        <source>fewer than {count} labels are left</source>
        <translation type="unfinished">còn chưa đến {count} nhãn</translation>
    </message>
    <message>
        <source>field {code}</source>
        <translation type="unfinished">trường {code}</translation>
    </message>
    <message>
        <source>figures do not convince</source>
        <translation type="unfinished">số liệu chưa thuyết phục</translation>
    </message>
    <message>
        <source>fill a case or close a pallet</source>
        <translation type="unfinished">đóng thùng hoặc chốt pa-lét</translation>
    </message>
    <message>
        <source>fill a little more, look at NUMBERS</source>
        <translation type="unfinished">đóng thêm một chút, xem SỐ LIỆU</translation>
    </message>
    <message>
        <source>film or labels</source>
        <translation type="unfinished">màng hoặc nhãn</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation type="unfinished">sắp hết</translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished">đầu</translation>
    </message>
    <message>
        <source>first label</source>
        <translation type="unfinished">nhãn đầu tiên</translation>
    </message>
    <message>
        <source>first serial</source>
        <translation type="unfinished">số đầu</translation>
    </message>
    <message>
        <source>first-off</source>
        <translation type="unfinished">nhãn đầu</translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished">khớp</translation>
    </message>
    <message>
        <source>flag</source>
        <translation type="unfinished">cờ</translation>
    </message>
    <message>
        <source>flags that contradict</source>
        <translation type="unfinished">các cờ mâu thuẫn</translation>
    </message>
    <message>
        <source>floor {mass}</source>
        <translation type="unfinished">mức dưới {mass}</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">tối thiểu, mục tiêu, tối đa</translation>
    </message>
    <message>
        <source>for every product</source>
        <translation type="unfinished">cho mọi sản phẩm</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">dị vật</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">kết quả</translation>
    </message>
    <message>
        <source>frame cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">khung bị cắt sau {count} byte bởi khung sau</translation>
    </message>
    <message>
        <source>frame of {count} bytes, a weight has {number}</source>
        <translation type="unfinished">khung {count} byte, số cân có {number}</translation>
    </message>
    <message>
        <source>frame without an end within {count} bytes</source>
        <translation type="unfinished">khung không kết thúc trong {count} byte</translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished">tự do</translation>
    </message>
    <message>
        <source>from {code}</source>
        <translation type="unfinished">từ {code}</translation>
    </message>
    <message>
        <source>from, such as 09:00</source>
        <translation type="unfinished">từ, như 09:00</translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished">toàn bộ</translation>
    </message>
    <message>
        <source>gate</source>
        <translation type="unfinished">cổng ký</translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished">cho dư</translation>
    </message>
    <message>
        <source>gives away</source>
        <translation type="unfinished">cho dư</translation>
    </message>
    <message>
        <source>go on after a pause</source>
        <translation type="unfinished">tiếp tục sau tạm dừng</translation>
    </message>
    <message>
        <source>go on after a stop</source>
        <translation type="unfinished">tiếp tục sau khi dừng</translation>
    </message>
    <message>
        <source>gone on after a stop: {why}</source>
        <translation type="unfinished">tiếp tục sau khi dừng: {why}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">đạt</translation>
    </message>
    <message>
        <source>gross</source>
        <translation type="unfinished">tổng</translation>
    </message>
    <message>
        <source>gross weight</source>
        <translation type="unfinished">khối lượng cả bì</translation>
    </message>
    <message>
        <source>guards are shut and tools are counted</source>
        <translation type="unfinished">đã đóng che chắn, đếm dụng cụ</translation>
    </message>
    <message>
        <source>hands and tools are washed</source>
        <translation type="unfinished">đã rửa tay và dụng cụ</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation type="unfinished">thu hoạch</translation>
    </message>
    <message>
        <source>heaviest gross {mass} against Max {most}</source>
        <translation type="unfinished">tổng nặng nhất {mass} so với Max {most}</translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished">bị giữ</translation>
    </message>
    <message>
        <source>held at the line</source>
        <translation type="unfinished">giữ tại dây chuyền</translation>
    </message>
    <message>
        <source>held up by</source>
        <translation type="unfinished">vướng</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">bị giữ – gọi QA</translation>
    </message>
    <message>
        <source>here: {line}</source>
        <translation type="unfinished">ở đây: {line}</translation>
    </message>
    <message>
        <source>high resolution</source>
        <translation type="unfinished">độ phân giải cao</translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished">giữ lại</translation>
    </message>
    <message>
        <source>hold down</source>
        <translation type="unfinished">giữ nút</translation>
    </message>
    <message>
        <source>hold stays</source>
        <translation type="unfinished">vẫn giữ</translation>
    </message>
    <message>
        <source>hold the button</source>
        <translation type="unfinished">giữ nút</translation>
    </message>
    <message>
        <source>hold, no record</source>
        <translation type="unfinished">giữ, không có sổ</translation>
    </message>
    <message>
        <source>holds</source>
        <translation type="unfinished">lần giữ</translation>
    </message>
    <message>
        <source>holds from</source>
        <translation type="unfinished">hiệu lực từ</translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished">giờ</translation>
    </message>
    <message>
        <source>id of the label roll</source>
        <translation type="unfinished">id cuộn nhãn</translation>
    </message>
    <message>
        <source>id of the run</source>
        <translation type="unfinished">id đợt</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation type="unfinished">chưa chắc chắn</translation>
    </message>
    <message>
        <source>in money</source>
        <translation type="unfinished">bằng tiền</translation>
    </message>
    <message>
        <source>in motion</source>
        <translation type="unfinished">đang động</translation>
    </message>
    <message>
        <source>in no case</source>
        <translation type="unfinished">không trong thùng</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">trong túi {mass}</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation type="unfinished">trong kho</translation>
    </message>
    <message>
        <source>in the printer</source>
        <translation type="unfinished">trong máy in</translation>
    </message>
    <message>
        <source>in window</source>
        <translation type="unfinished">trong khoảng</translation>
    </message>
    <message>
        <source>in {number} min</source>
        <translation type="unfinished">sau {number} min</translation>
    </message>
    <message>
        <source>in-service error at {gross} gross {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">sai số khi dùng ở {gross} tổng: {mass} so với {share} của {limit} = {most}</translation>
    </message>
    <message>
        <source>initial zero error</source>
        <translation type="unfinished">lỗi điểm không lúc bật</translation>
    </message>
    <message>
        <source>input lot</source>
        <translation type="unfinished">lô đầu vào</translation>
    </message>
    <message>
        <source>input lot code</source>
        <translation type="unfinished">mã lô đầu vào</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished">dụng cụ</translation>
    </message>
    <message>
        <source>interval {mass}</source>
        <translation type="unfinished">độ chia {mass}</translation>
    </message>
    <message>
        <source>it came too slowly, or was too short, for a scanner</source>
        <translation type="unfinished">quá chậm hoặc quá ngắn so với máy quét</translation>
    </message>
    <message>
        <source>it came too warm, or damaged: QA decides</source>
        <translation type="unfinished">đến quá ấm hoặc hỏng: QA quyết định</translation>
    </message>
    <message>
        <source>it changes: mark it on each line</source>
        <translation type="unfinished">nó thay đổi: đánh dấu trên mỗi dòng</translation>
    </message>
    <message>
        <source>it comes back without help</source>
        <translation type="unfinished">sẽ tự trở lại</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">không trả lời: đã bật, đã cắm dây chưa?</translation>
    </message>
    <message>
        <source>it does not end with Enter</source>
        <translation type="unfinished">không kết thúc bằng Enter</translation>
    </message>
    <message>
        <source>it does not suit {products}: use another scale</source>
        <translation type="unfinished">không hợp với {products}: dùng cân khác</translation>
    </message>
    <message>
        <source>it failed its check with test weights: have it adjusted, then check it again</source>
        <translation type="unfinished">không đạt kiểm tra bằng quả cân: cho chỉnh rồi kiểm lại</translation>
    </message>
    <message>
        <source>it is held until a person releases it</source>
        <translation type="unfinished">đang giữ cho đến khi có người cho chạy</translation>
    </message>
    <message>
        <source>it is no serial port</source>
        <translation type="unfinished">không phải cổng nối tiếp</translation>
    </message>
    <message>
        <source>it is not there: check the plug</source>
        <translation type="unfinished">không có ở đó: xem phích cắm</translation>
    </message>
    <message>
        <source>it is {found}, the {what}'s is {known}: plug that one in again, or stop and start the station to take this one</source>
        <translation type="unfinished">đó là {found}, thiết bị đã biết ({what}) là {known}: cắm lại nó, hoặc dừng rồi chạy lại trạm để nhận thiết bị này</translation>
    </message>
    <message>
        <source>it just stays without approval</source>
        <translation type="unfinished">chỉ là chưa duyệt</translation>
    </message>
    <message>
        <source>it lacks what the station's scanner types first</source>
        <translation type="unfinished">thiếu phần máy quét của trạm gõ trước</translation>
    </message>
    <message>
        <source>it never came out</source>
        <translation type="unfinished">không ra</translation>
    </message>
    <message>
        <source>it reached the scale damaged, nothing was done</source>
        <translation type="unfinished">đến cân bị hỏng, chưa làm gì</translation>
    </message>
    <message>
        <source>it was cancelled</source>
        <translation type="unfinished">đã bị hủy</translation>
    </message>
    <message>
        <source>it was cancelled before printing</source>
        <translation type="unfinished">đã bị hủy trước khi in</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s</source>
        <translation type="unfinished">sau {seconds} s vẫn chưa ra</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s ({why})</source>
        <translation type="unfinished">sau {seconds} s vẫn chưa ra ({why})</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">chưa ra sau {seconds} s: xem nhãn có ra không</translation>
    </message>
    <message>
        <source>its bag goes out</source>
        <translation type="unfinished">bỏ túi này</translation>
    </message>
    <message>
        <source>its marks overlap or leave the line</source>
        <translation type="unfinished">dấu chồng nhau hoặc ra ngoài dòng</translation>
    </message>
    <message>
        <source>its run ended before the printer said that it came out</source>
        <translation type="unfinished">đợt đóng trước khi máy in báo nhãn đã ra</translation>
    </message>
    <message>
        <source>its use-by {day} is past: end the run</source>
        <translation type="unfinished">hạn sử dụng {day} đã qua: đóng đợt</translation>
    </message>
    <message>
        <source>jammed in the printer</source>
        <translation type="unfinished">kẹt trong máy in</translation>
    </message>
    <message>
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">giữ, phục hồi hoặc dọn sổ ghi</translation>
    </message>
    <message>
        <source>kept as {file} and named in station.toml</source>
        <translation type="unfinished">đã lưu thành {file} và ghi trong station.toml</translation>
    </message>
    <message>
        <source>knee</source>
        <translation type="unfinished">điểm gãy</translation>
    </message>
    <message>
        <source>label</source>
        <translation type="unfinished">nhãn</translation>
    </message>
    <message>
        <source>label destroyed</source>
        <translation type="unfinished">nhãn đã hủy</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">nhãn bị hủy</translation>
    </message>
    <message>
        <source>label never printed</source>
        <translation type="unfinished">nhãn chưa in</translation>
    </message>
    <message>
        <source>label of another run taken out</source>
        <translation type="unfinished">đã bỏ nhãn của đợt khác</translation>
    </message>
    <message>
        <source>label of the roll</source>
        <translation type="unfinished">nhãn của cuộn</translation>
    </message>
    <message>
        <source>label on bag</source>
        <translation type="unfinished">nhãn trên túi</translation>
    </message>
    <message>
        <source>label roll</source>
        <translation type="unfinished">cuộn nhãn</translation>
    </message>
    <message>
        <source>label scan</source>
        <translation type="unfinished">quét nhãn</translation>
    </message>
    <message>
        <source>label spoiled</source>
        <translation type="unfinished">nhãn hỏng</translation>
    </message>
    <message>
        <source>label {code}</source>
        <translation type="unfinished">nhãn {code}</translation>
    </message>
    <message>
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">nhãn {serial} chưa chắc chắn: {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">nhãn {serial} chưa ra: xem máy in</translation>
    </message>
    <message>
        <source>label {serial} is printed again, marked {mark}</source>
        <translation type="unfinished">in lại nhãn {serial}, đánh dấu {mark}</translation>
    </message>
    <message>
        <source>label {serial} may still come out: cancel it at the printer, or wait</source>
        <translation type="unfinished">nhãn {serial} vẫn có thể ra: hủy ở máy in hoặc chờ</translation>
    </message>
    <message>
        <source>labels are jammed: clear them</source>
        <translation type="unfinished">nhãn bị kẹt: gỡ ra</translation>
    </message>
    <message>
        <source>labels are not taken away: take them away</source>
        <translation type="unfinished">nhãn chưa được lấy: lấy đi</translation>
    </message>
    <message>
        <source>labels on it {count}</source>
        <translation type="unfinished">số nhãn {count}</translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished">cuối</translation>
    </message>
    <message>
        <source>last 7 days</source>
        <translation type="unfinished">7 ngày qua</translation>
    </message>
    <message>
        <source>last day</source>
        <translation type="unfinished">ngày cuối</translation>
    </message>
    <message>
        <source>last day {day}</source>
        <translation type="unfinished">ngày cuối {day}</translation>
    </message>
    <message>
        <source>last label</source>
        <translation type="unfinished">nhãn cuối</translation>
    </message>
    <message>
        <source>last of it</source>
        <translation type="unfinished">phần cuối</translation>
    </message>
    <message>
        <source>last serial</source>
        <translation type="unfinished">số cuối</translation>
    </message>
    <message>
        <source>last {what}</source>
        <translation type="unfinished">túi cuối {what}</translation>
    </message>
    <message>
        <source>lead</source>
        <translation type="unfinished">tổ trưởng</translation>
    </message>
    <message>
        <source>lead {code}</source>
        <translation type="unfinished">tổ trưởng {code}</translation>
    </message>
    <message>
        <source>lead, on the scale</source>
        <translation type="unfinished">tổ trưởng, người cân</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">thoát toàn màn hình</translation>
    </message>
    <message>
        <source>less the stops</source>
        <translation type="unfinished">trừ lúc dừng</translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished">nhẹ</translation>
    </message>
    <message>
        <source>line cleared</source>
        <translation type="unfinished">đã dọn dây chuyền</translation>
    </message>
    <message>
        <source>line cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">dòng bị cắt sau {count} byte bởi dòng sau</translation>
    </message>
    <message>
        <source>line error</source>
        <translation type="unfinished">lỗi đường truyền</translation>
    </message>
    <message>
        <source>line that does not fit the pattern of its description</source>
        <translation type="unfinished">dòng không khớp mẫu mô tả</translation>
    </message>
    <message>
        <source>line without an end within {count} bytes</source>
        <translation type="unfinished">dòng không kết thúc trong {count} byte</translation>
    </message>
    <message>
        <source>line {code}</source>
        <translation type="unfinished">dây chuyền {code}</translation>
    </message>
    <message>
        <source>line {number}</source>
        <translation type="unfinished">dòng {number}</translation>
    </message>
    <message>
        <source>lines</source>
        <translation type="unfinished">các dòng</translation>
    </message>
    <message>
        <source>loaded</source>
        <translation type="unfinished">đã nạp</translation>
    </message>
    <message>
        <source>look at date and time, then sign</source>
        <translation type="unfinished">xem ngày giờ rồi ký</translation>
    </message>
    <message>
        <source>look at the bag and its label, then GO ON</source>
        <translation type="unfinished">xem túi và nhãn, rồi TIẾP TỤC</translation>
    </message>
    <message>
        <source>look at the printer</source>
        <translation type="unfinished">xem máy in</translation>
    </message>
    <message>
        <source>look at the scale's cable and power</source>
        <translation type="unfinished">kiểm tra dây và nguồn điện của cân</translation>
    </message>
    <message>
        <source>look whether a label came out</source>
        <translation type="unfinished">xem nhãn có ra không</translation>
    </message>
    <message>
        <source>look whether it comes out</source>
        <translation type="unfinished">xem có in ra không</translation>
    </message>
    <message>
        <source>look whether the label is whole</source>
        <translation type="unfinished">xem nhãn có nguyên vẹn không</translation>
    </message>
    <message>
        <source>looked at another clock: right now</source>
        <translation type="unfinished">đã xem đồng hồ khác: đúng</translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished">lô</translation>
    </message>
    <message>
        <source>lot code {code} cannot be printed: allowed are 1 to 20 of the characters A-Z 0-9 . / - (no blanks, no small letters)</source>
        <translation type="unfinished">không in được mã lô {code}: cho phép 1 đến 20 ký tự A-Z 0-9 . / - (không dấu cách, không chữ thường)</translation>
    </message>
    <message>
        <source>lot {code}</source>
        <translation type="unfinished">lô {code}</translation>
    </message>
    <message>
        <source>lot {lot} had its last day on {day}: it must not be used</source>
        <translation type="unfinished">lô {lot} hết hạn ngày {day}: không được dùng</translation>
    </message>
    <message>
        <source>lot {lot} is already in the record as another delivery ({component} from {supplier}, received {day}): leave the code empty to get a new one</source>
        <translation type="unfinished">lô {lot} đã ghi cho lần giao khác ({component} từ {supplier}, nhận {day}): để trống mã để lấy mã mới</translation>
    </message>
    <message>
        <source>lot {lot} is held</source>
        <translation type="unfinished">lô {lot} bị giữ</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">lô {lot} bị giữ: bỏ ra và nạp lô khác: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is nearly empty</source>
        <translation type="unfinished">lô {lot} gần hết</translation>
    </message>
    <message>
        <source>lot {lot} is not in the record: receive it before the run</source>
        <translation type="unfinished">lô {lot} chưa ghi: nhận trước khi mở đợt</translation>
    </message>
    <message>
        <source>lot {lot} is not known: check the code</source>
        <translation type="unfinished">không rõ lô {lot}: xem lại mã</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">chưa biết lô {lot}: nhập kho trước</translation>
    </message>
    <message>
        <source>lot {lot} is not on the line: on it are {lots}</source>
        <translation type="unfinished">lô {lot} không ở trên dây chuyền: đang có {lots}</translation>
    </message>
    <message>
        <source>lot {lot} is on the line and on no label: take it off: {where}</source>
        <translation type="unfinished">lô {lot} có trên dây chuyền mà không có trên nhãn: bỏ ra: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is {component}, which {product} does not contain: allowed are {allowed}</source>
        <translation type="unfinished">lô {lot} là {component}, {product} không có: được dùng {allowed}</translation>
    </message>
    <message>
        <source>lot {lot} is {status}: it must not be used, call QA</source>
        <translation type="unfinished">lô {lot} {status}: không được dùng, gọi QA</translation>
    </message>
    <message>
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lô {lot}: {why}</translation>
    </message>
    <message>
        <source>lot {lot} of {supplier} was received already on {day}: load it, do not receive it again</source>
        <translation type="unfinished">lô {lot} của {supplier} đã nhận ngày {day}: hãy nạp, đừng nhận lại</translation>
    </message>
    <message>
        <source>lot {lot}: harvested {harvested} after it was received {received}</source>
        <translation type="unfinished">lô {lot}: thu hoạch {harvested} sau khi nhận {received}</translation>
    </message>
    <message>
        <source>lot {lot}: no person holds it; lots.toml says what it is</source>
        <translation type="unfinished">lô {lot}: không ai giữ; lots.toml quy định</translation>
    </message>
    <message>
        <source>lot {lot}: packed {packed} after it was received {received}</source>
        <translation type="unfinished">lô {lot}: đóng gói {packed} sau khi nhận {received}</translation>
    </message>
    <message>
        <source>lot {lot}: waste needs its mass: weigh it</source>
        <translation type="unfinished">lô {lot}: phần bỏ cần khối lượng: hãy cân</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} came: give more than nothing, or no mass</source>
        <translation type="unfinished">lô {lot}: đến {mass}: nhập lớn hơn không hoặc bỏ trống</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} is below nothing</source>
        <translation type="unfinished">lô {lot}: {mass} nhỏ hơn không</translation>
    </message>
    <message>
        <source>lot {lot}: {warmth} °C on arrival: allowed are {least} to {most} °C</source>
        <translation type="unfinished">lô {lot}: {warmth} °C khi đến: cho phép {least} đến {most} °C</translation>
    </message>
    <message>
        <source>lots</source>
        <translation type="unfinished">các lô</translation>
    </message>
    <message>
        <source>lots changed while a bag was on the pan: lift it before the next change</source>
        <translation type="unfinished">lô đã đổi khi còn túi trên đĩa: nhấc túi trước khi đổi tiếp</translation>
    </message>
    <message>
        <source>lots {lots}</source>
        <translation type="unfinished">các lô {lots}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">máy</translation>
    </message>
    <message>
        <source>made by machine, not reviewed: {said}</source>
        <translation type="unfinished">máy dịch, chưa duyệt: {said}</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation type="unfinished">bảo trì</translation>
    </message>
    <message>
        <source>make the check</source>
        <translation type="unfinished">làm kiểm tra</translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished">quản lý</translation>
    </message>
    <message>
        <source>many frames arrive damaged: check plug and cable, keep it away from motors, and see that no other program reads this port</source>
        <translation type="unfinished">nhiều khung đến bị hỏng: xem phích và cáp, để xa động cơ, và không có chương trình khác đọc cổng này</translation>
    </message>
    <message>
        <source>mark no control characters, and nothing after the end</source>
        <translation type="unfinished">đừng đánh dấu ký tự điều khiển hay gì sau kết thúc</translation>
    </message>
    <message>
        <source>mark the same fields on each line, in the same order</source>
        <translation type="unfinished">đánh dấu cùng các trường trên mỗi dòng, cùng thứ tự</translation>
    </message>
    <message>
        <source>mark the value on each line</source>
        <translation type="unfinished">đánh dấu giá trị trên mỗi dòng</translation>
    </message>
    <message>
        <source>mark two or more, with different weights on the pan</source>
        <translation type="unfinished">đánh dấu hai dòng trở lên, với vật nặng khác nhau</translation>
    </message>
    <message>
        <source>may be run</source>
        <translation type="unfinished">được chạy</translation>
    </message>
    <message>
        <source>may not be run</source>
        <translation type="unfinished">không được chạy</translation>
    </message>
    <message>
        <source>mean + {factor} s ≥ {nominal}: {holds} so far</source>
        <translation type="unfinished">trung bình + {factor} s ≥ {nominal}: {holds} đến nay</translation>
    </message>
    <message>
        <source>mean in the official sample</source>
        <translation type="unfinished">trung bình mẫu chính thức</translation>
    </message>
    <message>
        <source>mean net</source>
        <translation type="unfinished">tịnh trung bình</translation>
    </message>
    <message>
        <source>mean of the whole batch</source>
        <translation type="unfinished">trung bình cả mẻ</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}</source>
        <translation type="unfinished">trung bình {mean}, s {spread}</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">trung bình {mean}, s {spread}, {count} túi</translation>
    </message>
    <message>
        <source>mean {number}</source>
        <translation type="unfinished">trung bình {number}</translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished">đạt</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">máy dò kim loại</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished">phút</translation>
    </message>
    <message>
        <source>missed {pieces}</source>
        <translation type="unfinished">bỏ sót {pieces}</translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished">nhiều hơn</translation>
    </message>
    <message>
        <source>more bytes arrive than a scale sends: is this the scale's line?</source>
        <translation type="unfinished">byte đến nhiều hơn cân gửi: đây có phải đường của cân?</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">chuyển lô trên dây chuyền</translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished">tên</translation>
    </message>
    <message>
        <source>name of the format</source>
        <translation type="unfinished">tên định dạng</translation>
    </message>
    <message>
        <source>name of the inspector</source>
        <translation type="unfinished">tên thanh tra</translation>
    </message>
    <message>
        <source>name the inspector: scan or type who tests</source>
        <translation type="unfinished">nêu tên thanh tra: quét hoặc gõ</translation>
    </message>
    <message>
        <source>name the wash record: tank and number, as the wash step names it</source>
        <translation type="unfinished">nêu sổ rửa: bể và số, như ở khâu rửa</translation>
    </message>
    <message>
        <source>near Max</source>
        <translation type="unfinished">gần mức tối đa</translation>
    </message>
    <message>
        <source>near the tare</source>
        <translation type="unfinished">gần mức bì</translation>
    </message>
    <message>
        <source>net</source>
        <translation type="unfinished">tịnh</translation>
    </message>
    <message>
        <source>net below {mass}</source>
        <translation type="unfinished">tịnh dưới {mass}</translation>
    </message>
    <message>
        <source>net below {mass}; {count} below T2</source>
        <translation type="unfinished">tịnh dưới {mass}; {count} dưới T2</translation>
    </message>
    <message>
        <source>net fill</source>
        <translation type="unfinished">lượng nạp tịnh</translation>
    </message>
    <message>
        <source>net {mass}: {verdict}</source>
        <translation type="unfinished">tịnh {mass}: {verdict}</translation>
    </message>
    <message>
        <source>never came out</source>
        <translation type="unfinished">không ra</translation>
    </message>
    <message>
        <source>never printed</source>
        <translation type="unfinished">chưa in</translation>
    </message>
    <message>
        <source>new bag {serial}</source>
        <translation type="unfinished">túi mới {serial}</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">chưa có PIN hoặc thẻ</translation>
    </message>
    <message>
        <source>no USB device</source>
        <translation type="unfinished">không có thiết bị USB</translation>
    </message>
    <message>
        <source>no bag</source>
        <translation type="unfinished">không có túi</translation>
    </message>
    <message>
        <source>no bag is expected any more</source>
        <translation type="unfinished">không còn túi nào nữa</translation>
    </message>
    <message>
        <source>no bag is on record yet</source>
        <translation type="unfinished">chưa có túi nào được ghi</translation>
    </message>
    <message>
        <source>no bag is taken: {why}</source>
        <translation type="unfinished">không nhận túi: {why}</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">túi này không phải sản phẩm</translation>
    </message>
    <message>
        <source>no bag of this run is labelled yet: pack one, then scan its label</source>
        <translation type="unfinished">đợt này chưa có túi dán nhãn: đóng một túi rồi quét nhãn</translation>
    </message>
    <message>
        <source>no bag of {scope} {name} is in the record: nothing is held</source>
        <translation type="unfinished">không có túi của {scope} {name} trong sổ: không giữ gì</translation>
    </message>
    <message>
        <source>no checksum known here agrees on all lines: mark another field, or none</source>
        <translation type="unfinished">không tổng kiểm nào khớp mọi dòng: đánh dấu trường khác hoặc bỏ</translation>
    </message>
    <message>
        <source>no copy</source>
        <translation type="unfinished">không có bản sao</translation>
    </message>
    <message>
        <source>no day given</source>
        <translation type="unfinished">chưa ghi ngày</translation>
    </message>
    <message>
        <source>no error at any load</source>
        <translation type="unfinished">không sai ở tải nào</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">không có số</translation>
    </message>
    <message>
        <source>no good bag yet</source>
        <translation type="unfinished">chưa có túi đạt</translation>
    </message>
    <message>
        <source>no good check of {what} after the last bag</source>
        <translation type="unfinished">không có kiểm tra {what} đạt sau túi cuối</translation>
    </message>
    <message>
        <source>no good check of {what} in the run</source>
        <translation type="unfinished">không có kiểm tra {what} đạt trong đợt</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">chưa có cuộn nhãn: quét cuộn ở {where}</translation>
    </message>
    <message>
        <source>no labelled bag of the last run is loose</source>
        <translation type="unfinished">không còn túi có nhãn của đợt cuối chưa vào thùng</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">hết nhãn: lắp cuộn mới</translation>
    </message>
    <message>
        <source>no lot of {component} may be used on {day}</source>
        <translation type="unfinished">không lô {component} nào dùng được ngày {day}</translation>
    </message>
    <message>
        <source>no old product on line, pan or floor</source>
        <translation type="unfinished">không còn hàng cũ trên dây chuyền, đĩa, sàn</translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished">chưa có giá</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">hết hàng</translation>
    </message>
    <message>
        <source>no product has it</source>
        <translation type="unfinished">không sản phẩm nào có</translation>
    </message>
    <message>
        <source>no proposal worked out yet</source>
        <translation type="unfinished">chưa tính đề xuất</translation>
    </message>
    <message>
        <source>no rate yet</source>
        <translation type="unfinished">chưa có tốc độ</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished">không có số cân</translation>
    </message>
    <message>
        <source>no reading with a bag on the pan</source>
        <translation type="unfinished">có túi trên đĩa mà không có số</translation>
    </message>
    <message>
        <source>no roll is in</source>
        <translation type="unfinished">chưa có cuộn</translation>
    </message>
    <message>
        <source>no run is open</source>
        <translation type="unfinished">chưa mở đợt</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">chưa mở đợt: tổ trưởng mở đợt</translation>
    </message>
    <message>
        <source>no run yet</source>
        <translation type="unfinished">chưa có đợt</translation>
    </message>
    <message>
        <source>no scale yet</source>
        <translation type="unfinished">chưa có cân</translation>
    </message>
    <message>
        <source>no scan differed: there is nothing to clear</source>
        <translation type="unfinished">không có mã lệch: không cần xử lý</translation>
    </message>
    <message>
        <source>no single test weight of {mass}: use 1, 2 or 5 times a power of ten from 1 g to 20 kg</source>
        <translation type="unfinished">không có quả cân {mass}: dùng 1, 2 hoặc 5 lần lũy thừa mười từ 1 g đến 20 kg</translation>
    </message>
    <message>
        <source>no target meets every clause: the fills scatter too much</source>
        <translation type="unfinished">không mục tiêu nào đạt hết: lượng nạp chênh quá</translation>
    </message>
    <message>
        <source>no time service has kept the clock right for {time}</source>
        <translation type="unfinished">{time} nay không có dịch vụ giờ chỉnh đồng hồ</translation>
    </message>
    <message>
        <source>no weight</source>
        <translation type="unfinished">không có số cân</translation>
    </message>
    <message>
        <source>nobody may ship them</source>
        <translation type="unfinished">không được giao</translation>
    </message>
    <message>
        <source>nobody signed</source>
        <translation type="unfinished">không ai ký</translation>
    </message>
    <message>
        <source>nobody who may sign has a PIN or badge: station people pin</source>
        <translation type="unfinished">chưa ai được ký có PIN hoặc thẻ: station people pin</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation type="unfinished">danh nghĩa</translation>
    </message>
    <message>
        <source>nominal {mass}</source>
        <translation type="unfinished">danh nghĩa {mass}</translation>
    </message>
    <message>
        <source>nominal {mass} against Min {least}</source>
        <translation type="unfinished">danh định {mass} so với Min {least}</translation>
    </message>
    <message>
        <source>nominal {mass} against {count} intervals of {interval}</source>
        <translation type="unfinished">danh định {mass} so với {count} độ chia {interval}</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">không</translation>
    </message>
    <message>
        <source>none left on line</source>
        <translation type="unfinished">đã hết trên chuyền</translation>
    </message>
    <message>
        <source>none of what was heard is a weight by this description</source>
        <translation type="unfinished">không gì nghe được là số cân theo mô tả này</translation>
    </message>
    <message>
        <source>none was taken into use on record yet</source>
        <translation type="unfinished">chưa có cân nào được ghi là đưa vào dùng</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">chưa có</translation>
    </message>
    <message>
        <source>not a multiple of {number}</source>
        <translation type="unfinished">không phải bội của {number}</translation>
    </message>
    <message>
        <source>not clear yet: {point}</source>
        <translation type="unfinished">chưa dọn xong: {point}</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation type="unfinished">chưa đếm</translation>
    </message>
    <message>
        <source>not due</source>
        <translation type="unfinished">chưa đến hạn</translation>
    </message>
    <message>
        <source>not fit to sell</source>
        <translation type="unfinished">không bán được</translation>
    </message>
    <message>
        <source>not found: QA decides</source>
        <translation type="unfinished">không thấy: QA quyết định</translation>
    </message>
    <message>
        <source>not judged: {why}</source>
        <translation type="unfinished">chưa đánh giá: {why}</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">không dán nhãn: {reason}</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">chưa phải lúc</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">chưa in</translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished">không nói</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation type="unfinished">chưa cân</translation>
    </message>
    <message>
        <source>not weighed in</source>
        <translation type="unfinished">chưa cân khi nhập</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">chưa được duyệt</translation>
    </message>
    <message>
        <source>not yet: {what}</source>
        <translation type="unfinished">chưa: {what}</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">ghi chú</translation>
    </message>
    <message>
        <source>nothing about the clock is open</source>
        <translation type="unfinished">đồng hồ không có gì cần xử lý</translation>
    </message>
    <message>
        <source>nothing on the pan</source>
        <translation type="unfinished">đĩa cân trống</translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished">nay</translation>
    </message>
    <message>
        <source>now {number}</source>
        <translation type="unfinished">bây giờ {number}</translation>
    </message>
    <message>
        <source>odd parity</source>
        <translation type="unfinished">chẵn lẻ lẻ</translation>
    </message>
    <message>
        <source>of everything the version says</source>
        <translation type="unfinished">của mọi điều phiên bản ghi</translation>
    </message>
    <message>
        <source>of the last bag</source>
        <translation type="unfinished">của túi cuối</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">trên {count} túi</translation>
    </message>
    <message>
        <source>old labels and film are off the line</source>
        <translation type="unfinished">đã bỏ nhãn và màng cũ</translation>
    </message>
    <message>
        <source>old lots are closed or returned</source>
        <translation type="unfinished">lô cũ đã đóng hoặc trả</translation>
    </message>
    <message>
        <source>on another pallet</source>
        <translation type="unfinished">trên pallet khác</translation>
    </message>
    <message>
        <source>on no label</source>
        <translation type="unfinished">không trên nhãn</translation>
    </message>
    <message>
        <source>on the line</source>
        <translation type="unfinished">trên dây chuyền</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">người cân: {who}</translation>
    </message>
    <message>
        <source>on the {count} bags to come</source>
        <translation type="unfinished">trên {count} túi còn lại</translation>
    </message>
    <message>
        <source>on the {count} bags to come, any above the floor will do</source>
        <translation type="unfinished">{count} túi còn lại: trên mức tối thiểu là đủ</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">ở {code} chỉ dội lại những gì trạm gửi: xem cân đã bật chưa, cáp và cài đặt truyền</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">ở {code} chỉ dội lại những gì trạm gửi: xem cân đã bật chưa, cáp và cài đặt truyền ({here})</translation>
    </message>
    <message>
        <source>one line comes again and again and is no weight ({why}): see what the scale shows, such as an error, another unit or another mode, and set it back</source>
        <translation type="unfinished">một dòng cứ lặp lại và không phải số cân ({why}): xem cân đang hiện gì, như lỗi, đơn vị khác hay chế độ khác, rồi chỉnh lại</translation>
    </message>
    <message>
        <source>one new bag stands for one reject: touch one alone</source>
        <translation type="unfinished">một túi mới cho một túi loại: chạm một thôi</translation>
    </message>
    <message>
        <source>one of {count} bags</source>
        <translation type="unfinished">một trong {count} túi</translation>
    </message>
    <message>
        <source>only a lead goes on after a mismatch</source>
        <translation type="unfinished">chỉ tổ trưởng cho tiếp tục sau khi không khớp</translation>
    </message>
    <message>
        <source>only just suits</source>
        <translation type="unfinished">vừa đủ hợp</translation>
    </message>
    <message>
        <source>only where in doubt</source>
        <translation type="unfinished">chỉ khi nghi ngờ</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">còn mở</translation>
    </message>
    <message>
        <source>open order</source>
        <translation type="unfinished">đơn không giới hạn</translation>
    </message>
    <message>
        <source>or scan a badge</source>
        <translation type="unfinished">hoặc quét thẻ</translation>
    </message>
    <message>
        <source>or the day</source>
        <translation type="unfinished">hoặc ngày</translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished">lý do khác</translation>
    </message>
    <message>
        <source>other unit {found}, the line runs in {unit}: set the scale back</source>
        <translation type="unfinished">đơn vị khác {found}, dây chuyền dùng {unit}: chỉnh lại cân</translation>
    </message>
    <message>
        <source>out of bags</source>
        <translation type="unfinished">lấy từ túi</translation>
    </message>
    <message>
        <source>over capacity</source>
        <translation type="unfinished">quá tải</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">quá tải: bỏ hàng ra</translation>
    </message>
    <message>
        <source>over capacity: take the load off the pan</source>
        <translation type="unfinished">quá tải: bỏ hàng khỏi đĩa cân</translation>
    </message>
    <message>
        <source>packed</source>
        <translation type="unfinished">đóng gói</translation>
    </message>
    <message>
        <source>packed {day}</source>
        <translation type="unfinished">đóng {day}</translation>
    </message>
    <message>
        <source>packed {time} by {who}, production day {day}</source>
        <translation type="unfinished">đóng {time} bởi {who}, ngày sản xuất {day}</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">đóng gói</translation>
    </message>
    <message>
        <source>pallet</source>
        <translation type="unfinished">pallet</translation>
    </message>
    <message>
        <source>pallet broken up</source>
        <translation type="unfinished">đã tháo pallet</translation>
    </message>
    <message>
        <source>pallet {code}</source>
        <translation type="unfinished">pallet {code}</translation>
    </message>
    <message>
        <source>pan, chute and tools are clean and dry</source>
        <translation type="unfinished">đĩa, máng, dụng cụ sạch và khô</translation>
    </message>
    <message>
        <source>paper: delivery note 12</source>
        <translation type="unfinished">giấy: phiếu giao 12</translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished">đạt</translation>
    </message>
    <message>
        <source>pause</source>
        <translation type="unfinished">tạm dừng</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">chuẩn bị kiểm tra</translation>
    </message>
    <message>
        <source>plate {code}</source>
        <translation type="unfinished">biển {code}</translation>
    </message>
    <message>
        <source>plus or minus</source>
        <translation type="unfinished">cộng hay trừ</translation>
    </message>
    <message>
        <source>poor print</source>
        <translation type="unfinished">in kém</translation>
    </message>
    <message>
        <source>port {code}</source>
        <translation type="unfinished">cổng {code}</translation>
    </message>
    <message>
        <source>position</source>
        <translation type="unfinished">vị trí</translation>
    </message>
    <message>
        <source>present are</source>
        <translation type="unfinished">hiện có</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">in lại nhãn</translation>
    </message>
    <message>
        <source>print unreadable</source>
        <translation type="unfinished">in không đọc được</translation>
    </message>
    <message>
        <source>product</source>
        <translation type="unfinished">sản phẩm</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">nhiệt độ sản phẩm</translation>
    </message>
    <message>
        <source>product {product} cannot run on this scale: {why}</source>
        <translation type="unfinished">sản phẩm {product} không chạy được trên cân này: {why}</translation>
    </message>
    <message>
        <source>product {product} is at version {version} now, not {other}: choose it again</source>
        <translation type="unfinished">sản phẩm {product} nay là bản {version}, không phải {other}: chọn lại</translation>
    </message>
    <message>
        <source>product {product} is not known: choose one of {allowed}</source>
        <translation type="unfinished">không rõ sản phẩm {product}: chọn một trong {allowed}</translation>
    </message>
    <message>
        <source>product {product} version {version}, as it is set</source>
        <translation type="unfinished">sản phẩm {product} bản {version}, như đã đặt</translation>
    </message>
    <message>
        <source>production day</source>
        <translation type="unfinished">ngày sản xuất</translation>
    </message>
    <message>
        <source>propose a target</source>
        <translation type="unfinished">đề xuất mục tiêu</translation>
    </message>
    <message>
        <source>proposed</source>
        <translation type="unfinished">đề xuất</translation>
    </message>
    <message>
        <source>purge old runs</source>
        <translation type="unfinished">xóa đợt cũ</translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished">đã lắp</translation>
    </message>
    <message>
        <source>put it right, then check again</source>
        <translation type="unfinished">sửa rồi kiểm tra lại</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>qa check</source>
        <translation type="unfinished">kiểm tra QA</translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished">tốc độ</translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished">đã đọc</translation>
    </message>
    <message>
        <source>reason</source>
        <translation type="unfinished">lý do</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">nhận hàng</translation>
    </message>
    <message>
        <source>received {day}</source>
        <translation type="unfinished">nhận {day}</translation>
    </message>
    <message>
        <source>record a check of quality</source>
        <translation type="unfinished">ghi kiểm tra chất lượng</translation>
    </message>
    <message>
        <source>record a good check of the scale</source>
        <translation type="unfinished">ghi kiểm tra cân đạt</translation>
    </message>
    <message>
        <source>record a study of empty bags</source>
        <translation type="unfinished">ghi khảo sát túi rỗng</translation>
    </message>
    <message>
        <source>record an empty bag that fits</source>
        <translation type="unfinished">ghi túi rỗng khớp bì</translation>
    </message>
    <message>
        <source>record that a check failed</source>
        <translation type="unfinished">ghi kiểm tra không đạt</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation type="unfinished">đã ghi</translation>
    </message>
    <message>
        <source>recounted, stays open</source>
        <translation type="unfinished">đếm lại, vẫn còn mở</translation>
    </message>
    <message>
        <source>reference</source>
        <translation type="unfinished">số tham chiếu</translation>
    </message>
    <message>
        <source>refuse a label</source>
        <translation type="unfinished">từ chối nhãn</translation>
    </message>
    <message>
        <source>refused</source>
        <translation type="unfinished">bị từ chối</translation>
    </message>
    <message>
        <source>refused: {why}</source>
        <translation type="unfinished">bị từ chối: {why}</translation>
    </message>
    <message>
        <source>reject</source>
        <translation type="unfinished">túi loại</translation>
    </message>
    <message>
        <source>reject ticket</source>
        <translation type="unfinished">phiếu loại</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">giải phóng hàng bị giữ</translation>
    </message>
    <message>
        <source>released</source>
        <translation type="unfinished">đã giải phóng</translation>
    </message>
    <message>
        <source>released at the line by QA</source>
        <translation type="unfinished">QA giải phóng tại dây chuyền</translation>
    </message>
    <message>
        <source>released before the step</source>
        <translation type="unfinished">giải phóng phần trước bước nhảy</translation>
    </message>
    <message>
        <source>remark on what is open</source>
        <translation type="unfinished">ghi chú về việc còn mở</translation>
    </message>
    <message>
        <source>repacked</source>
        <translation type="unfinished">đóng lại</translation>
    </message>
    <message>
        <source>rest N2</source>
        <translation type="unfinished">còn lại N2</translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished">kết luận</translation>
    </message>
    <message>
        <source>returned</source>
        <translation type="unfinished">đã trả lại</translation>
    </message>
    <message>
        <source>returned {count}</source>
        <translation type="unfinished">trả lại {count}</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">xem và ký một ngày</translation>
    </message>
    <message>
        <source>reviewed</source>
        <translation type="unfinished">đã duyệt</translation>
    </message>
    <message>
        <source>reviewed with exceptions</source>
        <translation type="unfinished">đã duyệt có ngoại lệ</translation>
    </message>
    <message>
        <source>rework</source>
        <translation type="unfinished">làm lại</translation>
    </message>
    <message>
        <source>rework of {lot} was packed {time} ago: it may go back on the line for {most}</source>
        <translation type="unfinished">hàng làm lại của {lot} đóng cách đây {time}: được đưa lại trong {most}</translation>
    </message>
    <message>
        <source>reworked</source>
        <translation type="unfinished">làm lại</translation>
    </message>
    <message>
        <source>ribbon or ink is missing: put it in</source>
        <translation type="unfinished">thiếu ruy băng hoặc mực: lắp vào</translation>
    </message>
    <message>
        <source>ribbon or ink is used up: change it</source>
        <translation type="unfinished">hết ruy băng hoặc mực: thay mới</translation>
    </message>
    <message>
        <source>roll {code}</source>
        <translation type="unfinished">cuộn {code}</translation>
    </message>
    <message>
        <source>roll {roll} is in: take it out first</source>
        <translation type="unfinished">cuộn {roll} đang lắp: tháo ra trước</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation type="unfinished">nhiệt độ phòng</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">bộ quy tắc</translation>
    </message>
    <message>
        <source>run</source>
        <translation type="unfinished">đợt</translation>
    </message>
    <message>
        <source>run of {product} ended</source>
        <translation type="unfinished">đã đóng đợt {product}</translation>
    </message>
    <message>
        <source>run of {product} open, blend lot {lot}</source>
        <translation type="unfinished">đã mở đợt {product}, lô trộn {lot}</translation>
    </message>
    <message>
        <source>run reconciled</source>
        <translation type="unfinished">đã đối chiếu đợt</translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished">mẫu</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation type="unfinished">lấy mẫu</translation>
    </message>
    <message>
        <source>samples {count}</source>
        <translation type="unfinished">mẫu {count}</translation>
    </message>
    <message>
        <source>say that an alarm is seen</source>
        <translation type="unfinished">báo đã thấy cảnh báo</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">cho biết nhãn ra sao</translation>
    </message>
    <message>
        <source>say which lot is empty</source>
        <translation type="unfinished">cho biết lô nào đã hết</translation>
    </message>
    <message>
        <source>say which lot is on the line</source>
        <translation type="unfinished">cho biết lô nào trên dây chuyền</translation>
    </message>
    <message>
        <source>say who is on the scale</source>
        <translation type="unfinished">chọn người cân</translation>
    </message>
    <message>
        <source>say who leads</source>
        <translation type="unfinished">chọn tổ trưởng</translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished">cân</translation>
    </message>
    <message>
        <source>scale check</source>
        <translation type="unfinished">kiểm tra cân</translation>
    </message>
    <message>
        <source>scale check at the end of the run</source>
        <translation type="unfinished">kiểm tra cân cuối đợt</translation>
    </message>
    <message>
        <source>scale interval {mass} against at most {most} for {nominal}</source>
        <translation type="unfinished">độ chia {mass}, tối đa {most} cho {nominal}</translation>
    </message>
    <message>
        <source>scale interval {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">độ chia {mass} so với {share} của {limit} = {most}</translation>
    </message>
    <message>
        <source>scale line</source>
        <translation type="unfinished">đường nối cân</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">cân hiện {mass}, lấy số trên cân làm chuẩn</translation>
    </message>
    <message>
        <source>scale's port {code} cannot be opened</source>
        <translation type="unfinished">không mở được cổng {code} của cân</translation>
    </message>
    <message>
        <source>scan a case or pallet</source>
        <translation type="unfinished">quét thùng hoặc pallet</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">quét nhãn</translation>
    </message>
    <message>
        <source>scan a label or lot</source>
        <translation type="unfinished">quét nhãn hoặc lô</translation>
    </message>
    <message>
        <source>scan a lot</source>
        <translation type="unfinished">quét lô</translation>
    </message>
    <message>
        <source>scan a lot, or touch one</source>
        <translation type="unfinished">quét lô, hoặc chạm một lô</translation>
    </message>
    <message>
        <source>scan a picked bag</source>
        <translation type="unfinished">quét túi đã chọn</translation>
    </message>
    <message>
        <source>scan a ticket or label</source>
        <translation type="unfinished">quét phiếu hoặc nhãn</translation>
    </message>
    <message>
        <source>scan back</source>
        <translation type="unfinished">quét nhãn</translation>
    </message>
    <message>
        <source>scan of a label</source>
        <translation type="unfinished">quét nhãn</translation>
    </message>
    <message>
        <source>scan or type a lot code, then Enter</source>
        <translation type="unfinished">quét hoặc gõ mã lô rồi Enter</translation>
    </message>
    <message>
        <source>scan or type the film lot</source>
        <translation type="unfinished">quét hoặc gõ lô màng</translation>
    </message>
    <message>
        <source>scan pallets and cases</source>
        <translation type="unfinished">quét pallet và thùng</translation>
    </message>
    <message>
        <source>scan the bags</source>
        <translation type="unfinished">quét các túi</translation>
    </message>
    <message>
        <source>scan the bags of the case first</source>
        <translation type="unfinished">quét túi của thùng trước</translation>
    </message>
    <message>
        <source>scan the case label</source>
        <translation type="unfinished">quét nhãn thùng</translation>
    </message>
    <message>
        <source>scan the cases</source>
        <translation type="unfinished">quét các thùng</translation>
    </message>
    <message>
        <source>scan the cases of the pallet first</source>
        <translation type="unfinished">quét thùng của pallet trước</translation>
    </message>
    <message>
        <source>scan the label</source>
        <translation type="unfinished">quét nhãn</translation>
    </message>
    <message>
        <source>scan the label of the new bag</source>
        <translation type="unfinished">quét nhãn túi mới</translation>
    </message>
    <message>
        <source>scan the label, or type its serial</source>
        <translation type="unfinished">quét nhãn, hoặc gõ số</translation>
    </message>
    <message>
        <source>scan the last label</source>
        <translation type="unfinished">quét nhãn cuối</translation>
    </message>
    <message>
        <source>scan the pallets and cases that leave</source>
        <translation type="unfinished">quét pallet và thùng xuất đi</translation>
    </message>
    <message>
        <source>scan the roll, then Enter</source>
        <translation type="unfinished">quét cuộn, rồi Enter</translation>
    </message>
    <message>
        <source>scan the {what}: {where}</source>
        <translation type="unfinished">quét {what}: {where}</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">mối hàn</translation>
    </message>
    <message>
        <source>seal in doubt</source>
        <translation type="unfinished">nghi mối hàn</translation>
    </message>
    <message>
        <source>seal open</source>
        <translation type="unfinished">hở mối hàn</translation>
    </message>
    <message>
        <source>seen on its bag</source>
        <translation type="unfinished">thấy trên túi</translation>
    </message>
    <message>
        <source>sent to the laboratory</source>
        <translation type="unfinished">gửi phòng thí nghiệm</translation>
    </message>
    <message>
        <source>sent to the scale</source>
        <translation type="unfinished">đã gửi tới cân</translation>
    </message>
    <message>
        <source>serial</source>
        <translation type="unfinished">số túi</translation>
    </message>
    <message>
        <source>serial number on its plate</source>
        <translation type="unfinished">số sê-ri trên biển</translation>
    </message>
    <message>
        <source>serial number {shown}: give the 1 to 40 characters of the plate</source>
        <translation type="unfinished">số sê-ri {shown}: ghi 1 đến 40 ký tự trên nhãn máy</translation>
    </message>
    <message>
        <source>serial {code}</source>
        <translation type="unfinished">sê-ri {code}</translation>
    </message>
    <message>
        <source>serials</source>
        <translation type="unfinished">số túi</translation>
    </message>
    <message>
        <source>service</source>
        <translation type="unfinished">bảo trì</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">để riêng</translation>
    </message>
    <message>
        <source>set aside: {reason}</source>
        <translation type="unfinished">để riêng: {reason}</translation>
    </message>
    <message>
        <source>set on purpose</source>
        <translation type="unfinished">chỉnh có chủ ý</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">đặt người, PIN và thẻ</translation>
    </message>
    <message>
        <source>set to {mass} in the settings</source>
        <translation type="unfinished">đặt {mass} trong cài đặt</translation>
    </message>
    <message>
        <source>set unit, interval and capacity under [scale] of station.toml first</source>
        <translation type="unfinished">trước hết đặt đơn vị, độ chia và tải trong [scale] của station.toml</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">đang để riêng: {reason}</translation>
    </message>
    <message>
        <source>setting bag {serial} aside needs a reason: choose one</source>
        <translation type="unfinished">để riêng túi {serial} cần lý do: hãy chọn</translation>
    </message>
    <message>
        <source>shelve an alarm</source>
        <translation type="unfinished">hoãn cảnh báo</translation>
    </message>
    <message>
        <source>shelved until {time}</source>
        <translation type="unfinished">hoãn đến {time}</translation>
    </message>
    <message>
        <source>shift</source>
        <translation type="unfinished">ca</translation>
    </message>
    <message>
        <source>shift {shift}</source>
        <translation type="unfinished">ca {shift}</translation>
    </message>
    <message>
        <source>ship</source>
        <translation type="unfinished">giao hàng</translation>
    </message>
    <message>
        <source>shipment</source>
        <translation type="unfinished">chuyến giao</translation>
    </message>
    <message>
        <source>shipment came back</source>
        <translation type="unfinished">chuyến giao bị trả</translation>
    </message>
    <message>
        <source>shipment withdrawn</source>
        <translation type="unfinished">chuyến giao đã rút</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">ký chuyển đợt</translation>
    </message>
    <message>
        <source>signed with a difference</source>
        <translation type="unfinished">ký với chênh lệch</translation>
    </message>
    <message>
        <source>since</source>
        <translation type="unfinished">từ</translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation type="unfinished">từ {time}</translation>
    </message>
    <message>
        <source>since {time}, seen by {who}</source>
        <translation type="unfinished">từ {time}, {who} đã thấy</translation>
    </message>
    <message>
        <source>software</source>
        <translation type="unfinished">phần mềm</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing</source>
        <translation type="unfinished">nét liền: {error} từ túi đầu, nét đứt: tăng dần</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing, step: as dated</source>
        <translation type="unfinished">nét liền: {error} từ túi đầu, nét đứt: tăng dần, bước nhảy: có giờ</translation>
    </message>
    <message>
        <source>spoiled ones not counted</source>
        <translation type="unfinished">chưa đếm nhãn hỏng</translation>
    </message>
    <message>
        <source>spoiled {count}</source>
        <translation type="unfinished">hỏng {count}</translation>
    </message>
    <message>
        <source>spooled</source>
        <translation type="unfinished">trong hàng in</translation>
    </message>
    <message>
        <source>spread of the fills</source>
        <translation type="unfinished">độ phân tán lượng nạp</translation>
    </message>
    <message>
        <source>spread {spread}: a mean of {mean} or more, by the {what} rule</source>
        <translation type="unfinished">độ phân tán {spread}: trung bình {mean} trở lên, theo quy tắc {what}</translation>
    </message>
    <message>
        <source>start a run</source>
        <translation type="unfinished">mở đợt</translation>
    </message>
    <message>
        <source>state</source>
        <translation type="unfinished">trạng thái</translation>
    </message>
    <message>
        <source>status {code} with the weight {shown}, it needs ten dashes</source>
        <translation type="unfinished">trạng thái {code} với số cân {shown}: cần mười gạch</translation>
    </message>
    <message>
        <source>stood</source>
        <translation type="unfinished">đứng máy</translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished">dừng</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">dừng dây chuyền</translation>
    </message>
    <message>
        <source>stops</source>
        <translation type="unfinished">lần dừng</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">túi lưu kho</translation>
    </message>
    <message>
        <source>stuck on askew</source>
        <translation type="unfinished">dán lệch</translation>
    </message>
    <message>
        <source>study of its film lot: {study}</source>
        <translation type="unfinished">khảo sát lô màng: {study}</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation type="unfinished">đã gửi</translation>
    </message>
    <message>
        <source>suits</source>
        <translation type="unfinished">phù hợp</translation>
    </message>
    <message>
        <source>suspect</source>
        <translation type="unfinished">nghi ngờ</translation>
    </message>
    <message>
        <source>suspect window</source>
        <translation type="unfinished">khoảng nghi ngờ</translation>
    </message>
    <message>
        <source>suspect window of {what}</source>
        <translation type="unfinished">khoảng nghi ngờ của {what}</translation>
    </message>
    <message>
        <source>take it off the line</source>
        <translation type="unfinished">bỏ khỏi dây chuyền</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">bỏ ra: {where}</translation>
    </message>
    <message>
        <source>take old files off the disk</source>
        <translation type="unfinished">xóa tệp cũ khỏi ổ đĩa</translation>
    </message>
    <message>
        <source>take over changed settings</source>
        <translation type="unfinished">nhận thiết lập đã đổi</translation>
    </message>
    <message>
        <source>take the lot off and load another</source>
        <translation type="unfinished">bỏ lô ra và nạp lô khác</translation>
    </message>
    <message>
        <source>take the old lot off and load the next in one step, or end the run</source>
        <translation type="unfinished">bỏ lô cũ và nạp lô mới cùng lúc, hoặc kết thúc đợt</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation type="unfinished">đã tháo rời</translation>
    </message>
    <message>
        <source>taken by QA</source>
        <translation type="unfinished">QA lấy mẫu</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation type="unfinished">đã tháo</translation>
    </message>
    <message>
        <source>tare</source>
        <translation type="unfinished">bì</translation>
    </message>
    <message>
        <source>tare error</source>
        <translation type="unfinished">lỗi bì</translation>
    </message>
    <message>
        <source>tare {mass}</source>
        <translation type="unfinished">bì {mass}</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">mục tiêu</translation>
    </message>
    <message>
        <source>target of {product}</source>
        <translation type="unfinished">mục tiêu của {product}</translation>
    </message>
    <message>
        <source>target {mass} now</source>
        <translation type="unfinished">mục tiêu {mass} hiện nay</translation>
    </message>
    <message>
        <source>target {mass} proposed</source>
        <translation type="unfinished">mục tiêu {mass} đề xuất</translation>
    </message>
    <message>
        <source>teach a scale of your own</source>
        <translation type="unfinished">hãy dạy cân của mình</translation>
    </message>
    <message>
        <source>tell maintenance</source>
        <translation type="unfinished">báo bảo trì</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation type="unfinished">phần mười</translation>
    </message>
    <message>
        <source>test weights of class {code} for {mass} may be wrong by {own}, more than a third of the {allowed} the scale may be: use a finer class</source>
        <translation type="unfinished">quả cân cấp {code} cho {mass} có thể sai {own}, hơn một phần ba mức {allowed} của cân: dùng cấp tốt hơn</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity ({here})</source>
        <translation type="unfinished">có chữ nhưng không phải số cân của giao thức này: thiết bị khác ở cổng này, hay cân đặt dạng khác? Nếu không, xem tốc độ baud và chẵn lẻ ({here})</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity of the converter</source>
        <translation type="unfinished">có chữ nhưng không phải số cân của giao thức này: thiết bị khác ở cổng này, hay cân đặt dạng khác? Nếu không, xem tốc độ baud và chẵn lẻ của bộ chuyển</translation>
    </message>
    <message>
        <source>the bag on the pan may hold lot {lot}, which is held: set it aside and lift it, then change the lot</source>
        <translation type="unfinished">túi trên đĩa có thể chứa lô {lot} bị giữ: để riêng và nhấc ra, rồi đổi lô</translation>
    </message>
    <message>
        <source>the bags scatter too much for a mean tare ({study}): use other bags</source>
        <translation type="unfinished">túi chênh nhau quá để lấy bì trung bình ({study}): dùng túi khác</translation>
    </message>
    <message>
        <source>the centre is not reached</source>
        <translation type="unfinished">không nối được trung tâm</translation>
    </message>
    <message>
        <source>the centre stops {what} {code} ({reason}): {end}</source>
        <translation type="unfinished">trung tâm dừng {what} {code} ({reason}): {end}</translation>
    </message>
    <message>
        <source>the check of the scale is overdue: {where}</source>
        <translation type="unfinished">quá hạn kiểm tra cân: {where}</translation>
    </message>
    <message>
        <source>the check of {what} is overdue: {where}</source>
        <translation type="unfinished">quá hạn kiểm tra {what}: {where}</translation>
    </message>
    <message>
        <source>the clock is {time} behind the newest entry of the record</source>
        <translation type="unfinished">đồng hồ chậm {time} so với mục ghi mới nhất</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}</source>
        <translation type="unfinished">đồng hồ nhảy {way} {time}</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}, to another day</source>
        <translation type="unfinished">đồng hồ nhảy {way} {time}, sang ngày khác</translation>
    </message>
    <message>
        <source>the clock was set between the checks: the bags have no sure order in time</source>
        <translation type="unfinished">đồng hồ bị chỉnh giữa hai lần kiểm tra: thứ tự túi không chắc</translation>
    </message>
    <message>
        <source>the code holds a character that no code of ours has</source>
        <translation type="unfinished">mã có ký tự không mã nào của ta có</translation>
    </message>
    <message>
        <source>the code presses keys that are no text</source>
        <translation type="unfinished">mã bấm phím không phải chữ</translation>
    </message>
    <message>
        <source>the computer slept or was held up: what the scale sent is too old</source>
        <translation type="unfinished">máy tính đã ngủ hoặc bị giữ lại: số cân đã gửi quá cũ</translation>
    </message>
    <message>
        <source>the demo's settings stay as they are</source>
        <translation type="unfinished">cài đặt bản thử giữ nguyên</translation>
    </message>
    <message>
        <source>the device is gone, or another program reads the same port</source>
        <translation type="unfinished">thiết bị không còn, hoặc chương trình khác đọc cùng cổng</translation>
    </message>
    <message>
        <source>the disk cannot be asked: {why}</source>
        <translation type="unfinished">không hỏi được ổ đĩa: {why}</translation>
    </message>
    <message>
        <source>the disk fills up</source>
        <translation type="unfinished">ổ đĩa sắp đầy</translation>
    </message>
    <message>
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">đĩa đầy: giải phóng chỗ rồi in lại</translation>
    </message>
    <message>
        <source>the disk is nearly full: free {more} on it, then packing goes on by itself</source>
        <translation type="unfinished">ổ đĩa gần đầy: giải phóng {more}, rồi tự đóng gói tiếp</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: take old files off it, or call maintenance</source>
        <translation type="unfinished">ổ đĩa đầy {percent} %, còn {free}: xóa tệp cũ hoặc gọi bảo trì</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: {why}</source>
        <translation type="unfinished">ổ đĩa đầy {percent} %, còn {free}: {why}</translation>
    </message>
    <message>
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">túi rỗng {mass} không khớp {what}: cân túi khác: {where}</translation>
    </message>
    <message>
        <source>the empty pan does not show zero</source>
        <translation type="unfinished">đĩa trống không hiện số không</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">đĩa trống hiện {mass}: lau sạch rồi về số không</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation type="unfinished">mức tối thiểu</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">mất thư mục nhãn: tạo lại {folder}</translation>
    </message>
    <message>
        <source>the known fault of older versions is mended in this one</source>
        <translation type="unfinished">lỗi đã biết của bản cũ đã được sửa ở bản này</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}, so it was printed: destroy it first</source>
        <translation type="unfinished">nhãn của túi {serial} là {state}, tức đã in: hủy trước</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: nothing to answer</source>
        <translation type="unfinished">nhãn của túi {serial} là {state}: không cần trả lời</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: only one that is {states} is printed again</source>
        <translation type="unfinished">nhãn của túi {serial} là {state}: chỉ in lại khi {states}</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: {fate}</source>
        <translation type="unfinished">nhãn của túi {serial} là {state}: {fate}</translation>
    </message>
    <message>
        <source>the label roll ends soon</source>
        <translation type="unfinished">cuộn nhãn sắp hết</translation>
    </message>
    <message>
        <source>the label was refused ({why}): end the run, or approve it at {where}</source>
        <translation type="unfinished">nhãn bị từ chối ({why}): đóng đợt hoặc duyệt ở {where}</translation>
    </message>
    <message>
        <source>the line does not stand</source>
        <translation type="unfinished">dây chuyền không dừng</translation>
    </message>
    <message>
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">dây chuyền đang dừng, {reason}: ĐỢT, rồi THAY ĐỔI (F8) để tiếp tục</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">dây chuyền đã dừng</translation>
    </message>
    <message>
        <source>the machine slept for {time}</source>
        <translation type="unfinished">máy ngủ {time}</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">trung bình dưới danh định</translation>
    </message>
    <message>
        <source>the new bag has a serial of its own: scan its label</source>
        <translation type="unfinished">túi mới có số riêng: quét nhãn của nó</translation>
    </message>
    <message>
        <source>the new film or roll is the right one</source>
        <translation type="unfinished">màng hoặc cuộn mới đúng loại</translation>
    </message>
    <message>
        <source>the newest entry of the record is {time} old</source>
        <translation type="unfinished">mục ghi mới nhất đã {time}</translation>
    </message>
    <message>
        <source>the offset from UTC changed by {time}, as daylight saving does</source>
        <translation type="unfinished">độ lệch UTC đổi {time}, như giờ mùa hè</translation>
    </message>
    <message>
        <source>the oldest entry has waited for more than 30 minutes</source>
        <translation type="unfinished">mục ghi cũ nhất đã chờ hơn 30 phút</translation>
    </message>
    <message>
        <source>the pan is clean, dry and at zero</source>
        <translation type="unfinished">đĩa sạch, khô và về không</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">đĩa cân phải trống trước túi tiếp theo</translation>
    </message>
    <message>
        <source>the plan takes {count} packs, the batch will have only {lot}</source>
        <translation type="unfinished">kế hoạch lấy {count} túi, mẻ chỉ có {lot}</translation>
    </message>
    <message>
        <source>the port is not open yet</source>
        <translation type="unfinished">cổng chưa mở</translation>
    </message>
    <message>
        <source>the port is open, no weight was read yet</source>
        <translation type="unfinished">cổng đã mở, chưa đọc được số cân</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">máy in đã bỏ cuộc</translation>
    </message>
    <message>
        <source>the printer gives no known job state</source>
        <translation type="unfinished">máy in không cho biết trạng thái lệnh in</translation>
    </message>
    <message>
        <source>the printer has stopped: see its panel</source>
        <translation type="unfinished">máy in đã dừng: xem bảng của máy</translation>
    </message>
    <message>
        <source>the printer is offline: switch it on, check its cable</source>
        <translation type="unfinished">máy in ngoại tuyến: bật lên, kiểm tra dây</translation>
    </message>
    <message>
        <source>the printer is paused: press its button to go on</source>
        <translation type="unfinished">máy in tạm dừng: bấm nút trên máy</translation>
    </message>
    <message>
        <source>the printer is switched off</source>
        <translation type="unfinished">máy in đang tắt</translation>
    </message>
    <message>
        <source>the printer needs somebody</source>
        <translation type="unfinished">máy in cần người</translation>
    </message>
    <message>
        <source>the printer says that it is out, but its reply to the page was lost</source>
        <translation type="unfinished">máy in báo đã ra, nhưng mất hồi đáp cho trang</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">máy in: {why}</translation>
    </message>
    <message>
        <source>the proposal is for version {number}</source>
        <translation type="unfinished">đề xuất cho phiên bản {number}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">không tới được máy in: bật lên, kiểm tra dây</translation>
    </message>
    <message>
        <source>the record's log takes {size}: another program has been reading the record for long, close it</source>
        <translation type="unfinished">nhật ký ghi chiếm {size}: chương trình khác đọc quá lâu, hãy đóng</translation>
    </message>
    <message>
        <source>the run begins with a check of the scale: {where}</source>
        <translation type="unfinished">đợt bắt đầu bằng kiểm tra cân: {where}</translation>
    </message>
    <message>
        <source>the run begins with a check of {what}: {where}</source>
        <translation type="unfinished">đợt bắt đầu bằng kiểm tra {what}: {where}</translation>
    </message>
    <message>
        <source>the run begins with a first-off</source>
        <translation type="unfinished">đợt bắt đầu bằng nhãn đầu</translation>
    </message>
    <message>
        <source>the run is open</source>
        <translation type="unfinished">đợt đang mở</translation>
    </message>
    <message>
        <source>the scale</source>
        <translation type="unfinished">cân</translation>
    </message>
    <message>
        <source>the scale came back at zero and a load lay on the pan before: take everything off, then press the pan once with a hand</source>
        <translation type="unfinished">cân trở lại ở số không mà trước đó có hàng trên đĩa: bỏ hết ra, rồi ấn tay lên đĩa một lần</translation>
    </message>
    <message>
        <source>the scale does not do that</source>
        <translation type="unfinished">cân không làm được việc đó</translation>
    </message>
    <message>
        <source>the scale failed its check</source>
        <translation type="unfinished">cân không đạt kiểm tra</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">cân không đạt kiểm tra: chỉnh rồi kiểm tra lại: {where}</translation>
    </message>
    <message>
        <source>the scale found no zero when it was switched on: empty the pan and switch it on again</source>
        <translation type="unfinished">cân không tìm thấy số không khi bật: dọn trống đĩa rồi bật lại</translation>
    </message>
    <message>
        <source>the scale gave no answer, look at its display</source>
        <translation type="unfinished">cân không trả lời, xem màn hình của cân</translation>
    </message>
    <message>
        <source>the scale has just come back: its weights count in a moment</source>
        <translation type="unfinished">cân vừa trở lại: lát nữa số cân mới tính</translation>
    </message>
    <message>
        <source>the scale is a recording: no bag is taken from it</source>
        <translation type="unfinished">cân là bản ghi: không nhận túi nào từ đó</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">cân không gửi số: kiểm tra dây và nguồn điện</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">cân ở {code} không gửi gì {number} s: xem đã bật chưa, cáp và cài đặt truyền</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">cân ở {code} không gửi gì {number} s: xem đã bật chưa, cáp và cài đặt truyền ({here})</translation>
    </message>
    <message>
        <source>the scale read high at some loads and low at others</source>
        <translation type="unfinished">cân đọc cao ở vài tải và thấp ở tải khác</translation>
    </message>
    <message>
        <source>the scale read high: packs may be short</source>
        <translation type="unfinished">cân đọc cao: túi có thể thiếu</translation>
    </message>
    <message>
        <source>the scale read low: product was given away</source>
        <translation type="unfinished">cân đọc thấp: đã cho dư sản phẩm</translation>
    </message>
    <message>
        <source>the scale refused to set zero: empty the pan</source>
        <translation type="unfinished">cân không chịu về không: dọn trống đĩa</translation>
    </message>
    <message>
        <source>the scale reports a tare error: empty the pan and clear the tare</source>
        <translation type="unfinished">cân báo lỗi bì: dọn trống đĩa rồi xóa bì</translation>
    </message>
    <message>
        <source>the scale reports a zero error: empty the pan and set it to zero</source>
        <translation type="unfinished">cân báo lỗi số không: dọn trống đĩa rồi về số không</translation>
    </message>
    <message>
        <source>the scale says centre of zero and shows {mass}</source>
        <translation type="unfinished">cân báo đúng số không mà hiện {mass}</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set bits 7 and {same} for this port ({here}), or 8N1 on the scale</source>
        <translation type="unfinished">cân gửi 7 bit dữ liệu với {parity}: đặt bit 7 và {same} cho cổng này ({here}), hoặc 8N1 trên cân</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set the same on the converter, or 8N1 on the scale</source>
        <translation type="unfinished">cân gửi 7 bit dữ liệu với {parity}: đặt giống vậy trên bộ chuyển, hoặc 8N1 trên cân</translation>
    </message>
    <message>
        <source>the scale sent dashes instead of a weight</source>
        <translation type="unfinished">cân gửi dấu gạch thay cho số cân</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">cân đang trừ bì: xóa bì trên cân, trạm tự trừ túi</translation>
    </message>
    <message>
        <source>the scale shows less than zero: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">cân hiện dưới số không: xem đĩa đặt đúng và không bị nâng, dọn trống rồi về số không</translation>
    </message>
    <message>
        <source>the scale shows no weight</source>
        <translation type="unfinished">cân không hiện số cân</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">cân đang ở {unit}, đợt dùng {other}: chỉnh lại cân</translation>
    </message>
    <message>
        <source>the scale's line is not open</source>
        <translation type="unfinished">đường dây của cân chưa mở</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">quá hạn quét nhãn: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} did not match</source>
        <translation type="unfinished">mã quét của nhãn {serial} không khớp</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">mã quét của nhãn {serial} không khớp: tổ trưởng xử lý ở {where}</translation>
    </message>
    <message>
        <source>the settings are in {code}</source>
        <translation type="unfinished">cài đặt dùng {code}</translation>
    </message>
    <message>
        <source>the settings before are in station.toml.before</source>
        <translation type="unfinished">cài đặt cũ ở station.toml.before</translation>
    </message>
    <message>
        <source>the settings say so</source>
        <translation type="unfinished">theo cài đặt</translation>
    </message>
    <message>
        <source>the station ended before the label's fate was recorded</source>
        <translation type="unfinished">trạm dừng trước khi ghi nhãn đi đâu</translation>
    </message>
    <message>
        <source>the station fills no cases: customers.toml is missing</source>
        <translation type="unfinished">trạm không đóng thùng: thiếu customers.toml</translation>
    </message>
    <message>
        <source>the station has a fault ({what}): call maintenance</source>
        <translation type="unfinished">trạm bị lỗi ({what}): gọi bảo trì</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">trạm xử lý chậm hơn cân: nhấc túi ra và chờ</translation>
    </message>
    <message>
        <source>the station stood for long</source>
        <translation type="unfinished">trạm đã dừng lâu</translation>
    </message>
    <message>
        <source>the station writes and checkpoints through one, so it cannot happen here</source>
        <translation type="unfinished">trạm chỉ ghi qua một kết nối nên ở đây không xảy ra</translation>
    </message>
    <message>
        <source>the store is closed</source>
        <translation type="unfinished">sổ ghi đã đóng</translation>
    </message>
    <message>
        <source>the study has {study}, more than the tare {tare} taken off: raise the tare of {bag}</source>
        <translation type="unfinished">khảo sát cho {study}, hơn bì đã trừ {tare}: tăng bì của {bag}</translation>
    </message>
    <message>
        <source>the test weights come to {total} for the load {load} of {mass}: at least {percent} of it are needed</source>
        <translation type="unfinished">quả cân được {total} cho tải {load} {mass}: cần ít nhất {percent}</translation>
    </message>
    <message>
        <source>the year {year} is not believed</source>
        <translation type="unfinished">năm {year} không đáng tin</translation>
    </message>
    <message>
        <source>then its number, its verification and who answers for it</source>
        <translation type="unfinished">rồi số máy, kiểm định và người chịu trách nhiệm</translation>
    </message>
    <message>
        <source>there is no run before: nothing is to be counted</source>
        <translation type="unfinished">không có đợt trước: không cần đếm</translation>
    </message>
    <message>
        <source>there is nothing to report</source>
        <translation type="unfinished">không có gì để báo cáo</translation>
    </message>
    <message>
        <source>there is room again: {free} free</source>
        <translation type="unfinished">đã có chỗ trở lại: còn {free}</translation>
    </message>
    <message>
        <source>these lines are in {units}</source>
        <translation type="unfinished">các dòng này dùng {units}</translation>
    </message>
    <message>
        <source>they do not all end with the same control characters</source>
        <translation type="unfinished">không cùng kết thúc bằng ký tự điều khiển giống nhau</translation>
    </message>
    <message>
        <source>this PIN is not right</source>
        <translation type="unfinished">PIN không đúng</translation>
    </message>
    <message>
        <source>this PIN is not right: wait {time}</source>
        <translation type="unfinished">PIN không đúng: chờ {time}</translation>
    </message>
    <message>
        <source>this badge is not right</source>
        <translation type="unfinished">thẻ không đúng</translation>
    </message>
    <message>
        <source>this badge is not right: wait {time}</source>
        <translation type="unfinished">thẻ không đúng: chờ {time}</translation>
    </message>
    <message>
        <source>this bag in it</source>
        <translation type="unfinished">có túi này</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">túi này chưa được ghi và không có nhãn: {why}</translation>
    </message>
    <message>
        <source>this cannot be shelved, {what}: {answer}</source>
        <translation type="unfinished">không hoãn được, {what}: {answer}</translation>
    </message>
    <message>
        <source>this hour: all {count} bags</source>
        <translation type="unfinished">giờ này: cả {count} túi</translation>
    </message>
    <message>
        <source>this hour: {count} of about {all} bags</source>
        <translation type="unfinished">giờ này: {count} trong khoảng {all} túi</translation>
    </message>
    <message>
        <source>this one is destroyed</source>
        <translation type="unfinished">nhãn này đã hủy</translation>
    </message>
    <message>
        <source>this user may not use it: add the user to the group that owns it (on most Linux systems dialout) and sign in again</source>
        <translation type="unfinished">người dùng này không được dùng: thêm vào nhóm sở hữu (đa số Linux là dialout) rồi đăng nhập lại</translation>
    </message>
    <message>
        <source>this version can damage a file that two connections write at once</source>
        <translation type="unfinished">bản này có thể làm hỏng tệp khi hai kết nối cùng ghi</translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished">giờ</translation>
    </message>
    <message>
        <source>time, with a lot</source>
        <translation type="unfinished">giờ, kèm lô</translation>
    </message>
    <message>
        <source>too many wrong PINs: wait {time}</source>
        <translation type="unfinished">sai PIN quá nhiều lần: chờ {time}</translation>
    </message>
    <message>
        <source>too many wrong badges: wait {time}</source>
        <translation type="unfinished">sai thẻ quá nhiều lần: chờ {time}</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation type="unfinished">quá ấm</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation type="unfinished">thêm đủ</translation>
    </message>
    <message>
        <source>torn or creased</source>
        <translation type="unfinished">rách hoặc nhăn</translation>
    </message>
    <message>
        <source>torn up, seen by me</source>
        <translation type="unfinished">tôi thấy đã xé</translation>
    </message>
    <message>
        <source>touch an alarm first</source>
        <translation type="unfinished">chạm một cảnh báo trước</translation>
    </message>
    <message>
        <source>touch and key in all three counts first</source>
        <translation type="unfinished">chạm và nhập đủ ba số đếm trước</translation>
    </message>
    <message>
        <source>touch the rejects it is about first</source>
        <translation type="unfinished">chạm các túi loại trước</translation>
    </message>
    <message>
        <source>touch to change</source>
        <translation type="unfinished">chạm để đổi</translation>
    </message>
    <message>
        <source>touch when thrown out</source>
        <translation type="unfinished">chạm khi bị loại ra</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">chạm tên mình trước</translation>
    </message>
    <message>
        <source>two lots overlap for long</source>
        <translation type="unfinished">hai lô chồng nhau quá lâu</translation>
    </message>
    <message>
        <source>two people release: the second one is missing</source>
        <translation type="unfinished">hai người giải phóng: thiếu người thứ hai</translation>
    </message>
    <message>
        <source>two people sign</source>
        <translation type="unfinished">hai người ký</translation>
    </message>
    <message>
        <source>typed below</source>
        <translation type="unfinished">gõ bên dưới</translation>
    </message>
    <message>
        <source>under capacity</source>
        <translation type="unfinished">dưới tầm cân</translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished">đơn vị</translation>
    </message>
    <message>
        <source>unit {shown} is not in the description</source>
        <translation type="unfinished">đơn vị {shown} không có trong mô tả</translation>
    </message>
    <message>
        <source>unknown command</source>
        <translation type="unfinished">lệnh không rõ</translation>
    </message>
    <message>
        <source>until, such as 09:40</source>
        <translation type="unfinished">đến, như 09:40</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">tối đa</translation>
    </message>
    <message>
        <source>upper {mass}</source>
        <translation type="unfinished">mức trên {mass}</translation>
    </message>
    <message>
        <source>use by</source>
        <translation type="unfinished">hạn dùng</translation>
    </message>
    <message>
        <source>use by {day}</source>
        <translation type="unfinished">hạn dùng {day}</translation>
    </message>
    <message>
        <source>used to set the printer up</source>
        <translation type="unfinished">dùng để chỉnh máy in</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation type="unfinished">hút chân không</translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished">giá trị</translation>
    </message>
    <message>
        <source>value is {number}, {why}</source>
        <translation type="unfinished">giá trị {number}: {why}</translation>
    </message>
    <message>
        <source>value is {shown}, not a number as described</source>
        <translation type="unfinished">giá trị {shown}: không phải số như mô tả</translation>
    </message>
    <message>
        <source>verified {code}</source>
        <translation type="unfinished">kiểm định {code}</translation>
    </message>
    <message>
        <source>verified {day}: give a day from {first} to today, {today}</source>
        <translation type="unfinished">kiểm định {day}: ngày từ {first} đến hôm nay {today}</translation>
    </message>
    <message>
        <source>verified {shown}: give the day as in {day}</source>
        <translation type="unfinished">kiểm định {shown}: ghi ngày như {day}</translation>
    </message>
    <message>
        <source>verified, as in 2026-03-31</source>
        <translation type="unfinished">kiểm định, như 2026-03-31</translation>
    </message>
    <message>
        <source>version</source>
        <translation type="unfinished">phiên bản</translation>
    </message>
    <message>
        <source>voided</source>
        <translation type="unfinished">đã hủy</translation>
    </message>
    <message>
        <source>wait until the scale shows a steady weight</source>
        <translation type="unfinished">chờ cân hiện số ổn định</translation>
    </message>
    <message>
        <source>wait until the scale stands still: it is never set to zero in motion</source>
        <translation type="unfinished">chờ cân đứng yên: không bao giờ về không khi đang động</translation>
    </message>
    <message>
        <source>waiting for QA</source>
        <translation type="unfinished">chờ QA</translation>
    </message>
    <message>
        <source>waiting for the scale's first reading</source>
        <translation type="unfinished">đang chờ số đầu tiên từ cân</translation>
    </message>
    <message>
        <source>warm or damaged</source>
        <translation type="unfinished">ấm hoặc hư hỏng</translation>
    </message>
    <message>
        <source>was wrong, is set right</source>
        <translation type="unfinished">đã sai, nay chỉnh đúng</translation>
    </message>
    <message>
        <source>wash record</source>
        <translation type="unfinished">sổ rửa</translation>
    </message>
    <message>
        <source>washed where allergens change</source>
        <translation type="unfinished">rửa khi đổi chất gây dị ứng</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished">đã bỏ</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">cân túi rỗng trong {count} túi</translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation type="unfinished">cân nó</translation>
    </message>
    <message>
        <source>weigh the rest</source>
        <translation type="unfinished">cân phần còn</translation>
    </message>
    <message>
        <source>weighed again</source>
        <translation type="unfinished">đã cân lại</translation>
    </message>
    <message>
        <source>weighed again, good</source>
        <translation type="unfinished">cân lại, đạt</translation>
    </message>
    <message>
        <source>weighed now</source>
        <translation type="unfinished">cân bây giờ</translation>
    </message>
    <message>
        <source>weight is {shown}, not a number of the standard's form</source>
        <translation type="unfinished">số cân {shown}: không đúng dạng chuẩn</translation>
    </message>
    <message>
        <source>weight not displayed</source>
        <translation type="unfinished">không hiện số cân</translation>
    </message>
    <message>
        <source>weighted average {mean}</source>
        <translation type="unfinished">trung bình có trọng số {mean}</translation>
    </message>
    <message>
        <source>weights arrive and are used</source>
        <translation type="unfinished">số cân đến và được dùng</translation>
    </message>
    <message>
        <source>weights come {number} s apart, and one counts for {most} s: set the scale, or the converter on its line, to send more often and at once</source>
        <translation type="unfinished">số cân cách nhau {number} s, mà mỗi số chỉ tính {most} s: đặt cân, hoặc bộ chuyển trên đường dây, gửi nhiều hơn và ngay</translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished">cái gì</translation>
    </message>
    <message>
        <source>what is open</source>
        <translation type="unfinished">việc còn mở</translation>
    </message>
    <message>
        <source>what the station sends comes back in front of the answers: switch the echo of the converter or of the scale off</source>
        <translation type="unfinished">những gì trạm gửi dội lại trước câu trả lời: tắt tiếng dội của bộ chuyển hoặc của cân</translation>
    </message>
    <message>
        <source>which label?</source>
        <translation type="unfinished">nhãn nào?</translation>
    </message>
    <message>
        <source>which {what}? Scan or type it first</source>
        <translation type="unfinished">{what} nào? Quét hoặc gõ trước</translation>
    </message>
    <message>
        <source>who decides? Choose a name first</source>
        <translation type="unfinished">ai quyết định? Chọn tên trước</translation>
    </message>
    <message>
        <source>who says so? Touch WHO and choose your name</source>
        <translation type="unfinished">ai xác nhận? Chạm AI rồi chọn tên</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">hết</translation>
    </message>
    <message>
        <source>whole error</source>
        <translation type="unfinished">toàn bộ sai số</translation>
    </message>
    <message>
        <source>whole run: all {count} bags</source>
        <translation type="unfinished">cả đợt: cả {count} túi</translation>
    </message>
    <message>
        <source>whole run: {count} of about {all} bags</source>
        <translation type="unfinished">cả đợt: {count} trong khoảng {all} túi</translation>
    </message>
    <message>
        <source>whom does it go to? Choose a customer</source>
        <translation type="unfinished">giao cho ai? Chọn khách hàng</translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished">vì sao</translation>
    </message>
    <message>
        <source>why it differs: scan or type</source>
        <translation type="unfinished">vì sao lệch: quét hoặc gõ</translation>
    </message>
    <message>
        <source>why it may go, or must be dumped</source>
        <translation type="unfinished">vì sao cho đi, hoặc đổ bỏ</translation>
    </message>
    <message>
        <source>why: scan or type the reason</source>
        <translation type="unfinished">lý do: quét hoặc gõ</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation type="unfinished">lau</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">lau đĩa rồi về số không</translation>
    </message>
    <message>
        <source>with a witness</source>
        <translation type="unfinished">có người chứng</translation>
    </message>
    <message>
        <source>with {customer}</source>
        <translation type="unfinished">ở {customer}</translation>
    </message>
    <message>
        <source>within both bounds</source>
        <translation type="unfinished">trong cả hai giới hạn</translation>
    </message>
    <message>
        <source>without it</source>
        <translation type="unfinished">nếu không</translation>
    </message>
    <message>
        <source>witness {who}</source>
        <translation type="unfinished">người chứng {who}</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">làm việc ở màn hình này</translation>
    </message>
    <message>
        <source>wrong date</source>
        <translation type="unfinished">sai ngày</translation>
    </message>
    <message>
        <source>wrong label</source>
        <translation type="unfinished">sai nhãn</translation>
    </message>
    <message>
        <source>wrong lots</source>
        <translation type="unfinished">sai lô</translation>
    </message>
    <message>
        <source>wrong roll taken out</source>
        <translation type="unfinished">đã bỏ cuộn sai</translation>
    </message>
    <message>
        <source>wrong text</source>
        <translation type="unfinished">sai chữ</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">sai cân</translation>
    </message>
    <message>
        <source>you approve</source>
        <translation type="unfinished">bạn duyệt</translation>
    </message>
    <message>
        <source>zero error</source>
        <translation type="unfinished">lỗi điểm không</translation>
    </message>
    <message>
        <source>{begin_code} to {end_code}</source>
        <translation type="unfinished">{begin_code} đến {end_code}</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: FAILS</source>
        <translation type="unfinished">{case}: trung bình {mean}, {count} dưới T1: KHÔNG ĐẠT</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: passes</source>
        <translation type="unfinished">{case}: trung bình {mean}, {count} dưới T1: đạt</translation>
    </message>
    <message>
        <source>{code} is at {number}</source>
        <translation type="unfinished">{code} đang ở {number}</translation>
    </message>
    <message>
        <source>{code} is not known: receive it first</source>
        <translation type="unfinished">không rõ {code}: nhận hàng trước</translation>
    </message>
    <message>
        <source>{code} {count} of {whole}</source>
        <translation type="unfinished">{code} {count} trên {whole}</translation>
    </message>
    <message>
        <source>{count} BAGS HELD OR OUT</source>
        <translation type="unfinished">{count} TÚI BỊ GIỮ HOẶC BỎ</translation>
    </message>
    <message>
        <source>{count} bag is {what}.</source>
        <translation type="unfinished">{count} túi {what}.</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} túi</translation>
    </message>
    <message>
        <source>{count} bags an hour</source>
        <translation type="unfinished">{count} túi mỗi giờ</translation>
    </message>
    <message>
        <source>{count} bags are dumped: they lie in the reject bin. Release the empty hold.</source>
        <translation type="unfinished">{count} túi đã đổ bỏ: nằm trong thùng loại. Giải phóng lệnh giữ trống.</translation>
    </message>
    <message>
        <source>{count} bags are held</source>
        <translation type="unfinished">{count} túi bị giữ</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} túi bị giữ sau kiểm tra không đạt: QA quyết định: {where}</translation>
    </message>
    <message>
        <source>{count} bags are in the bin, {expected} by the record: say why they differ</source>
        <translation type="unfinished">{count} túi trong thùng, sổ ghi {expected}: nêu lý do lệch</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">đã đóng {count} túi: tổ trưởng đóng đợt</translation>
    </message>
    <message>
        <source>{count} bags are released.</source>
        <translation type="unfinished">Đã giải phóng {count} túi.</translation>
    </message>
    <message>
        <source>{count} bags are {what}.</source>
        <translation type="unfinished">{count} túi {what}.</translation>
    </message>
    <message>
        <source>{count} bags from {begin} to {end} are held: {why}.</source>
        <translation type="unfinished">{count} túi từ {begin} đến {end} bị giữ: {why}.</translation>
    </message>
    <message>
        <source>{count} bags held or out</source>
        <translation type="unfinished">{count} túi bị giữ hoặc bỏ</translation>
    </message>
    <message>
        <source>{count} bags held, packed after {begin} until {end}</source>
        <translation type="unfinished">giữ {count} túi, đóng từ {begin} đến {end}</translation>
    </message>
    <message>
        <source>{count} bags in the batch; {plan}</source>
        <translation type="unfinished">mẻ có {count} túi; {plan}</translation>
    </message>
    <message>
        <source>{count} bags lie in the bin by the record</source>
        <translation type="unfinished">theo sổ, thùng loại có {count} túi</translation>
    </message>
    <message>
        <source>{count} bags of one run</source>
        <translation type="unfinished">{count} túi của một đợt</translation>
    </message>
    <message>
        <source>{count} bags weigh less than {mass} in the mean</source>
        <translation type="unfinished">{count} túi có trung bình dưới {mass}</translation>
    </message>
    <message>
        <source>{count} bags {more} than recorded: count again, or say why</source>
        <translation type="unfinished">{count} túi {more} so với đã ghi: đếm lại, hoặc nêu lý do</translation>
    </message>
    <message>
        <source>{count} case</source>
        <translation type="unfinished">{count} thùng</translation>
    </message>
    <message>
        <source>{count} cases</source>
        <translation type="unfinished">{count} thùng</translation>
    </message>
    <message>
        <source>{count} cases and pallets stand here</source>
        <translation type="unfinished">{count} thùng và pallet ở đây</translation>
    </message>
    <message>
        <source>{count} characters, allowed are {least} to {most}</source>
        <translation type="unfinished">{count} ký tự, cho phép {least} đến {most}</translation>
    </message>
    <message>
        <source>{count} characters, at most {most}</source>
        <translation type="unfinished">{count} ký tự, tối đa {most}</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation type="unfinished">{count} ngày</translation>
    </message>
    <message>
        <source>{count} days ago</source>
        <translation type="unfinished">{count} ngày trước</translation>
    </message>
    <message>
        <source>{count} fills are too few for a proposal: weigh {least} or more</source>
        <translation type="unfinished">{count} lần nạp quá ít để đề xuất: cân {least} trở lên</translation>
    </message>
    <message>
        <source>{count} held or set aside</source>
        <translation type="unfinished">{count} bị giữ hoặc để riêng</translation>
    </message>
    <message>
        <source>{count} issued, {used} used so far</source>
        <translation type="unfinished">cấp {count}, đã dùng {used}</translation>
    </message>
    <message>
        <source>{count} kept.</source>
        <translation type="unfinished">Đã giữ {count}.</translation>
    </message>
    <message>
        <source>{count} labels</source>
        <translation type="unfinished">{count} nhãn</translation>
    </message>
    <message>
        <source>{count} labels are in doubt</source>
        <translation type="unfinished">{count} nhãn chưa chắc chắn</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} nhãn chưa chắc chắn, đầu tiên {serial}: trả lời ở {where}</translation>
    </message>
    <message>
        <source>{count} labels to answer for: look at each bag</source>
        <translation type="unfinished">{count} nhãn cần trả lời: xem từng túi</translation>
    </message>
    <message>
        <source>{count} lines are weights, {number} are not: look at each of them</source>
        <translation type="unfinished">{count} dòng là số cân, {number} dòng không: xem từng dòng</translation>
    </message>
    <message>
        <source>{count} minutes</source>
        <translation type="unfinished">{count} phút</translation>
    </message>
    <message>
        <source>{count} more windows wait.</source>
        <translation type="unfinished">Còn {count} khoảng nữa chờ.</translation>
    </message>
    <message>
        <source>{count} of its bags are held</source>
        <translation type="unfinished">{count} túi của nó bị giữ</translation>
    </message>
    <message>
        <source>{count} of {draws} rehearsed samples of the stored bags pass (failed: mean {mean}, T1 {t1}, T2 {t2})</source>
        <translation type="unfinished">{count} trong {draws} mẫu diễn tập đạt (không đạt: trung bình {mean}, T1 {t1}, T2 {t2})</translation>
    </message>
    <message>
        <source>{count} packs are weighed already, more than the {lot} expected</source>
        <translation type="unfinished">đã cân {count} túi, hơn {lot} dự kiến</translation>
    </message>
    <message>
        <source>{count} rejects are undecided</source>
        <translation type="unfinished">{count} túi loại chưa quyết</translation>
    </message>
    <message>
        <source>{count} rejects of {day} wait for a decision</source>
        <translation type="unfinished">{count} túi loại ngày {day} chờ quyết định</translation>
    </message>
    <message>
        <source>{count} runs were purged on {day}, export {folder}</source>
        <translation type="unfinished">{count} đợt đã xóa ngày {day}, bản lưu {folder}</translation>
    </message>
    <message>
        <source>{count} runs were purged, the last on {day}, export {folder}</source>
        <translation type="unfinished">{count} đợt đã xóa, lần cuối ngày {day}, bản lưu {folder}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} để riêng</translation>
    </message>
    <message>
        <source>{count} stops</source>
        <translation type="unfinished">{count} lần dừng</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} túi nghi ngờ bị giữ: QA hoặc tổ trưởng quyết định: {where}</translation>
    </message>
    <message>
        <source>{count} things are open</source>
        <translation type="unfinished">{count} việc còn mở</translation>
    </message>
    <message>
        <source>{count} things are open, first: {what}. Settle them, or write why the day is signed all the same</source>
        <translation type="unfinished">còn {count} việc mở, đầu tiên: {what}. Xử lý, hoặc ghi vì sao vẫn ký ngày</translation>
    </message>
    <message>
        <source>{count} things happened on {day}</source>
        <translation type="unfinished">{count} việc xảy ra ngày {day}</translation>
    </message>
    <message>
        <source>{count} things open, not signed</source>
        <translation type="unfinished">{count} việc còn mở, chưa ký</translation>
    </message>
    <message>
        <source>{count} unit</source>
        <translation type="unfinished">{count} đơn vị</translation>
    </message>
    <message>
        <source>{count} units</source>
        <translation type="unfinished">{count} đơn vị</translation>
    </message>
    <message>
        <source>{count} with customers</source>
        <translation type="unfinished">{count} ở khách hàng</translation>
    </message>
    <message>
        <source>{count} {code} free</source>
        <translation type="unfinished">còn trống {count} {code}</translation>
    </message>
    <message>
        <source>{day} is not reviewed and signed</source>
        <translation type="unfinished">ngày {day} chưa duyệt và ký</translation>
    </message>
    <message>
        <source>{day} is reviewed and signed.</source>
        <translation type="unfinished">Đã duyệt và ký ngày {day}.</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects, {filter}; {open} open</source>
        <translation type="unfinished">{day}: {shown} trong {all} túi loại, {filter}; còn {open}</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects; {open} open</source>
        <translation type="unfinished">{day}: {shown} trong {all} túi loại; còn {open}</translation>
    </message>
    <message>
        <source>{digits} is no day: give day and month, like 2411 for 24 November</source>
        <translation type="unfinished">{digits} không phải ngày: nhập ngày và tháng, như 2411 là 24 tháng 11</translation>
    </message>
    <message>
        <source>{error}, beyond {limit}</source>
        <translation type="unfinished">{error}, vượt {limit}</translation>
    </message>
    <message>
        <source>{error}, may be {limit}</source>
        <translation type="unfinished">{error}, cho phép {limit}</translation>
    </message>
    <message>
        <source>{field} is read as {shown}, not {due}</source>
        <translation type="unfinished">{field} đọc thành {shown}, không phải {due}</translation>
    </message>
    <message>
        <source>{field} is {shown}, allowed is {allowed}</source>
        <translation type="unfinished">{field} là {shown}, cho phép {allowed}</translation>
    </message>
    <message>
        <source>{first} and {count} more</source>
        <translation type="unfinished">{first} và {count} nữa</translation>
    </message>
    <message>
        <source>{first}, and {count} more</source>
        <translation type="unfinished">{first}, và {count} mục nữa</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} túi, tối đa {most} dưới T1 ({clause})</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, then {second} more, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} túi, rồi thêm {second}, tối đa {most} dưới T1 ({clause})</translation>
    </message>
    <message>
        <source>{last} comes before {first}: give the first serial first</source>
        <translation type="unfinished">{last} đứng trước {first}: nhập số đầu trước</translation>
    </message>
    <message>
        <source>{mass} DOES NOT FIT ({against})</source>
        <translation type="unfinished">{mass} KHÔNG KHỚP ({against})</translation>
    </message>
    <message>
        <source>{mass} FITS ({against})</source>
        <translation type="unfinished">{mass} KHỚP ({against})</translation>
    </message>
    <message>
        <source>{mass} a bag</source>
        <translation type="unfinished">{mass} mỗi túi</translation>
    </message>
    <message>
        <source>{mass} g a bag</source>
        <translation type="unfinished">{mass} g mỗi túi</translation>
    </message>
    <message>
        <source>{mass} is below what the scale weighs: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">{mass} dưới mức cân được: xem đĩa đặt đúng và không bị nâng, dọn trống rồi về số không</translation>
    </message>
    <message>
        <source>{mass} is in high resolution, which is not the indication</source>
        <translation type="unfinished">{mass} ở độ phân giải cao, không phải số hiện trên cân</translation>
    </message>
    <message>
        <source>{mass} is more than the scale weighs, {most}</source>
        <translation type="unfinished">{mass} vượt quá mức cân {most}</translation>
    </message>
    <message>
        <source>{mass} is not a multiple of {interval}</source>
        <translation type="unfinished">{mass} không phải bội của {interval}</translation>
    </message>
    <message>
        <source>{mass} is the tare, not the load</source>
        <translation type="unfinished">{mass} là bì, không phải hàng</translation>
    </message>
    <message>
        <source>{mass} now</source>
        <translation type="unfinished">{mass} hiện nay</translation>
    </message>
    <message>
        <source>{mass} proposed</source>
        <translation type="unfinished">đề xuất {mass}</translation>
    </message>
    <message>
        <source>{mass} this run</source>
        <translation type="unfinished">{mass} đợt này</translation>
    </message>
    <message>
        <source>{mass} this run, {money} in money</source>
        <translation type="unfinished">{mass} đợt này, {money} tiền</translation>
    </message>
    <message>
        <source>{mass}: {count} bags, {percent} %</source>
        <translation type="unfinished">{mass}: {count} túi, {percent} %</translation>
    </message>
    <message>
        <source>{mean} OUTSIDE {least} to {most}</source>
        <translation type="unfinished">{mean} NGOÀI {least} đến {most}</translation>
    </message>
    <message>
        <source>{mean} within {least} to {most}</source>
        <translation type="unfinished">{mean} trong {least} đến {most}</translation>
    </message>
    <message>
        <source>{name} not installed</source>
        <translation type="unfinished">{name} chưa cài</translation>
    </message>
    <message>
        <source>{name} serial {code}</source>
        <translation type="unfinished">{name} sê-ri {code}</translation>
    </message>
    <message>
        <source>{name} stands for {first} and for {second}: look at the case and keep one</source>
        <translation type="unfinished">{name} là {first} và cả {second}: xem thùng và giữ một</translation>
    </message>
    <message>
        <source>{name} waits: a bag is on the pan</source>
        <translation type="unfinished">{name} chờ: có túi trên đĩa cân</translation>
    </message>
    <message>
        <source>{name} would change what the bags of the open run weigh: end the run</source>
        <translation type="unfinished">{name} sẽ đổi số cân của đợt đang mở: đóng đợt</translation>
    </message>
    <message>
        <source>{name}: mean {mean}, spread {spread}</source>
        <translation type="unfinished">{name}: trung bình {mean}, độ phân tán {spread}</translation>
    </message>
    <message>
        <source>{name}: {code} from {who}</source>
        <translation type="unfinished">{name}: {code} từ {who}</translation>
    </message>
    <message>
        <source>{number} % full</source>
        <translation type="unfinished">đầy {number} %</translation>
    </message>
    <message>
        <source>{number} % of nominal</source>
        <translation type="unfinished">{number} % danh nghĩa</translation>
    </message>
    <message>
        <source>{number} April {count}</source>
        <translation type="unfinished">{number} tháng 4 {count}</translation>
    </message>
    <message>
        <source>{number} August {count}</source>
        <translation type="unfinished">{number} tháng 8 {count}</translation>
    </message>
    <message>
        <source>{number} December {count}</source>
        <translation type="unfinished">{number} tháng 12 {count}</translation>
    </message>
    <message>
        <source>{number} February {count}</source>
        <translation type="unfinished">{number} tháng 2 {count}</translation>
    </message>
    <message>
        <source>{number} January {count}</source>
        <translation type="unfinished">{number} tháng 1 {count}</translation>
    </message>
    <message>
        <source>{number} July {count}</source>
        <translation type="unfinished">{number} tháng 7 {count}</translation>
    </message>
    <message>
        <source>{number} June {count}</source>
        <translation type="unfinished">{number} tháng 6 {count}</translation>
    </message>
    <message>
        <source>{number} March {count}</source>
        <translation type="unfinished">{number} tháng 3 {count}</translation>
    </message>
    <message>
        <source>{number} May {count}</source>
        <translation type="unfinished">{number} tháng 5 {count}</translation>
    </message>
    <message>
        <source>{number} November {count}</source>
        <translation type="unfinished">{number} tháng 11 {count}</translation>
    </message>
    <message>
        <source>{number} October {count}</source>
        <translation type="unfinished">{number} tháng 10 {count}</translation>
    </message>
    <message>
        <source>{number} September {count}</source>
        <translation type="unfinished">{number} tháng 9 {count}</translation>
    </message>
    <message>
        <source>{number} bags</source>
        <translation type="unfinished">{number} túi</translation>
    </message>
    <message>
        <source>{number} failed</source>
        <translation type="unfinished">{number} không đạt</translation>
    </message>
    <message>
        <source>{number} held</source>
        <translation type="unfinished">giữ từ {number}</translation>
    </message>
    <message>
        <source>{number} in money</source>
        <translation type="unfinished">{number} tiền</translation>
    </message>
    <message>
        <source>{number} missing</source>
        <translation type="unfinished">thiếu {number}</translation>
    </message>
    <message>
        <source>{number} of {whole}</source>
        <translation type="unfinished">{number} / {whole}</translation>
    </message>
    <message>
        <source>{number} of {whole} allowed</source>
        <translation type="unfinished">{number} / {whole} cho phép</translation>
    </message>
    <message>
        <source>{number} of {whole} bags</source>
        <translation type="unfinished">{number} / {whole} túi</translation>
    </message>
    <message>
        <source>{number} of {whole}: {what}</source>
        <translation type="unfinished">{number} / {whole}: {what}</translation>
    </message>
    <message>
        <source>{number} to {count} days</source>
        <translation type="unfinished">{number} đến {count} ngày</translation>
    </message>
    <message>
        <source>{number} to {whole} {unit}</source>
        <translation type="unfinished">{number} đến {whole} {unit}</translation>
    </message>
    <message>
        <source>{number} too many</source>
        <translation type="unfinished">thừa {number}</translation>
    </message>
    <message>
        <source>{picked} picked, {count} weighed</source>
        <translation type="unfinished">chọn {picked}, đã cân {count}</translation>
    </message>
    <message>
        <source>{product}, version {version}</source>
        <translation type="unfinished">{product}, bản {version}</translation>
    </message>
    <message>
        <source>{product}, weighed {time}</source>
        <translation type="unfinished">{product}, cân lúc {time}</translation>
    </message>
    <message>
        <source>{product}: {mass} kg net</source>
        <translation type="unfinished">{product}: {mass} kg tịnh</translation>
    </message>
    <message>
        <source>{result} by {code}</source>
        <translation type="unfinished">{result} bởi {code}</translation>
    </message>
    <message>
        <source>{seconds} s: {frames} weights, {garbage} not understood ({percent} %, 5 % are allowed), {bytes} bytes</source>
        <translation type="unfinished">{seconds} s: {frames} số cân, {garbage} không hiểu ({percent} %, cho phép 5 %), {bytes} byte</translation>
    </message>
    <message>
        <source>{serial} must say</source>
        <translation type="unfinished">{serial} phải ghi</translation>
    </message>
    <message>
        <source>{serial}: as recorded</source>
        <translation type="unfinished">{serial}: đúng như đã ghi</translation>
    </message>
    <message>
        <source>{sscc} had its use-by date on {day}: it must not leave</source>
        <translation type="unfinished">{sscc} hết hạn sử dụng ngày {day}: không được xuất đi</translation>
    </message>
    <message>
        <source>{sscc} is a pallet: a pallet holds cases</source>
        <translation type="unfinished">{sscc} là pallet: pallet chứa thùng</translation>
    </message>
    <message>
        <source>{sscc} is gone with {shipment}</source>
        <translation type="unfinished">{sscc} đã đi cùng {shipment}</translation>
    </message>
    <message>
        <source>{sscc} is on pallet {pallet}</source>
        <translation type="unfinished">{sscc} trên pallet {pallet}</translation>
    </message>
    <message>
        <source>{sscc} is undone</source>
        <translation type="unfinished">{sscc} đã hủy bỏ</translation>
    </message>
    <message>
        <source>{sscc} is undone.</source>
        <translation type="unfinished">Đã hủy bỏ {sscc}.</translation>
    </message>
    <message>
        <source>{text} is no figure: key in digits, such as 3.4</source>
        <translation type="unfinished">{text} không phải số: nhập như 3.4</translation>
    </message>
    <message>
        <source>{text} is no serial of a bag, such as A1-7K-000042</source>
        <translation type="unfinished">{text} không phải số túi, như A1-7K-000042</translation>
    </message>
    <message>
        <source>{text} is no time: write {form}</source>
        <translation type="unfinished">{text} không phải giờ: ghi {form}</translation>
    </message>
    <message>
        <source>{time}: {mass}; mean so far {mean}</source>
        <translation type="unfinished">{time}: {mass}; trung bình đến nay {mean}</translation>
    </message>
    <message>
        <source>{value} cannot be: allowed is {low} to {high}</source>
        <translation type="unfinished">{value} không thể: cho phép {low} đến {high}</translation>
    </message>
    <message>
        <source>{what} by {code}: {why}</source>
        <translation type="unfinished">{what} bởi {code}: {why}</translation>
    </message>
    <message>
        <source>{what} cannot be released: {why}</source>
        <translation type="unfinished">chưa giải phóng được {what}: {why}</translation>
    </message>
    <message>
        <source>{what} failed its check</source>
        <translation type="unfinished">{what} không đạt kiểm tra</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} không đạt kiểm tra: sửa rồi kiểm tra lại: {where}</translation>
    </message>
    <message>
        <source>{what} failed its last check</source>
        <translation type="unfinished">{what} không đạt lần kiểm tra cuối</translation>
    </message>
    <message>
        <source>{what} failed: write what is done about it before it is recorded</source>
        <translation type="unfinished">{what} không đạt: ghi cách xử lý trước khi lưu</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} sau {minutes} phút</translation>
    </message>
    <message>
        <source>{what} is on record.</source>
        <translation type="unfinished">Đã ghi {what}.</translation>
    </message>
    <message>
        <source>{what} keeps no bag any more: release the hold</source>
        <translation type="unfinished">{what} không còn giữ túi: giải phóng lệnh giữ</translation>
    </message>
    <message>
        <source>{what} lost on {code}</source>
        <translation type="unfinished">{what}: mất ở {code}</translation>
    </message>
    <message>
        <source>{what} needs {thing}</source>
        <translation type="unfinished">{what} cần {thing}</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} ngay</translation>
    </message>
    <message>
        <source>{what} was released already</source>
        <translation type="unfinished">{what} đã giải phóng rồi</translation>
    </message>
    <message>
        <source>{what} was scanned already</source>
        <translation type="unfinished">{what} đã quét rồi</translation>
    </message>
    <message>
        <source>{what} was {usual}, now {seen}: is this still the same product?</source>
        <translation type="unfinished">{what} trước {usual}, nay {seen}: vẫn cùng sản phẩm?</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: xem ngày giờ rồi ký ở {where}</translation>
    </message>
    <message>
        <source>{what}: no checks in the settings</source>
        <translation type="unfinished">{what}: cài đặt không có kiểm tra</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} không được ký việc này</translation>
    </message>
    <message>
        <source>{who} cannot witness a decision of {other}: choose another person</source>
        <translation type="unfinished">{who} không thể chứng cho quyết định của {other}: chọn người khác</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} chưa ký: để {act}, cần PIN hoặc thẻ</translation>
    </message>
    <message>
        <source>{who} does not lead: the lead signs first</source>
        <translation type="unfinished">{who} không phải tổ trưởng: tổ trưởng ký trước</translation>
    </message>
    <message>
        <source>{who} has no PIN: the manager sets one, station people pin {id}</source>
        <translation type="unfinished">{who} chưa có PIN: quản lý đặt, station people pin {id}</translation>
    </message>
    <message>
        <source>{who} is nobody in people.toml</source>
        <translation type="unfinished">{who} không có trong people.toml</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} không được ký ở đây</translation>
    </message>
    <message>
        <source>{who} signs first: another person signs second</source>
        <translation type="unfinished">{who} ký trước: người khác ký sau</translation>
    </message>
    <message>
        <source>{why}, after a page was out</source>
        <translation type="unfinished">{why}, sau khi đã ra một trang</translation>
    </message>
    <message>
        <source>{why}, after printing may have begun</source>
        <translation type="unfinished">{why}, khi có thể đã bắt đầu in</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: hai người duyệt nhãn ở {where}</translation>
    </message>
</context>
</TS>
