<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="vi_VN" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 SẢN PHẨM</translation>
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
        <source>ADD</source>
        <translation type="unfinished">THÊM</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">CẢNH BÁO</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation type="unfinished">QUAY LẠI</translation>
    </message>
    <message>
        <source>BAG AGAIN</source>
        <translation type="unfinished">TÚI LẠI</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">ĐẶT TÚI</translation>
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
        <source>Best before</source>
        <translation type="unfinished">Dùng tốt nhất trước</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">GỌI HỖ TRỢ</translation>
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
        <source>CHECKS</source>
        <translation type="unfinished">KIỂM TRA</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">XÓA</translation>
    </message>
    <message>
        <source>CO2</source>
        <translation type="unfinished">CO2</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">ĐÃ ĐẾM</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">NGÀY CẮT</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">QUYẾT ĐỊNH</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">KHÔNG KÝ</translation>
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
        <source>EMPTY PAN</source>
        <translation type="unfinished">DỌN ĐĨA</translation>
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
        <source>FILTER</source>
        <translation type="unfinished">LỌC</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">NHÃN ĐẦU</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">BỎ DỞ</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">TIẾP TỤC</translation>
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
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">TÔI ĐÃ THẤY</translation>
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
        <source>LABELS</source>
        <translation type="unfinished">NHÃN</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">NGÔN NGỮ</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">TỔ TRƯỞNG</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">NHẤC TÚI</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">DÂY CHUYỀN</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">CÂN LẠI</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">TRA CỨU</translation>
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
        <source>Labels in doubt</source>
        <translation type="unfinished">Nhãn chưa chắc chắn</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">Ngôn ngữ màn hình đóng gói</translation>
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
        <source>MANAGER</source>
        <translation type="unfinished">QUẢN LÝ</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">THÊM NỮA</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Khối lượng tịnh trung bình {mass}</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">LỆNH GIỮ MỚI</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">MẤT SỐ CÂN</translation>
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
        <source>No good bag yet</source>
        <translation type="unfinished">Chưa có túi đạt</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">Chưa mở đợt nào</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">CỦA NGƯỜI ĐÓNG GÓI</translation>
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
        <source>On the scale</source>
        <translation type="unfinished">Người cân</translation>
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
        <source>PAPER</source>
        <translation type="unfinished">GIẤY</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">IN</translation>
    </message>
    <message>
        <source>QA</source>
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">CHẤT LƯỢNG</translation>
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
        <source>REHEARSE</source>
        <translation type="unfinished">DIỄN TẬP</translation>
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
        <source>ROLL</source>
        <translation type="unfinished">CUỘN</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">ĐỢT</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">ĐỢT, rồi {door} ({key})</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Bị từ chối. {why}</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Đợt đang mở</translation>
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
        <source>SEAL</source>
        <translation type="unfinished">HÀN TÚI</translation>
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
        <source>STOP</source>
        <translation type="unfinished">DỪNG</translation>
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
        <source>Start a run</source>
        <translation type="unfinished">Mở một đợt</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, danh định</translation>
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
        <source>TRACE</source>
        <translation type="unfinished">TRUY VẾT</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">TẬP HUẤN</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">Lấy số trên cân làm chuẩn. Nếu màn hình và cân khác nhau thì theo cân: dừng lại và gọi tổ trưởng.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Chạm tên mình trước.</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">Hạn sử dụng</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">CHỜ</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">CÂN MỘT TÚI</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">LAU ĐĨA</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">TÍNH</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">Vì sao để riêng?</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">còn túi trên đĩa: làm xong, nhấc ra rồi đóng đợt</translation>
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
        <source>a cover is open: close it</source>
        <translation type="unfinished">nắp đang mở: đóng lại</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">cửa đang mở: đóng lại</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">lô bị giữ đang trên dây chuyền</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">nhãn không khớp</translation>
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
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">cuộn mới bắt đầu bằng nhãn đầu</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">lúc tạm dừng</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">đang có đợt mở: đóng trước khi mở đợt mới</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">sau khi dừng</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">và {count} nữa ở dưới</translation>
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
        <source>as people.toml says</source>
        <translation type="unfinished">theo people.toml</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">đã hỏi dây chuyền …</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">ngẫu nhiên</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">túi</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">túi {code}, lô màng {lot} chưa có khảo sát bì: làm ngay: {where}</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">túi</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">nghỉ</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">hở mối hàn</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">gọi người</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">đổi hoặc giải trình cuộn nhãn</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">kiểm tra {what}</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">kiểm tra cân sau {what}: {where}</translation>
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
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">so nhãn rồi xử lý mã quét</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">xác nhận ngày giờ</translation>
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
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">đếm túi của đợt trước: {where}</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">ngày giờ chưa chắc chắn</translation>
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
        <source>decide about suspect bags</source>
        <translation type="unfinished">quyết định về túi nghi ngờ</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">quyết định xử lý túi</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">xong</translation>
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
        <source>expired – take it off the line</source>
        <translation type="unfinished">hết hạn – bỏ khỏi dây chuyền</translation>
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
        <source>first label</source>
        <translation type="unfinished">nhãn đầu tiên</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">tối thiểu, mục tiêu, tối đa</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">dị vật</translation>
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
        <source>gross weight</source>
        <translation type="unfinished">khối lượng cả bì</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">bị giữ – gọi QA</translation>
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
        <source>hold, no record</source>
        <translation type="unfinished">giữ, không có sổ</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">trong túi {mass}</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">không trả lời: đã bật, đã cắm dây chưa?</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">chưa ra sau {seconds} s: xem nhãn có ra không</translation>
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
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">giữ, phục hồi hoặc dọn sổ ghi</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">nhãn bị hủy</translation>
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
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">nhãn {serial} chưa chắc chắn: {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">nhãn {serial} chưa ra: xem máy in</translation>
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
        <source>last label</source>
        <translation type="unfinished">nhãn cuối</translation>
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
        <source>lead, on the scale</source>
        <translation type="unfinished">tổ trưởng, người cân</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">thoát toàn màn hình</translation>
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
        <source>look whether the label is whole</source>
        <translation type="unfinished">xem nhãn có nguyên vẹn không</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">lô {lot} bị giữ: bỏ ra và nạp lô khác: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">chưa biết lô {lot}: nhập kho trước</translation>
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
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lô {lot}: {why}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">máy</translation>
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
        <source>metal detector</source>
        <translation type="unfinished">máy dò kim loại</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">chuyển lô trên dây chuyền</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">chưa có PIN hoặc thẻ</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">túi này không phải sản phẩm</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">chưa có cuộn nhãn: quét cuộn ở {where}</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">hết nhãn: lắp cuộn mới</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">hết hàng</translation>
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
        <source>no run is open</source>
        <translation type="unfinished">chưa mở đợt</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">chưa mở đợt: tổ trưởng mở đợt</translation>
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
        <source>not labelled: {reason}</source>
        <translation type="unfinished">không dán nhãn: {reason}</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">chưa được duyệt</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">trên {count} túi</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">người cân: {who}</translation>
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
        <source>over capacity: take the load off</source>
        <translation type="unfinished">quá tải: bỏ hàng ra</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">đóng gói</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">chuẩn bị kiểm tra</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">in lại nhãn</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">nhiệt độ sản phẩm</translation>
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
        <source>put it right, then check again</source>
        <translation type="unfinished">sửa rồi kiểm tra lại</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">nhận hàng</translation>
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
        <source>refuse a label</source>
        <translation type="unfinished">từ chối nhãn</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">giải phóng hàng bị giữ</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">xem và ký một ngày</translation>
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
        <source>room temperature</source>
        <translation type="unfinished">nhiệt độ phòng</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">bộ quy tắc</translation>
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
        <source>say that an alarm is seen</source>
        <translation type="unfinished">báo đã thấy cảnh báo</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">cho biết nhãn ra sao</translation>
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
        <source>scale line</source>
        <translation type="unfinished">đường nối cân</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">cân hiện {mass}, lấy số trên cân làm chuẩn</translation>
    </message>
    <message>
        <source>scan a label</source>
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
        <source>scan the last label</source>
        <translation type="unfinished">quét nhãn cuối</translation>
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
        <source>service</source>
        <translation type="unfinished">bảo trì</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">để riêng</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">đặt người, PIN và thẻ</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">đang để riêng: {reason}</translation>
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
        <source>ship</source>
        <translation type="unfinished">giao hàng</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">ký chuyển đợt</translation>
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
        <source>start a run</source>
        <translation type="unfinished">mở đợt</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">dừng dây chuyền</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">túi lưu kho</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">bỏ ra: {where}</translation>
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
        <source>tare</source>
        <translation type="unfinished">bì</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">mục tiêu</translation>
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
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">đĩa đầy: giải phóng chỗ rồi in lại</translation>
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
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">mất thư mục nhãn: tạo lại {folder}</translation>
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
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">dây chuyền đang dừng, {reason}: ĐỢT, rồi THAY ĐỔI (F8) để tiếp tục</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">dây chuyền đã dừng</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">trung bình dưới danh định</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">đĩa cân phải trống trước túi tiếp theo</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">máy in đã bỏ cuộc</translation>
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
        <source>the printer: {why}</source>
        <translation type="unfinished">máy in: {why}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">không tới được máy in: bật lên, kiểm tra dây</translation>
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
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">cân không đạt kiểm tra: chỉnh rồi kiểm tra lại: {where}</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">cân không gửi số: kiểm tra dây và nguồn điện</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">cân đang trừ bì: xóa bì trên cân, trạm tự trừ túi</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">cân đang ở {unit}, đợt dùng {other}: chỉnh lại cân</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">quá hạn quét nhãn: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">mã quét của nhãn {serial} không khớp: tổ trưởng xử lý ở {where}</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">trạm xử lý chậm hơn cân: nhấc túi ra và chờ</translation>
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
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">túi này chưa được ghi và không có nhãn: {why}</translation>
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
        <source>touch an alarm first</source>
        <translation type="unfinished">chạm một cảnh báo trước</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">chạm tên mình trước</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">tối đa</translation>
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
        <source>wash record</source>
        <translation type="unfinished">sổ rửa</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">cân túi rỗng trong {count} túi</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">lau đĩa rồi về số không</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">làm việc ở màn hình này</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">sai cân</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} túi</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} túi bị giữ sau kiểm tra không đạt: QA quyết định: {where}</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">đã đóng {count} túi: tổ trưởng đóng đợt</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} nhãn chưa chắc chắn, đầu tiên {serial}: trả lời ở {where}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} để riêng</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} túi nghi ngờ bị giữ: QA hoặc tổ trưởng quyết định: {where}</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} không đạt kiểm tra: sửa rồi kiểm tra lại: {where}</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} sau {minutes} phút</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} ngay</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: xem ngày giờ rồi ký ở {where}</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} không được ký việc này</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} chưa ký: để {act}, cần PIN hoặc thẻ</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} không được ký ở đây</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: hai người duyệt nhãn ở {where}</translation>
    </message>
</context>
</TS>
