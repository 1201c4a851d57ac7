<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_CN" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>% of nominal</source>
        <translation type="unfinished">标称的 %</translation>
    </message>
    <message>
        <source>% of the lot in bags</source>
        <translation type="unfinished">批次装袋 %</translation>
    </message>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 产品</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation type="unfinished">1 袋</translation>
    </message>
    <message>
        <source>1 run was purged on {day}, export {folder}</source>
        <translation type="unfinished">{day} 已清除 1 次生产的记录，存于 {folder}</translation>
    </message>
    <message>
        <source>100 % together</source>
        <translation type="unfinished">合计 100 %</translation>
    </message>
    <message>
        <source>2 LOTS</source>
        <translation type="unfinished">2 批次</translation>
    </message>
    <message>
        <source>3 CREW</source>
        <translation type="unfinished">3 人员</translation>
    </message>
    <message>
        <source>A code was scanned, but no field waits for one: open the page it is for</source>
        <translation type="unfinished">扫到一个条码，但没有输入框在等它：请打开对应页面</translation>
    </message>
    <message>
        <source>A copy of {sscc} comes.</source>
        <translation type="unfinished">{sscc} 的副本即将打出。</translation>
    </message>
    <message>
        <source>A manager approves a proposal as a new version of the product.</source>
        <translation type="unfinished">经理批准后成为产品的新版本。</translation>
    </message>
    <message>
        <source>A new scale: connect it, touch LOOK, then check it with the test weights.</source>
        <translation type="unfinished">新秤：接好，点 查看，再用标准砝码检查。</translation>
    </message>
    <message>
        <source>A scale that is to be asked needs its request above.</source>
        <translation type="unfinished">需要询问的秤，请在上方填写询问。</translation>
    </message>
    <message>
        <source>ADD</source>
        <translation type="unfinished">加</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">警报</translation>
    </message>
    <message>
        <source>ALL</source>
        <translation type="unfinished">全部</translation>
    </message>
    <message>
        <source>ALL DAYS</source>
        <translation type="unfinished">所有日期</translation>
    </message>
    <message>
        <source>ALL WEIGHED</source>
        <translation type="unfinished">全部已称</translation>
    </message>
    <message>
        <source>APPLIED</source>
        <translation type="unfinished">已贴</translation>
    </message>
    <message>
        <source>APPROVE</source>
        <translation type="unfinished">批准</translation>
    </message>
    <message>
        <source>ASKED</source>
        <translation type="unfinished">已询问</translation>
    </message>
    <message>
        <source>AT REST</source>
        <translation type="unfinished">静止</translation>
    </message>
    <message>
        <source>ATTEND</source>
        <translation type="unfinished">注意</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation type="unfinished">正在汇总 …</translation>
    </message>
    <message>
        <source>An open run keeps the dates it was opened with.</source>
        <translation type="unfinished">已开始的生产保留开始时的日期。</translation>
    </message>
    <message>
        <source>Arrived at</source>
        <translation type="unfinished">到货温度</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation type="unfinished">返回</translation>
    </message>
    <message>
        <source>BAG AGAIN</source>
        <translation type="unfinished">重做此袋</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">放上袋子</translation>
    </message>
    <message>
        <source>BAGS</source>
        <translation type="unfinished">袋</translation>
    </message>
    <message>
        <source>BEFORE</source>
        <translation type="unfinished">之前</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">废料箱</translation>
    </message>
    <message>
        <source>BLEND LOT</source>
        <translation type="unfinished">混合批</translation>
    </message>
    <message>
        <source>BLENDS</source>
        <translation type="unfinished">混合批</translation>
    </message>
    <message>
        <source>BLOCKED {count}</source>
        <translation type="unfinished">受阻 {count}</translation>
    </message>
    <message>
        <source>BY DAY</source>
        <translation type="unfinished">按天</translation>
    </message>
    <message>
        <source>BY HOUR</source>
        <translation type="unfinished">按小时</translation>
    </message>
    <message>
        <source>BY POSITION</source>
        <translation type="unfinished">按岗位</translation>
    </message>
    <message>
        <source>BY PRODUCT</source>
        <translation type="unfinished">按产品</translation>
    </message>
    <message>
        <source>Bag {serial} and {count} around it</source>
        <translation type="unfinished">袋 {serial} 及前后 {count} 袋</translation>
    </message>
    <message>
        <source>Bag {serial} was not set aside: LOOK UP shows it.</source>
        <translation type="unfinished">袋 {serial} 没有另放：见 查询。</translation>
    </message>
    <message>
        <source>Bags since the last good check of the scale before are covered by no check of it any more: QA decides about them.</source>
        <translation type="unfinished">旧秤上次合格检查之后的袋子不再有检查覆盖：由质检决定。</translation>
    </message>
    <message>
        <source>Below T1</source>
        <translation type="unfinished">低于 T1</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">最佳食用日期</translation>
    </message>
    <message>
        <source>Best before {day}</source>
        <translation type="unfinished">最佳食用日期 {day}</translation>
    </message>
    <message>
        <source>By {what}</source>
        <translation type="unfinished">按{what}</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">叫班长</translation>
    </message>
    <message>
        <source>CAME BACK</source>
        <translation type="unfinished">已退回</translation>
    </message>
    <message>
        <source>CASE</source>
        <translation type="unfinished">箱</translation>
    </message>
    <message>
        <source>CASES</source>
        <translation type="unfinished">箱</translation>
    </message>
    <message>
        <source>CHANGE</source>
        <translation type="unfinished">更换</translation>
    </message>
    <message>
        <source>CHANGE, CLOCK</source>
        <translation type="unfinished">更换，时钟</translation>
    </message>
    <message>
        <source>CHECK</source>
        <translation type="unfinished">校验</translation>
    </message>
    <message>
        <source>CHECK IT</source>
        <translation type="unfinished">检查它</translation>
    </message>
    <message>
        <source>CHECK THE SCALE</source>
        <translation type="unfinished">检查秤</translation>
    </message>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished">检查</translation>
    </message>
    <message>
        <source>CHECKS (F4) settles it.</source>
        <translation type="unfinished">在 检查 (F4) 处理。</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">清除</translation>
    </message>
    <message>
        <source>CLEAR LINE</source>
        <translation type="unfinished">清线</translation>
    </message>
    <message>
        <source>CLEAR TARE</source>
        <translation type="unfinished">清除皮重</translation>
    </message>
    <message>
        <source>CLOCK</source>
        <translation type="unfinished">时钟</translation>
    </message>
    <message>
        <source>CLOSE PALLET</source>
        <translation type="unfinished">封托盘</translation>
    </message>
    <message>
        <source>COOLER TEMPERATURE</source>
        <translation type="unfinished">冷库温度</translation>
    </message>
    <message>
        <source>COUNT</source>
        <translation type="unfinished">清点</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">已清点</translation>
    </message>
    <message>
        <source>CUSTOMERS</source>
        <translation type="unfinished">客户</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">采收日</translation>
    </message>
    <message>
        <source>Came</source>
        <translation type="unfinished">到货</translation>
    </message>
    <message>
        <source>Case {sscc} is filled; its label comes.</source>
        <translation type="unfinished">箱 {sscc} 已装满；标签即将打出。</translation>
    </message>
    <message>
        <source>Checked {stage}. Bags wait meanwhile.</source>
        <translation type="unfinished">检查：{stage}。期间袋子等待。</translation>
    </message>
    <message>
        <source>Choose cells, then say what they are: VALUE and, where they are there, UNIT, FLAG, CHECK. Type the digits of the scale's display, its unit, and what else is true now.</source>
        <translation type="unfinished">选格，再说明是什么：数值，若有则 单位、标志、校验。输入秤显示的数字、单位和当前其他情况。</translation>
    </message>
    <message>
        <source>Choose the cells first: touch them, or use the arrow keys.</source>
        <translation type="unfinished">先选格：点选，或用方向键。</translation>
    </message>
    <message>
        <source>Commands of level 2</source>
        <translation type="unfinished">2 级命令</translation>
    </message>
    <message>
        <source>Correct the decision about {bags}?</source>
        <translation type="unfinished">更正对 {bags} 的决定？</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">决定</translation>
    </message>
    <message>
        <source>DESTROYED</source>
        <translation type="unfinished">已销毁</translation>
    </message>
    <message>
        <source>DIAGNOSE</source>
        <translation type="unfinished">诊断</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">不签名</translation>
    </message>
    <message>
        <source>DOES NOT SUIT</source>
        <translation type="unfinished">不适用</translation>
    </message>
    <message>
        <source>DOUBT</source>
        <translation type="unfinished">存疑</translation>
    </message>
    <message>
        <source>DOWNGRADED</source>
        <translation type="unfinished">降级</translation>
    </message>
    <message>
        <source>DRAW</source>
        <translation type="unfinished">抽样</translation>
    </message>
    <message>
        <source>DUMP</source>
        <translation type="unfinished">倒掉</translation>
    </message>
    <message>
        <source>DUMPED</source>
        <translation type="unfinished">已倒掉</translation>
    </message>
    <message>
        <source>Decided: {decision}.</source>
        <translation type="unfinished">已决定：{decision}。</translation>
    </message>
    <message>
        <source>Disk</source>
        <translation type="unfinished">磁盘</translation>
    </message>
    <message>
        <source>Due at {time}.</source>
        <translation type="unfinished">应于 {time} 进行。</translation>
    </message>
    <message>
        <source>EMPTY</source>
        <translation type="unfinished">空</translation>
    </message>
    <message>
        <source>EMPTY BAG</source>
        <translation type="unfinished">空袋</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">清空秤盘</translation>
    </message>
    <message>
        <source>EMPTY THE PAN</source>
        <translation type="unfinished">清空秤盘</translation>
    </message>
    <message>
        <source>END</source>
        <translation type="unfinished">结束</translation>
    </message>
    <message>
        <source>END RUN</source>
        <translation type="unfinished">结束生产</translation>
    </message>
    <message>
        <source>ENTER</source>
        <translation type="unfinished">录入</translation>
    </message>
    <message>
        <source>EVIDENCE</source>
        <translation type="unfinished">证据</translation>
    </message>
    <message>
        <source>Everything the scale sends goes into {file}</source>
        <translation type="unfinished">秤发出的全部写入 {file}</translation>
    </message>
    <message>
        <source>FAILED</source>
        <translation type="unfinished">不合格</translation>
    </message>
    <message>
        <source>FAILED: check again</source>
        <translation type="unfinished">不合格：再查</translation>
    </message>
    <message>
        <source>FAILING</source>
        <translation type="unfinished">不合格</translation>
    </message>
    <message>
        <source>FAILS</source>
        <translation type="unfinished">不合格</translation>
    </message>
    <message>
        <source>FILL CASE</source>
        <translation type="unfinished">装箱</translation>
    </message>
    <message>
        <source>FILTER</source>
        <translation type="unfinished">筛选</translation>
    </message>
    <message>
        <source>FINISHING</source>
        <translation type="unfinished">快用完</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">首件</translation>
    </message>
    <message>
        <source>FLAG</source>
        <translation type="unfinished">标志</translation>
    </message>
    <message>
        <source>Fri {number}</source>
        <translation type="unfinished">{number}日周五</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished">星期五</translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished">来自</translation>
    </message>
    <message>
        <source>From the recording {file}: TAKE a line.</source>
        <translation type="unfinished">录制 {file}：取一行。</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">放弃</translation>
    </message>
    <message>
        <source>GIVEN AWAY</source>
        <translation type="unfinished">多给</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">继续</translation>
    </message>
    <message>
        <source>GOOD</source>
        <translation type="unfinished">合格</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation type="unfinished">多给</translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation type="unfinished">已放弃。</translation>
    </message>
    <message>
        <source>Given up: nothing is recorded.</source>
        <translation type="unfinished">已放弃：没有记录。</translation>
    </message>
    <message>
        <source>Good bags: {count} of {order}, set aside: {aside}</source>
        <translation type="unfinished">合格袋数：{count} / {order}，另放：{aside}</translation>
    </message>
    <message>
        <source>Good bags: {count}, set aside: {aside}</source>
        <translation type="unfinished">合格袋数：{count}，另放：{aside}</translation>
    </message>
    <message>
        <source>HELD</source>
        <translation type="unfinished">已扣留</translation>
    </message>
    <message>
        <source>HISTORY</source>
        <translation type="unfinished">历史</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation type="unfinished">扣留</translation>
    </message>
    <message>
        <source>HOLD IT</source>
        <translation type="unfinished">扣留它</translation>
    </message>
    <message>
        <source>HOLD STAYS</source>
        <translation type="unfinished">继续扣留</translation>
    </message>
    <message>
        <source>HOLD STILL</source>
        <translation type="unfinished">定住</translation>
    </message>
    <message>
        <source>HOLDS</source>
        <translation type="unfinished">扣留</translation>
    </message>
    <message>
        <source>HOUSE</source>
        <translation type="unfinished">在库</translation>
    </message>
    <message>
        <source>Held: {what}</source>
        <translation type="unfinished">已扣留：{what}</translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished">此处</translation>
    </message>
    <message>
        <source>How many bags have which net. Touch a bar to read it.</source>
        <translation type="unfinished">各净重有多少袋。点一根柱查看。</translation>
    </message>
    <message>
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">我已看到</translation>
    </message>
    <message>
        <source>I see it there</source>
        <translation type="unfinished">我看到在袋上</translation>
    </message>
    <message>
        <source>IN DOUBT</source>
        <translation type="unfinished">存疑</translation>
    </message>
    <message>
        <source>IN USE.</source>
        <translation type="unfinished">已启用。</translation>
    </message>
    <message>
        <source>INBOX</source>
        <translation type="unfinished">待办</translation>
    </message>
    <message>
        <source>INPUT LOT</source>
        <translation type="unfinished">原料批</translation>
    </message>
    <message>
        <source>INPUT LOTS</source>
        <translation type="unfinished">原料批</translation>
    </message>
    <message>
        <source>INSPECTOR</source>
        <translation type="unfinished">检查员</translation>
    </message>
    <message>
        <source>In the settings</source>
        <translation type="unfinished">设置中</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">在用</translation>
    </message>
    <message>
        <source>Is the scale on, and are baud rate and parity those of its menu?</source>
        <translation type="unfinished">秤开了吗？波特率和校验与秤菜单一致吗？</translation>
    </message>
    <message>
        <source>Issued − used − spoiled − samples − returned</source>
        <translation type="unfinished">领出 − 用 − 坏 − 样 − 退</translation>
    </message>
    <message>
        <source>It cannot be released</source>
        <translation type="unfinished">不能放行</translation>
    </message>
    <message>
        <source>Its lines</source>
        <translation type="unfinished">其行</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation type="unfinished">保存</translation>
    </message>
    <message>
        <source>KEEP CHART</source>
        <translation type="unfinished">保存图表</translation>
    </message>
    <message>
        <source>KEEP LINE</source>
        <translation type="unfinished">留行</translation>
    </message>
    <message>
        <source>Kept as {name} (PNG, SVG, CSV) in {folder}</source>
        <translation type="unfinished">已存为 {name}（PNG、SVG、CSV），在 {folder}</translation>
    </message>
    <message>
        <source>Key in how many bags lie in the bin.</source>
        <translation type="unfinished">输入废料箱里有多少袋。</translation>
    </message>
    <message>
        <source>LABEL ON BAG</source>
        <translation type="unfinished">袋上标签</translation>
    </message>
    <message>
        <source>LABEL ROLL</source>
        <translation type="unfinished">标签卷</translation>
    </message>
    <message>
        <source>LABEL {state}</source>
        <translation type="unfinished">标签{state}</translation>
    </message>
    <message>
        <source>LABELS</source>
        <translation type="unfinished">标签</translation>
    </message>
    <message>
        <source>LABELS (F5) settles it.</source>
        <translation type="unfinished">在 标签 (F5) 处理。</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">语言</translation>
    </message>
    <message>
        <source>LAST</source>
        <translation type="unfinished">最后一张</translation>
    </message>
    <message>
        <source>LAST 7 DAYS</source>
        <translation type="unfinished">最近 7 天</translation>
    </message>
    <message>
        <source>LAST DAY</source>
        <translation type="unfinished">最近一天</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">班长</translation>
    </message>
    <message>
        <source>LEAVE</source>
        <translation type="unfinished">退出</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">取走袋子</translation>
    </message>
    <message>
        <source>LIFT THE BAG OFF</source>
        <translation type="unfinished">拿开袋子</translation>
    </message>
    <message>
        <source>LIFT THE WEIGHTS OFF</source>
        <translation type="unfinished">拿开砝码</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">生产线</translation>
    </message>
    <message>
        <source>LISTEN</source>
        <translation type="unfinished">收听</translation>
    </message>
    <message>
        <source>LISTEN to the scale, or open a RECORDING; put a known weight on the pan and TAKE a line.</source>
        <translation type="unfinished">收听秤，或打开录制；放上已知重量并取行。</translation>
    </message>
    <message>
        <source>LOAD</source>
        <translation type="unfinished">装上</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">重新放上</translation>
    </message>
    <message>
        <source>LOAD CLEAN</source>
        <translation type="unfinished">清空后装</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation type="unfinished">查看</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">查询</translation>
    </message>
    <message>
        <source>LOSSES</source>
        <translation type="unfinished">损耗</translation>
    </message>
    <message>
        <source>LOT</source>
        <translation type="unfinished">批次</translation>
    </message>
    <message>
        <source>LOTS</source>
        <translation type="unfinished">批次</translation>
    </message>
    <message>
        <source>Label roll {roll}: a difference of {difference} is open</source>
        <translation type="unfinished">标签卷 {roll}：差 {difference} 未结</translation>
    </message>
    <message>
        <source>Label {serial} is in doubt</source>
        <translation type="unfinished">标签 {serial} 存疑</translation>
    </message>
    <message>
        <source>Labels in doubt</source>
        <translation type="unfinished">状态不明的标签</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">包装员屏幕的语言</translation>
    </message>
    <message>
        <source>Languages</source>
        <translation type="unfinished">语言</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished">班长</translation>
    </message>
    <message>
        <source>Lead is wanted at this line</source>
        <translation type="unfinished">此线需要班长</translation>
    </message>
    <message>
        <source>Lead {who}, on the scale {person}</source>
        <translation type="unfinished">班长 {who}，称重 {person}</translation>
    </message>
    <message>
        <source>Line stands: {reason}. Look, then touch</source>
        <translation type="unfinished">生产线停：{reason}。看过再点</translation>
    </message>
    <message>
        <source>Look, then touch</source>
        <translation type="unfinished">看过再点</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation type="unfinished">正在查找 …</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished">批次</translation>
    </message>
    <message>
        <source>Lot {lot} is held, and every bag that may hold some of it.</source>
        <translation type="unfinished">批次 {lot} 已扣留，可能含它的袋也扣留。</translation>
    </message>
    <message>
        <source>Lot {lot} is released, and the bags that were held with it.</source>
        <translation type="unfinished">批次 {lot} 已放行，随它扣留的袋也放行。</translation>
    </message>
    <message>
        <source>Lot {lot} received and held.</source>
        <translation type="unfinished">批次 {lot} 已收货并扣留。</translation>
    </message>
    <message>
        <source>Lot {lot} received.</source>
        <translation type="unfinished">批次 {lot} 已收货。</translation>
    </message>
    <message>
        <source>Lot {lot}: {move}, on record.</source>
        <translation type="unfinished">批次 {lot}：{move}，已记录。</translation>
    </message>
    <message>
        <source>MANAGER</source>
        <translation type="unfinished">经理</translation>
    </message>
    <message>
        <source>METAL DETECTOR</source>
        <translation type="unfinished">金属检测</translation>
    </message>
    <message>
        <source>MISMATCH</source>
        <translation type="unfinished">不符</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">更多</translation>
    </message>
    <message>
        <source>MOVING</source>
        <translation type="unfinished">移动</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation type="unfinished">厂家和型号</translation>
    </message>
    <message>
        <source>Max / e = {number}, class {code} allows {least} to {most}</source>
        <translation type="unfinished">Max / e = {number}，{code} 级允许 {least} 至 {most}</translation>
    </message>
    <message>
        <source>Mean needed</source>
        <translation type="unfinished">所需均值</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">平均净重 {mass}</translation>
    </message>
    <message>
        <source>Mean so far</source>
        <translation type="unfinished">目前均值</translation>
    </message>
    <message>
        <source>Mon {number}</source>
        <translation type="unfinished">{number}日周一</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished">星期一</translation>
    </message>
    <message>
        <source>NEAR MAX</source>
        <translation type="unfinished">接近最大</translation>
    </message>
    <message>
        <source>NEAR THE TARE</source>
        <translation type="unfinished">接近皮重</translation>
    </message>
    <message>
        <source>NET</source>
        <translation type="unfinished">净重</translation>
    </message>
    <message>
        <source>NEVER CAME OUT</source>
        <translation type="unfinished">没有打出</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">新扣留</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation type="unfinished">下一个</translation>
    </message>
    <message>
        <source>NEXT CASE</source>
        <translation type="unfinished">下一箱</translation>
    </message>
    <message>
        <source>NO FORECAST</source>
        <translation type="unfinished">没有预测</translation>
    </message>
    <message>
        <source>NO MARKS</source>
        <translation type="unfinished">无标记</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">无读数</translation>
    </message>
    <message>
        <source>NO RUN IS OPEN</source>
        <translation type="unfinished">没有生产</translation>
    </message>
    <message>
        <source>NOBODY</source>
        <translation type="unfinished">没有人</translation>
    </message>
    <message>
        <source>NOMINAL</source>
        <translation type="unfinished">标称</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation type="unfinished">无</translation>
    </message>
    <message>
        <source>NOT MET</source>
        <translation type="unfinished">不满足</translation>
    </message>
    <message>
        <source>NOW</source>
        <translation type="unfinished">现在</translation>
    </message>
    <message>
        <source>NUMBERS</source>
        <translation type="unfinished">数据</translation>
    </message>
    <message>
        <source>Next: {what}</source>
        <translation type="unfinished">下一步：{what}</translation>
    </message>
    <message>
        <source>No alarm stands. What needs nobody is kept as an event.</source>
        <translation type="unfinished">没有警报。不需要人处理的记为事件。</translation>
    </message>
    <message>
        <source>No bag is on record yet.</source>
        <translation type="unfinished">还没有袋的记录。</translation>
    </message>
    <message>
        <source>No bag is suspect.</source>
        <translation type="unfinished">没有可疑的袋。</translation>
    </message>
    <message>
        <source>No case stands here</source>
        <translation type="unfinished">这里没有箱</translation>
    </message>
    <message>
        <source>No description yet</source>
        <translation type="unfinished">还没有描述</translation>
    </message>
    <message>
        <source>No good bag yet</source>
        <translation type="unfinished">还没有合格袋</translation>
    </message>
    <message>
        <source>No label is in doubt</source>
        <translation type="unfinished">没有存疑标签</translation>
    </message>
    <message>
        <source>No lot is on the line: scan one.</source>
        <translation type="unfinished">线上没有批次：扫一个。</translation>
    </message>
    <message>
        <source>No roll is in</source>
        <translation type="unfinished">没有装标签卷</translation>
    </message>
    <message>
        <source>No run is open</source>
        <translation type="unfinished">没有生产</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">没有进行中的生产</translation>
    </message>
    <message>
        <source>No target can be proposed: {why}.</source>
        <translation type="unfinished">无法提出目标值：{why}。</translation>
    </message>
    <message>
        <source>No whole line was heard yet.</source>
        <translation type="unfinished">尚未收到完整的一行。</translation>
    </message>
    <message>
        <source>Not kept: {why}, {folder}</source>
        <translation type="unfinished">未保存：{why}，{folder}</translation>
    </message>
    <message>
        <source>Not recorded: {why}</source>
        <translation type="unfinished">未记录：{why}</translation>
    </message>
    <message>
        <source>Nothing is held or packed.</source>
        <translation type="unfinished">没有扣留也没有包装。</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">没有待办。</translation>
    </message>
    <message>
        <source>Nothing keeps it.</source>
        <translation type="unfinished">没有障碍。</translation>
    </message>
    <message>
        <source>Nothing waits for a signature.</source>
        <translation type="unfinished">没有等待签名的。</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">按包装员</translation>
    </message>
    <message>
        <source>OLD ONE DESTROYED</source>
        <translation type="unfinished">旧的已销毁</translation>
    </message>
    <message>
        <source>ON ITS BAG</source>
        <translation type="unfinished">在袋上</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation type="unfinished">打开</translation>
    </message>
    <message>
        <source>OPEN ONLY</source>
        <translation type="unfinished">仅未结</translation>
    </message>
    <message>
        <source>ORDER DONE</source>
        <translation type="unfinished">订单完成</translation>
    </message>
    <message>
        <source>OVER</source>
        <translation type="unfinished">超载</translation>
    </message>
    <message>
        <source>OVERDUE {minutes} min</source>
        <translation type="unfinished">逾期 {minutes} min</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}</source>
        <translation type="unfinished">记录 {bags}，清点 {count}</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} fewer. Why?</source>
        <translation type="unfinished">记录 {bags}，清点 {count}：少 {difference}。为什么？</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} more. Why?</source>
        <translation type="unfinished">记录 {bags}，清点 {count}：多 {difference}。为什么？</translation>
    </message>
    <message>
        <source>On record; it holds from the next run on.</source>
        <translation type="unfinished">已记录；从下次生产起生效。</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished">称重员</translation>
    </message>
    <message>
        <source>Open a run first: a check is made at its loads.</source>
        <translation type="unfinished">先开始生产：检查按其载荷进行。</translation>
    </message>
    <message>
        <source>Order: open</source>
        <translation type="unfinished">订单：不限</translation>
    </message>
    <message>
        <source>Order: {count} bags</source>
        <translation type="unfinished">订单：{count} 袋</translation>
    </message>
    <message>
        <source>PACKED ON</source>
        <translation type="unfinished">包装日</translation>
    </message>
    <message>
        <source>PACKER</source>
        <translation type="unfinished">包装</translation>
    </message>
    <message>
        <source>PALLET</source>
        <translation type="unfinished">托盘</translation>
    </message>
    <message>
        <source>PALLETS</source>
        <translation type="unfinished">托盘</translation>
    </message>
    <message>
        <source>PAN WHEN EMPTY</source>
        <translation type="unfinished">空秤盘</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation type="unfinished">单据</translation>
    </message>
    <message>
        <source>PASSED</source>
        <translation type="unfinished">合格</translation>
    </message>
    <message>
        <source>PEOPLE</source>
        <translation type="unfinished">人员</translation>
    </message>
    <message>
        <source>PLUS/MINUS</source>
        <translation type="unfinished">正负号</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">打印</translation>
    </message>
    <message>
        <source>PRINT AGAIN</source>
        <translation type="unfinished">重打</translation>
    </message>
    <message>
        <source>PRODUCT TEMPERATURE</source>
        <translation type="unfinished">产品温度</translation>
    </message>
    <message>
        <source>PROPOSE</source>
        <translation type="unfinished">提议</translation>
    </message>
    <message>
        <source>PROPOSE when they differ enough.</source>
        <translation type="unfinished">差别足够时点 提议。</translation>
    </message>
    <message>
        <source>PUT AN EMPTY BAG ON</source>
        <translation type="unfinished">放上空袋</translation>
    </message>
    <message>
        <source>PUT ON {weights}</source>
        <translation type="unfinished">放上 {weights}</translation>
    </message>
    <message>
        <source>PUT {serial} ON</source>
        <translation type="unfinished">放上 {serial}</translation>
    </message>
    <message>
        <source>Pallet {sscc} is closed; its label comes.</source>
        <translation type="unfinished">托盘 {sscc} 已封；标签即将打出。</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished">组件</translation>
    </message>
    <message>
        <source>Plate in the settings</source>
        <translation type="unfinished">设置中的铭牌</translation>
    </message>
    <message>
        <source>Print again: {what}</source>
        <translation type="unfinished">重打：{what}</translation>
    </message>
    <message>
        <source>Protocol</source>
        <translation type="unfinished">协议</translation>
    </message>
    <message>
        <source>Put another weight on, and TAKE a line at rest and one in motion too.</source>
        <translation type="unfinished">换一个重量，静止和移动时各取一行。</translation>
    </message>
    <message>
        <source>Put its number into station.toml.</source>
        <translation type="unfinished">把它的编号写入 station.toml。</translation>
    </message>
    <message>
        <source>QA check</source>
        <translation type="unfinished">质检</translation>
    </message>
    <message>
        <source>QA decides</source>
        <translation type="unfinished">质检决定</translation>
    </message>
    <message>
        <source>QA decides: release all, or let the hold stay</source>
        <translation type="unfinished">质检决定：全部放行，或继续扣留</translation>
    </message>
    <message>
        <source>QA holds the button</source>
        <translation type="unfinished">质检按住</translation>
    </message>
    <message>
        <source>QA or a manager releases a lot: touch WHO and choose your name</source>
        <translation type="unfinished">批次由质检或经理放行：点 谁 并选名字</translation>
    </message>
    <message>
        <source>QA said go on</source>
        <translation type="unfinished">质检说继续</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">质量</translation>
    </message>
    <message>
        <source>READY</source>
        <translation type="unfinished">就绪</translation>
    </message>
    <message>
        <source>REASON TO REFUSE</source>
        <translation type="unfinished">拒绝原因</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">收货</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">录制</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">记录提议</translation>
    </message>
    <message>
        <source>RECORDED</source>
        <translation type="unfinished">已记录</translation>
    </message>
    <message>
        <source>RECORDING</source>
        <translation type="unfinished">录制</translation>
    </message>
    <message>
        <source>REFUSE</source>
        <translation type="unfinished">拒绝</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">演练</translation>
    </message>
    <message>
        <source>REJECTS</source>
        <translation type="unfinished">剔出袋</translation>
    </message>
    <message>
        <source>RELEASE</source>
        <translation type="unfinished">放行</translation>
    </message>
    <message>
        <source>RELEASE ALL</source>
        <translation type="unfinished">全部放行</translation>
    </message>
    <message>
        <source>RELEASE BEFORE STEP</source>
        <translation type="unfinished">放行之前的</translation>
    </message>
    <message>
        <source>REPORT</source>
        <translation type="unfinished">报告</translation>
    </message>
    <message>
        <source>REPRINT</source>
        <translation type="unfinished">重打</translation>
    </message>
    <message>
        <source>RETURN</source>
        <translation type="unfinished">退回</translation>
    </message>
    <message>
        <source>RETURNED</source>
        <translation type="unfinished">退回</translation>
    </message>
    <message>
        <source>REWORKED</source>
        <translation type="unfinished">返工</translation>
    </message>
    <message>
        <source>ROLL</source>
        <translation type="unfinished">标签卷</translation>
    </message>
    <message>
        <source>ROLL IN</source>
        <translation type="unfinished">装卷</translation>
    </message>
    <message>
        <source>ROLL OUT</source>
        <translation type="unfinished">卸卷</translation>
    </message>
    <message>
        <source>ROOM TEMPERATURE</source>
        <translation type="unfinished">车间温度</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">生产</translation>
    </message>
    <message>
        <source>RUN, then SERVICE (F9), SWAP</source>
        <translation type="unfinished">生产，然后 维护 (F9)，换秤</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">生产，再按 {door} ({key})</translation>
    </message>
    <message>
        <source>RUNS</source>
        <translation type="unfinished">生产</translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished">量程</translation>
    </message>
    <message>
        <source>Reading the record</source>
        <translation type="unfinished">正在读记录</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">记录</translation>
    </message>
    <message>
        <source>Recorded as refused</source>
        <translation type="unfinished">已记录为拒绝</translation>
    </message>
    <message>
        <source>Recorded: {file}</source>
        <translation type="unfinished">已录：{file}</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation type="unfinished">被拒绝</translation>
    </message>
    <message>
        <source>Refused. Count the bags first.</source>
        <translation type="unfinished">被拒绝。先清点袋数。</translation>
    </message>
    <message>
        <source>Refused. Look at another clock and say why first.</source>
        <translation type="unfinished">被拒绝。先看另一个钟并说明原因。</translation>
    </message>
    <message>
        <source>Refused. No run is open.</source>
        <translation type="unfinished">被拒绝。没有生产。</translation>
    </message>
    <message>
        <source>Refused. Say which label, why, and where the old one is.</source>
        <translation type="unfinished">被拒绝。说明哪张标签、为什么、旧的在哪里。</translation>
    </message>
    <message>
        <source>Refused. Scan the roll and key in its labels first.</source>
        <translation type="unfinished">被拒绝。先扫卷并输入标签数。</translation>
    </message>
    <message>
        <source>Refused. Touch the two who sign, the lead first.</source>
        <translation type="unfinished">被拒绝。点两位签名人，班长先点。</translation>
    </message>
    <message>
        <source>Refused. Touch who signs.</source>
        <translation type="unfinished">被拒绝。点签名的人。</translation>
    </message>
    <message>
        <source>Refused. Who signs? Touch WHO and choose your name.</source>
        <translation type="unfinished">被拒绝。谁签名？点 谁 并选名字。</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">被拒绝。{why}</translation>
    </message>
    <message>
        <source>Rehearsing …</source>
        <translation type="unfinished">正在演练 …</translation>
    </message>
    <message>
        <source>Roll {roll} is in. Count it out</source>
        <translation type="unfinished">卷 {roll} 在机上。清点后卸下</translation>
    </message>
    <message>
        <source>Roll {roll}: why {difference}?</source>
        <translation type="unfinished">卷 {roll}：为什么{difference}？</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">生产进行中</translation>
    </message>
    <message>
        <source>SAFE</source>
        <translation type="unfinished">稳妥</translation>
    </message>
    <message>
        <source>SAMPLED</source>
        <translation type="unfinished">取样</translation>
    </message>
    <message>
        <source>SAMPLES</source>
        <translation type="unfinished">样品</translation>
    </message>
    <message>
        <source>SAVE</source>
        <translation type="unfinished">保存</translation>
    </message>
    <message>
        <source>SCALE</source>
        <translation type="unfinished">秤</translation>
    </message>
    <message>
        <source>SCAN</source>
        <translation type="unfinished">扫码</translation>
    </message>
    <message>
        <source>SCAN A BAG</source>
        <translation type="unfinished">扫一袋</translation>
    </message>
    <message>
        <source>SCAN THE FILM LOT</source>
        <translation type="unfinished">扫膜批号</translation>
    </message>
    <message>
        <source>SEAL</source>
        <translation type="unfinished">封口</translation>
    </message>
    <message>
        <source>SEAL CHECK</source>
        <translation type="unfinished">封口</translation>
    </message>
    <message>
        <source>SERIALS</source>
        <translation type="unfinished">编号</translation>
    </message>
    <message>
        <source>SERVICE</source>
        <translation type="unfinished">维护</translation>
    </message>
    <message>
        <source>SET ASIDE</source>
        <translation type="unfinished">放到一边</translation>
    </message>
    <message>
        <source>SHELVE</source>
        <translation type="unfinished">搁置</translation>
    </message>
    <message>
        <source>SHIP</source>
        <translation type="unfinished">发货</translation>
    </message>
    <message>
        <source>SHIPPING</source>
        <translation type="unfinished">发货</translation>
    </message>
    <message>
        <source>SIGN</source>
        <translation type="unfinished">签名</translation>
    </message>
    <message>
        <source>SIGN DAY</source>
        <translation type="unfinished">签署当天</translation>
    </message>
    <message>
        <source>SIGNS</source>
        <translation type="unfinished">签名人</translation>
    </message>
    <message>
        <source>SMA SCP-0499 level {code}</source>
        <translation type="unfinished">SMA SCP-0499 级别 {code}</translation>
    </message>
    <message>
        <source>SPOILED</source>
        <translation type="unfinished">损坏</translation>
    </message>
    <message>
        <source>SPOOLED</source>
        <translation type="unfinished">已排队</translation>
    </message>
    <message>
        <source>SPREAD</source>
        <translation type="unfinished">离散</translation>
    </message>
    <message>
        <source>START CHECK</source>
        <translation type="unfinished">开始检查</translation>
    </message>
    <message>
        <source>START OVER</source>
        <translation type="unfinished">重新开始</translation>
    </message>
    <message>
        <source>START RUN</source>
        <translation type="unfinished">开始生产</translation>
    </message>
    <message>
        <source>STARTING</source>
        <translation type="unfinished">正在启动</translation>
    </message>
    <message>
        <source>STATION</source>
        <translation type="unfinished">工作站</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished">停线</translation>
    </message>
    <message>
        <source>STOP RECORDING</source>
        <translation type="unfinished">停止录制</translation>
    </message>
    <message>
        <source>STOPS</source>
        <translation type="unfinished">停线</translation>
    </message>
    <message>
        <source>STUDY {count} BAGS</source>
        <translation type="unfinished">测定 {count} 袋</translation>
    </message>
    <message>
        <source>SUBMITTED</source>
        <translation type="unfinished">已提交</translation>
    </message>
    <message>
        <source>SUSPECT BAGS</source>
        <translation type="unfinished">可疑袋</translation>
    </message>
    <message>
        <source>SUSPECT WINDOW</source>
        <translation type="unfinished">可疑时段</translation>
    </message>
    <message>
        <source>SWAP</source>
        <translation type="unfinished">换秤</translation>
    </message>
    <message>
        <source>Same product?</source>
        <translation type="unfinished">同一产品？</translation>
    </message>
    <message>
        <source>Sat {number}</source>
        <translation type="unfinished">{number}日周六</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished">星期六</translation>
    </message>
    <message>
        <source>Scale {what} failed its last check</source>
        <translation type="unfinished">秤 {what} 上次检查不合格</translation>
    </message>
    <message>
        <source>Scan a label, or type a serial or a blend lot.</source>
        <translation type="unfinished">扫标签，或输入编号或混合批号。</translation>
    </message>
    <message>
        <source>Scan the bags, type first..last, or touch NEXT CASE</source>
        <translation type="unfinished">扫袋，输入 首..末，或点 下一箱</translation>
    </message>
    <message>
        <source>Scan the cases of the pallet</source>
        <translation type="unfinished">扫托盘的箱</translation>
    </message>
    <message>
        <source>Scan the label on a bag</source>
        <translation type="unfinished">扫一个袋上的标签</translation>
    </message>
    <message>
        <source>Scan the pallets and cases that leave</source>
        <translation type="unfinished">扫要发出的托盘和箱</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation type="unfinished">序列号</translation>
    </message>
    <message>
        <source>Settings and record are being read: no bag is taken yet</source>
        <translation type="unfinished">正在读取设置和记录：尚未接收任何袋子</translation>
    </message>
    <message>
        <source>Shipment {number} is on record.</source>
        <translation type="unfinished">发货 {number} 已记录。</translation>
    </message>
    <message>
        <source>Shipments</source>
        <translation type="unfinished">发货单</translation>
    </message>
    <message>
        <source>Sign as the second person to {act}</source>
        <translation type="unfinished">第二人签名：{act}</translation>
    </message>
    <message>
        <source>Sign to {act}</source>
        <translation type="unfinished">签名：{act}</translation>
    </message>
    <message>
        <source>Signed and on record.</source>
        <translation type="unfinished">已签名并记录。</translation>
    </message>
    <message>
        <source>Solid: mean so far, dotted: its limits. Dashed: mean of about 40 bags. Touch a bag.</source>
        <translation type="unfinished">实线：目前均值，点线：其界限。虚线：约 40 袋均值。点一袋。</translation>
    </message>
    <message>
        <source>Start a run</source>
        <translation type="unfinished">开始生产</translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished">工作站</translation>
    </message>
    <message>
        <source>Stop and start the station to use it</source>
        <translation type="unfinished">停止再启动本站后生效</translation>
    </message>
    <message>
        <source>Study kept: mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">测定已存：均值 {mean}，s {spread}，{count} 袋</translation>
    </message>
    <message>
        <source>Sun {number}</source>
        <translation type="unfinished">{number}日周日</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished">星期日</translation>
    </message>
    <message>
        <source>Suspect window of {what}: {count} bags are held</source>
        <translation type="unfinished">{what}可疑时段：扣留 {count} 袋</translation>
    </message>
    <message>
        <source>T1 packs in the official sample</source>
        <translation type="unfinished">官方样本中的 T1 袋</translation>
    </message>
    <message>
        <source>T1 packs of the whole batch</source>
        <translation type="unfinished">整批的 T1 袋</translation>
    </message>
    <message>
        <source>T2 packs in the long run</source>
        <translation type="unfinished">长期的 T2 袋</translation>
    </message>
    <message>
        <source>T2 packs in the official sample</source>
        <translation type="unfinished">官方样本中的 T2 袋</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2、T1、标称</translation>
    </message>
    <message>
        <source>TAKE INTO USE</source>
        <translation type="unfinished">启用</translation>
    </message>
    <message>
        <source>TAKE LINE</source>
        <translation type="unfinished">取行</translation>
    </message>
    <message>
        <source>TAKE OUT</source>
        <translation type="unfinished">取出</translation>
    </message>
    <message>
        <source>TAKE READING</source>
        <translation type="unfinished">取读数</translation>
    </message>
    <message>
        <source>TARE</source>
        <translation type="unfinished">皮重</translation>
    </message>
    <message>
        <source>TARGET</source>
        <translation type="unfinished">目标</translation>
    </message>
    <message>
        <source>TEACH</source>
        <translation type="unfinished">教学</translation>
    </message>
    <message>
        <source>TELL</source>
        <translation type="unfinished">告知</translation>
    </message>
    <message>
        <source>THE BAG</source>
        <translation type="unfinished">此袋</translation>
    </message>
    <message>
        <source>THE DAY</source>
        <translation type="unfinished">当天</translation>
    </message>
    <message>
        <source>THE SCALE FAILS: its bags are held, call maintenance</source>
        <translation type="unfinished">秤不合格：其袋已扣留，叫维修</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS</source>
        <translation type="unfinished">秤合格</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS, beyond its first limit: have it adjusted soon</source>
        <translation type="unfinished">秤合格，但超出第一限值：尽快校准</translation>
    </message>
    <message>
        <source>THIN</source>
        <translation type="unfinished">勉强</translation>
    </message>
    <message>
        <source>THIS HOUR</source>
        <translation type="unfinished">本小时</translation>
    </message>
    <message>
        <source>TIME</source>
        <translation type="unfinished">时间</translation>
    </message>
    <message>
        <source>TOPPED UP</source>
        <translation type="unfinished">补足</translation>
    </message>
    <message>
        <source>TRACE</source>
        <translation type="unfinished">追溯</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">培训</translation>
    </message>
    <message>
        <source>TRAINING IS OVER</source>
        <translation type="unfinished">培训已过期</translation>
    </message>
    <message>
        <source>Take a line, mark its value and say the unit first.</source>
        <translation type="unfinished">先取行，标出数值并说明单位。</translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished">目标</translation>
    </message>
    <message>
        <source>Target {target} instead of {now}, held up by {what}: {then} given away a bag instead of {old}.</source>
        <translation type="unfinished">目标 {target} 代替 {now}，受限于{what}：每袋多给 {then} 而不是 {old}。</translation>
    </message>
    <message>
        <source>The bin of {day} is counted: {count}.</source>
        <translation type="unfinished">{day} 的废料箱已清点：{count}。</translation>
    </message>
    <message>
        <source>The clock</source>
        <translation type="unfinished">时钟</translation>
    </message>
    <message>
        <source>The line is the lowest mean that holds for a spread. Touch it to read it.</source>
        <translation type="unfinished">曲线是各离散下的最低均值。点它查看。</translation>
    </message>
    <message>
        <source>The next check is {stage}.</source>
        <translation type="unfinished">下次检查：{stage}。</translation>
    </message>
    <message>
        <source>The port is opened again. What the scale says of itself stands beside.</source>
        <translation type="unfinished">端口已重新打开。旁边是秤的自述。</translation>
    </message>
    <message>
        <source>The proposal is on record. A manager approves it, as a new version.</source>
        <translation type="unfinished">提议已记录。由经理批准为新版本。</translation>
    </message>
    <message>
        <source>The recording ended: {why}</source>
        <translation type="unfinished">录制已结束：{why}</translation>
    </message>
    <message>
        <source>The reject bin of {day} was not counted</source>
        <translation type="unfinished">{day} 的废料箱没有清点</translation>
    </message>
    <message>
        <source>The run ended: nothing is recorded.</source>
        <translation type="unfinished">生产已结束：没有记录。</translation>
    </message>
    <message>
        <source>The run ended: the check was given up.</source>
        <translation type="unfinished">生产已结束：检查已放弃。</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">以秤本身的示值为准。如果屏幕与秤不一致，以秤为准：停下并叫班长。</translation>
    </message>
    <message>
        <source>The scan of label {serial} does not match</source>
        <translation type="unfinished">标签 {serial} 扫码不符</translation>
    </message>
    <message>
        <source>The test is on record, as {what}.</source>
        <translation type="unfinished">检验已记录：{what}。</translation>
    </message>
    <message>
        <source>There is no chart to keep.</source>
        <translation type="unfinished">没有可保存的图表。</translation>
    </message>
    <message>
        <source>There is no recording: make one on the page WIRE.</source>
        <translation type="unfinished">没有录制：在 线路 页录一个。</translation>
    </message>
    <message>
        <source>There is no run before</source>
        <translation type="unfinished">没有上一次生产</translation>
    </message>
    <message>
        <source>There is nothing to keep yet.</source>
        <translation type="unfinished">还没有可保存的。</translation>
    </message>
    <message>
        <source>This run stays as it is.</source>
        <translation type="unfinished">本次生产不变。</translation>
    </message>
    <message>
        <source>This screen is left at RUN, MORE, LEAVE, by somebody who may</source>
        <translation type="unfinished">离开此屏：生产、更多、退出，须由有权限的人操作</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation type="unfinished">线程</translation>
    </message>
    <message>
        <source>Thu {number}</source>
        <translation type="unfinished">{number}日周四</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished">星期四</translation>
    </message>
    <message>
        <source>Touch PASSED or FAILED.</source>
        <translation type="unfinished">点 合格 或 不合格。</translation>
    </message>
    <message>
        <source>Touch a line.</source>
        <translation type="unfinished">点一行。</translation>
    </message>
    <message>
        <source>Touch the rejects it is about first.</source>
        <translation type="unfinished">先点相关的剔出袋。</translation>
    </message>
    <message>
        <source>Touch what becomes of it first.</source>
        <translation type="unfinished">先点怎么处理。</translation>
    </message>
    <message>
        <source>Touch what is checked first.</source>
        <translation type="unfinished">先点检查什么。</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">先点自己的名字。</translation>
    </message>
    <message>
        <source>Tue {number}</source>
        <translation type="unfinished">{number}日周二</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished">星期二</translation>
    </message>
    <message>
        <source>UNDO</source>
        <translation type="unfinished">撤销</translation>
    </message>
    <message>
        <source>UNIT</source>
        <translation type="unfinished">单位</translation>
    </message>
    <message>
        <source>UNIT {code}</source>
        <translation type="unfinished">单位 {code}</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">食用截止日期</translation>
    </message>
    <message>
        <source>Use by {day}</source>
        <translation type="unfinished">食用截止日期 {day}</translation>
    </message>
    <message>
        <source>VALUE</source>
        <translation type="unfinished">数值</translation>
    </message>
    <message>
        <source>VOIDED</source>
        <translation type="unfinished">作废</translation>
    </message>
    <message>
        <source>Version</source>
        <translation type="unfinished">版本</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">等待</translation>
    </message>
    <message>
        <source>WARN</source>
        <translation type="unfinished">警告</translation>
    </message>
    <message>
        <source>WASH RECORD</source>
        <translation type="unfinished">清洗记录</translation>
    </message>
    <message>
        <source>WASTE</source>
        <translation type="unfinished">报废</translation>
    </message>
    <message>
        <source>WEIGH AN EMPTY BAG</source>
        <translation type="unfinished">称一个空袋</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">称一袋</translation>
    </message>
    <message>
        <source>WEIGHED AGAIN</source>
        <translation type="unfinished">复称</translation>
    </message>
    <message>
        <source>WEIGHTS</source>
        <translation type="unfinished">重量</translation>
    </message>
    <message>
        <source>WHO</source>
        <translation type="unfinished">谁</translation>
    </message>
    <message>
        <source>WHOLE RUN</source>
        <translation type="unfinished">整次生产</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">擦秤盘</translation>
    </message>
    <message>
        <source>WIRE</source>
        <translation type="unfinished">线路</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">计算</translation>
    </message>
    <message>
        <source>WOULD BE ACCEPTED</source>
        <translation type="unfinished">会被接受</translation>
    </message>
    <message>
        <source>WOULD NOT BE ACCEPTED</source>
        <translation type="unfinished">不会被接受</translation>
    </message>
    <message>
        <source>Wait until the day is read.</source>
        <translation type="unfinished">等当天读完。</translation>
    </message>
    <message>
        <source>Wed {number}</source>
        <translation type="unfinished">{number}日周三</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished">星期三</translation>
    </message>
    <message>
        <source>Weigh again in this order: net as shown, less the whole error, less even growth</source>
        <translation type="unfinished">按此顺序复称：显示净重、减全部误差、减均匀漂移</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">品种</translation>
    </message>
    <message>
        <source>What becomes of the bags?</source>
        <translation type="unfinished">这些袋怎么处理？</translation>
    </message>
    <message>
        <source>What becomes of {bags}?</source>
        <translation type="unfinished">{bags} 怎么处理？</translation>
    </message>
    <message>
        <source>Who decides?</source>
        <translation type="unfinished">谁决定？</translation>
    </message>
    <message>
        <source>Who is touched first signs; who is touched second witnesses or releases too</source>
        <translation type="unfinished">先点的人签名；后点的人见证或一同放行</translation>
    </message>
    <message>
        <source>Who leads touches why the line may go on</source>
        <translation type="unfinished">班长点选可以继续的原因</translation>
    </message>
    <message>
        <source>Why does the line stop?</source>
        <translation type="unfinished">为什么停线？</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">为什么放到一边？</translation>
    </message>
    <message>
        <source>Why? Choose or type the reason.</source>
        <translation type="unfinished">为什么？选择或输入原因。</translation>
    </message>
    <message>
        <source>Working a target out from the bags …</source>
        <translation type="unfinished">正在根据袋计算目标 …</translation>
    </message>
    <message>
        <source>Working a target out from the bags: {count} tried …</source>
        <translation type="unfinished">正在根据袋计算目标：已试 {count} 个 …</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation type="unfinished">正在写 …</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation type="unfinished">已写：{file}</translation>
    </message>
    <message>
        <source>Written: {file} and {count} more in {folder}</source>
        <translation type="unfinished">已写：{file} 等另 {count} 个，在 {folder}</translation>
    </message>
    <message>
        <source>YIELD OF LOTS</source>
        <translation type="unfinished">批次得率</translation>
    </message>
    <message>
        <source>ZERO</source>
        <translation type="unfinished">归零</translation>
    </message>
    <message>
        <source>Zero stepped by {step} between {before} and {after}.</source>
        <translation type="unfinished">零点在 {before} 与 {after} 之间跳了 {step}。</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">秤盘上有袋子：做完并取走，再结束生产</translation>
    </message>
    <message>
        <source>a bag that is {what} has no new bag</source>
        <translation type="unfinished">{what}的袋没有新袋</translation>
    </message>
    <message>
        <source>a bag that is {what} wants a witness: a second person signs</source>
        <translation type="unfinished">{what}的袋需见证：第二人签名</translation>
    </message>
    <message>
        <source>a case was packed short or over</source>
        <translation type="unfinished">有一箱多装或少装</translation>
    </message>
    <message>
        <source>a check failed</source>
        <translation type="unfinished">一项检查不合格</translation>
    </message>
    <message>
        <source>a check goes on at the scale: put no bag on it</source>
        <translation type="unfinished">正在检查秤：不要放袋子</translation>
    </message>
    <message>
        <source>a check is due soon</source>
        <translation type="unfinished">即将检查</translation>
    </message>
    <message>
        <source>a check is overdue</source>
        <translation type="unfinished">检查已逾期</translation>
    </message>
    <message>
        <source>a check needs test weights: name at least one</source>
        <translation type="unfinished">检查需要标准砝码：至少填一个</translation>
    </message>
    <message>
        <source>a copy was printed</source>
        <translation type="unfinished">打印过一份副本</translation>
    </message>
    <message>
        <source>a cover is open: close it</source>
        <translation type="unfinished">盖子开着：关上</translation>
    </message>
    <message>
        <source>a decision needs a reason: choose or write why</source>
        <translation type="unfinished">决定需要原因：选择或输入</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">门开着：关上</translation>
    </message>
    <message>
        <source>a figure</source>
        <translation type="unfinished">一个数</translation>
    </message>
    <message>
        <source>a forecast needs at least two packs</source>
        <translation type="unfinished">预测至少要两袋</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">被扣留的批次在线上</translation>
    </message>
    <message>
        <source>a hold needs a reason: write why</source>
        <translation type="unfinished">扣留需要原因：请写</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">标签不符</translation>
    </message>
    <message>
        <source>a load was taken for zero when the scale came back: with the pan empty set the scale to zero, or switch it off and on</source>
        <translation type="unfinished">秤恢复时把货物当成了零：秤盘空时置零，或关机再开机</translation>
    </message>
    <message>
        <source>a lot ends soon</source>
        <translation type="unfinished">批次快用完</translation>
    </message>
    <message>
        <source>a lot should be empty</source>
        <translation type="unfinished">批次应已用完</translation>
    </message>
    <message>
        <source>a new bag</source>
        <translation type="unfinished">新袋</translation>
    </message>
    <message>
        <source>a new code is made</source>
        <translation type="unfinished">将生成新批号</translation>
    </message>
    <message>
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">新卷从首件标签开始</translation>
    </message>
    <message>
        <source>a numbered copy</source>
        <translation type="unfinished">编号副本</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">暂停</translation>
    </message>
    <message>
        <source>a release needs a reason: write why</source>
        <translation type="unfinished">放行需要原因：请写</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">有生产正在进行：先结束它</translation>
    </message>
    <message>
        <source>a run needs a lead and a person on the scale</source>
        <translation type="unfinished">生产需要一位班长和一位称重人</translation>
    </message>
    <message>
        <source>a scale that says nothing</source>
        <translation type="unfinished">不报信息的秤</translation>
    </message>
    <message>
        <source>a suspect window of {what} is open ({count} bags)</source>
        <translation type="unfinished">{what}的可疑时段未结（{count} 袋）</translation>
    </message>
    <message>
        <source>a version is not refused</source>
        <translation type="unfinished">版本不作拒绝</translation>
    </message>
    <message>
        <source>a weight every {gap} ms</source>
        <translation type="unfinished">每 {gap} ms 一个重量</translation>
    </message>
    <message>
        <source>a whole run is not dumped: hold its bags first</source>
        <translation type="unfinished">整次生产不能倒掉：先扣留其袋</translation>
    </message>
    <message>
        <source>about {mass} in bags of {loaded} loaded</source>
        <translation type="unfinished">投料 {loaded}，约 {mass} 装袋</translation>
    </message>
    <message>
        <source>above the highest of the description, {number}</source>
        <translation type="unfinished">高于描述的最大值 {number}</translation>
    </message>
    <message>
        <source>adds up</source>
        <translation type="unfinished">相符</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">停线后</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation type="unfinished">向前</translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished">空气</translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished">全部</translation>
    </message>
    <message>
        <source>all 999 lot codes of {day} are used: give a code by hand</source>
        <translation type="unfinished">{day} 的 999 个批号已用完：请手动给批号</translation>
    </message>
    <message>
        <source>all days</source>
        <translation type="unfinished">所有天</translation>
    </message>
    <message>
        <source>all found</source>
        <translation type="unfinished">全部检出</translation>
    </message>
    <message>
        <source>all loads are taken</source>
        <translation type="unfinished">所有载荷已测</translation>
    </message>
    <message>
        <source>all reviewed</source>
        <translation type="unfinished">全部已审</translation>
    </message>
    <message>
        <source>all {count} lines are weights: compare them with what the scale showed</source>
        <translation type="unfinished">全部 {count} 行都是重量：与秤显示的比较</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation type="unfinished">允许</translation>
    </message>
    <message>
        <source>allowed {floor} to {upper}, T1 {t1}, T2 {t2}</source>
        <translation type="unfinished">允许 {floor} 至 {upper}，T1 {t1}，T2 {t2}</translation>
    </message>
    <message>
        <source>an aid to the inspector, no official result</source>
        <translation type="unfinished">供检查员参考，非官方结果</translation>
    </message>
    <message>
        <source>an alarm is not shelved for {minutes} minutes: allowed are {allowed}</source>
        <translation type="unfinished">警报不能推迟 {minutes} 分钟：允许 {allowed}</translation>
    </message>
    <message>
        <source>an empty bag weighs {mass}, {more} more than the tare taken off</source>
        <translation type="unfinished">空袋重 {mass}，比扣除的皮重多 {more}</translation>
    </message>
    <message>
        <source>an order of {count} bags: give 1 or more, or leave it open</source>
        <translation type="unfinished">订单 {count} 袋：给 1 或更多，或不限</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished">另有 {count}</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">下面还有 {count} 个</translation>
    </message>
    <message>
        <source>another code was scanned</source>
        <translation type="unfinished">扫了别的码</translation>
    </message>
    <message>
        <source>another device is at {code}</source>
        <translation type="unfinished">{code} 上是另一台设备</translation>
    </message>
    <message>
        <source>another one is set</source>
        <translation type="unfinished">设置的是另一个</translation>
    </message>
    <message>
        <source>another program has it: close that program, or name another port</source>
        <translation type="unfinished">被其他程序占用：关闭该程序，或换端口</translation>
    </message>
    <message>
        <source>another scale is here, {here}; in use is {known}: take it into use, {where}</source>
        <translation type="unfinished">接了另一台秤 {here}；在用的是 {known}：启用它，{where}</translation>
    </message>
    <message>
        <source>any number</source>
        <translation type="unfinished">不限</translation>
    </message>
    <message>
        <source>applied</source>
        <translation type="unfinished">已贴</translation>
    </message>
    <message>
        <source>approve a label</source>
        <translation type="unfinished">批准标签</translation>
    </message>
    <message>
        <source>approve a product version</source>
        <translation type="unfinished">批准产品版本</translation>
    </message>
    <message>
        <source>approve or refuse a target</source>
        <translation type="unfinished">批准或拒绝目标值</translation>
    </message>
    <message>
        <source>approved</source>
        <translation type="unfinished">已批准</translation>
    </message>
    <message>
        <source>as far as one approval goes</source>
        <translation type="unfinished">一次批准所能到的值</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">调整前</translation>
    </message>
    <message>
        <source>as left</source>
        <translation type="unfinished">调整后</translation>
    </message>
    <message>
        <source>as left, after its adjustment</source>
        <translation type="unfinished">调整之后</translation>
    </message>
    <message>
        <source>as people.toml says</source>
        <translation type="unfinished">按 people.toml</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation type="unfinished">按所称</translation>
    </message>
    <message>
        <source>asked by, as in W\r\n</source>
        <translation type="unfinished">询问用，如 W\r\n</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">正在询问生产线 …</translation>
    </message>
    <message>
        <source>at least {least} {unit}</source>
        <translation type="unfinished">至少 {least} {unit}</translation>
    </message>
    <message>
        <source>at most {most} {unit}</source>
        <translation type="unfinished">至多 {most} {unit}</translation>
    </message>
    <message>
        <source>at once</source>
        <translation type="unfinished">立即</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">随机</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation type="unfinished">静止</translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">向后</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">袋</translation>
    </message>
    <message>
        <source>bag of the run</source>
        <translation type="unfinished">本次生产的袋</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">袋 {code}，膜批号 {lot} 没有皮重测定：请做一次：{where}</translation>
    </message>
    <message>
        <source>bag {code}: rework of {lot}, last day {day}</source>
        <translation type="unfinished">袋 {code}：{lot} 的返工，最后日期 {day}</translation>
    </message>
    <message>
        <source>bag {serial} has had {copies} already: the lead signs for the next one</source>
        <translation type="unfinished">袋 {serial} 已有 {copies}：下一张由班长签名</translation>
    </message>
    <message>
        <source>bag {serial} has had {count} copies: set it aside</source>
        <translation type="unfinished">袋 {serial} 已有 {count} 份副本：另放</translation>
    </message>
    <message>
        <source>bag {serial} is held: it gets no label before QA has released it</source>
        <translation type="unfinished">袋 {serial} 已扣留：质检放行前不给标签</translation>
    </message>
    <message>
        <source>bag {serial} is of blend lot {lot}, the case of {other}: close this case and begin another</source>
        <translation type="unfinished">袋 {serial} 属混合批 {lot}，箱属 {other}：封此箱，另开一箱</translation>
    </message>
    <message>
        <source>bag {serial} is {what}: scan the label of the new bag</source>
        <translation type="unfinished">袋 {serial} {what}：扫新袋的标签</translation>
    </message>
    <message>
        <source>bag {serial} lies under the hold of {what}: have it released first, or dump it</source>
        <translation type="unfinished">袋 {serial} 在 {what} 的扣留之下：先请放行，或倒掉</translation>
    </message>
    <message>
        <source>bag {serial} was picked already</source>
        <translation type="unfinished">袋 {serial} 已选过</translation>
    </message>
    <message>
        <source>bag {serial} was scanned already</source>
        <translation type="unfinished">袋 {serial} 已扫过</translation>
    </message>
    <message>
        <source>bag, case, pallet or lot</source>
        <translation type="unfinished">袋、箱、托盘或批次</translation>
    </message>
    <message>
        <source>bag, record</source>
        <translation type="unfinished">袋、记录</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">袋</translation>
    </message>
    <message>
        <source>bags are taken again: {why}</source>
        <translation type="unfinished">重新接收袋子：{why}</translation>
    </message>
    <message>
        <source>bags left on the line were set aside or cooled</source>
        <translation type="unfinished">线上剩的袋已另放或冷藏</translation>
    </message>
    <message>
        <source>bags since then looked at</source>
        <translation type="unfinished">之后的袋已查看</translation>
    </message>
    <message>
        <source>before bag {count}</source>
        <translation type="unfinished">第 {count} 袋之前</translation>
    </message>
    <message>
        <source>below T1</source>
        <translation type="unfinished">低于 T1</translation>
    </message>
    <message>
        <source>below T1: {count} of at most {most}</source>
        <translation type="unfinished">低于 T1：{count}，至多 {most}</translation>
    </message>
    <message>
        <source>below T2</source>
        <translation type="unfinished">低于 T2</translation>
    </message>
    <message>
        <source>below T2: {count}</source>
        <translation type="unfinished">低于 T2：{count}</translation>
    </message>
    <message>
        <source>below T2: {count} of at most {most}</source>
        <translation type="unfinished">低于 T2：{count}，至多 {most}</translation>
    </message>
    <message>
        <source>below floor</source>
        <translation type="unfinished">低于下限</translation>
    </message>
    <message>
        <source>below the lowest of the description, {number}</source>
        <translation type="unfinished">低于描述的最小值 {number}</translation>
    </message>
    <message>
        <source>between the fields stands {one} and also {other}: mark what changes</source>
        <translation type="unfinished">字段之间有 {one} 也有 {other}：标记变化处</translation>
    </message>
    <message>
        <source>bin and belt empty</source>
        <translation type="unfinished">料箱和带已空</translation>
    </message>
    <message>
        <source>bin count</source>
        <translation type="unfinished">废料箱清点</translation>
    </message>
    <message>
        <source>blend</source>
        <translation type="unfinished">混合</translation>
    </message>
    <message>
        <source>blend lot</source>
        <translation type="unfinished">混合批</translation>
    </message>
    <message>
        <source>blend lot code</source>
        <translation type="unfinished">混合批号</translation>
    </message>
    <message>
        <source>blend {lot}, use-by {day}</source>
        <translation type="unfinished">混合批 {lot}，截止 {day}</translation>
    </message>
    <message>
        <source>both on the label</source>
        <translation type="unfinished">两批都上标签</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">休息</translation>
    </message>
    <message>
        <source>burst after its label, destroyed</source>
        <translation type="unfinished">贴标后破袋，已销毁</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">封口裂开</translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished">范围</translation>
    </message>
    <message>
        <source>by the record</source>
        <translation type="unfinished">按记录</translation>
    </message>
    <message>
        <source>by {code}</source>
        <translation type="unfinished">{code}</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity ({here}), and that this is the scale</source>
        <translation type="unfinished">有字节但没有行的开始或结束：检查波特率和校验（{here}），并确认这就是秤</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity of the converter, and that this is the scale</source>
        <translation type="unfinished">有字节但没有行的开始或结束：检查转换器的波特率和校验，并确认这就是秤</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity ({here})</source>
        <translation type="unfinished">有字节但不成帧：检查波特率和校验（{here}）</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity of the converter</source>
        <translation type="unfinished">有字节但不成帧：检查转换器的波特率和校验</translation>
    </message>
    <message>
        <source>bytes that belong to no frame</source>
        <translation type="unfinished">不属于任何帧的字节</translation>
    </message>
    <message>
        <source>bytes that belong to no line</source>
        <translation type="unfinished">不属于任何行的字节</translation>
    </message>
    <message>
        <source>call QA</source>
        <translation type="unfinished">叫质检</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">叫人</translation>
    </message>
    <message>
        <source>case</source>
        <translation type="unfinished">箱</translation>
    </message>
    <message>
        <source>case opened</source>
        <translation type="unfinished">箱已打开</translation>
    </message>
    <message>
        <source>case {code}</source>
        <translation type="unfinished">箱 {code}</translation>
    </message>
    <message>
        <source>category-b</source>
        <translation type="unfinished">B 类</translation>
    </message>
    <message>
        <source>centre of zero</source>
        <translation type="unfinished">零点中心</translation>
    </message>
    <message>
        <source>chance to pass the official test</source>
        <translation type="unfinished">通过官方检验的可能</translation>
    </message>
    <message>
        <source>change every {count} ms</source>
        <translation type="unfinished">每 {count} ms 切换</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">更换或说明标签卷</translation>
    </message>
    <message>
        <source>changed after weighing</source>
        <translation type="unfinished">称后有变</translation>
    </message>
    <message>
        <source>changed after weighing: {net} is recorded, {found} is on the pan</source>
        <translation type="unfinished">称后有变：已记录 {net}，秤盘上 {found}</translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished">检查</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">检查{what}</translation>
    </message>
    <message>
        <source>check the plug</source>
        <translation type="unfinished">检查插头</translation>
    </message>
    <message>
        <source>check the plug, the cable and the {what}'s power</source>
        <translation type="unfinished">检查插头、电缆和电源（{what}）</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">{what}后检查秤：{where}</translation>
    </message>
    <message>
        <source>checked again, good</source>
        <translation type="unfinished">复查合格</translation>
    </message>
    <message>
        <source>checked was {known}, here is {found}: CHECK IT again</source>
        <translation type="unfinished">检查过的是 {known}，这里是 {found}：请再次检查它</translation>
    </message>
    <message>
        <source>checking …</source>
        <translation type="unfinished">正在核对 …</translation>
    </message>
    <message>
        <source>checks made</source>
        <translation type="unfinished">已做检查</translation>
    </message>
    <message>
        <source>checksum {code} does not agree</source>
        <translation type="unfinished">校验 {code} 不符</translation>
    </message>
    <message>
        <source>choose a lot of {component}</source>
        <translation type="unfinished">选择 {component} 的批次</translation>
    </message>
    <message>
        <source>choose a product</source>
        <translation type="unfinished">选择产品</translation>
    </message>
    <message>
        <source>choose the product first, then its lots</source>
        <translation type="unfinished">先选产品，再选批次</translation>
    </message>
    <message>
        <source>class {code}</source>
        <translation type="unfinished">{code} 级</translation>
    </message>
    <message>
        <source>class {code} knows no scale interval of {interval} (R 76 Table 3)</source>
        <translation type="unfinished">{code} 级没有 {interval} 的分度（R 76 表 3）</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation type="unfinished">清洁</translation>
    </message>
    <message>
        <source>clear a scan that differed</source>
        <translation type="unfinished">处理不符的扫码</translation>
    </message>
    <message>
        <source>clear the line and sign for it: {where}</source>
        <translation type="unfinished">清线并签名：{where}</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">关闭</translation>
    </message>
    <message>
        <source>code</source>
        <translation type="unfinished">批号</translation>
    </message>
    <message>
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">核对标签，再处理扫码</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">完整</translation>
    </message>
    <message>
        <source>component {component} is not known: allowed are {allowed}</source>
        <translation type="unfinished">成分 {component} 不明：允许 {allowed}</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">确认日期和时间</translation>
    </message>
    <message>
        <source>connected by {device}</source>
        <translation type="unfinished">经 {device} 连接</translation>
    </message>
    <message>
        <source>cooler temperature</source>
        <translation type="unfinished">冷库温度</translation>
    </message>
    <message>
        <source>correct what was recorded</source>
        <translation type="unfinished">更正记录</translation>
    </message>
    <message>
        <source>count on the core was wrong</source>
        <translation type="unfinished">卷芯上的数不对</translation>
    </message>
    <message>
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">清点上次生产的袋数：{where}</translation>
    </message>
    <message>
        <source>counted {count}</source>
        <translation type="unfinished">清点 {count}</translation>
    </message>
    <message>
        <source>counted {count}, agrees</source>
        <translation type="unfinished">清点 {count}，相符</translation>
    </message>
    <message>
        <source>counted {count}, {difference}</source>
        <translation type="unfinished">清点 {count}，{difference}</translation>
    </message>
    <message>
        <source>counted {count}, {difference}: {why}</source>
        <translation type="unfinished">清点 {count}，{difference}：{why}</translation>
    </message>
    <message>
        <source>customer's own limits</source>
        <translation type="unfinished">客户自有限值</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">日期或时间存疑</translation>
    </message>
    <message>
        <source>dated step</source>
        <translation type="unfinished">有时刻的跳变</translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished">日</translation>
    </message>
    <message>
        <source>day after</source>
        <translation type="unfinished">后一天</translation>
    </message>
    <message>
        <source>day before</source>
        <translation type="unfinished">前一天</translation>
    </message>
    <message>
        <source>day, month</source>
        <translation type="unfinished">日、月</translation>
    </message>
    <message>
        <source>decide about suspect bags</source>
        <translation type="unfinished">决定可疑袋</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">决定袋子的去向</translation>
    </message>
    <message>
        <source>declared tare {mass}</source>
        <translation type="unfinished">申报皮重 {mass}</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation type="unfinished">已销毁</translation>
    </message>
    <message>
        <source>destructive</source>
        <translation type="unfinished">破坏性</translation>
    </message>
    <message>
        <source>destructive-e-mark</source>
        <translation type="unfinished">破坏性 (℮)</translation>
    </message>
    <message>
        <source>device {code}</source>
        <translation type="unfinished">设备 {code}</translation>
    </message>
    <message>
        <source>differs</source>
        <translation type="unfinished">不一致</translation>
    </message>
    <message>
        <source>digest</source>
        <translation type="unfinished">摘要</translation>
    </message>
    <message>
        <source>digits it shows</source>
        <translation type="unfinished">显示的数字</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation type="unfinished">不符合</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">完成</translation>
    </message>
    <message>
        <source>double</source>
        <translation type="unfinished">二次</translation>
    </message>
    <message>
        <source>downgraded</source>
        <translation type="unfinished">降级</translation>
    </message>
    <message>
        <source>dumped</source>
        <translation type="unfinished">倒掉</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation type="unfinished">已用完</translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished">空</translation>
    </message>
    <message>
        <source>empty bag</source>
        <translation type="unfinished">空袋</translation>
    </message>
    <message>
        <source>empty by now?</source>
        <translation type="unfinished">已空？</translation>
    </message>
    <message>
        <source>empty pan</source>
        <translation type="unfinished">空秤盘</translation>
    </message>
    <message>
        <source>end a run</source>
        <translation type="unfinished">结束生产</translation>
    </message>
    <message>
        <source>end the run</source>
        <translation type="unfinished">结束生产</translation>
    </message>
    <message>
        <source>enter this</source>
        <translation type="unfinished">录入此项</translation>
    </message>
    <message>
        <source>equal</source>
        <translation type="unfinished">一致</translation>
    </message>
    <message>
        <source>even</source>
        <translation type="unfinished">均匀</translation>
    </message>
    <message>
        <source>even growth</source>
        <translation type="unfinished">均匀漂移</translation>
    </message>
    <message>
        <source>even parity</source>
        <translation type="unfinished">偶校验</translation>
    </message>
    <message>
        <source>event</source>
        <translation type="unfinished">事件</translation>
    </message>
    <message>
        <source>example {number}, {line}</source>
        <translation type="unfinished">示例 {number}，{line}</translation>
    </message>
    <message>
        <source>expired</source>
        <translation type="unfinished">已过期</translation>
    </message>
    <message>
        <source>expired – take it off the line</source>
        <translation type="unfinished">已过期，撤下生产线</translation>
    </message>
    <message>
        <source>explained</source>
        <translation type="unfinished">已说明</translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished">不合格</translation>
    </message>
    <message>
        <source>failed: what is done</source>
        <translation type="unfinished">不合格：怎么处理</translation>
    </message>
    <message>
        <source>fetch the next lot</source>
        <translation type="unfinished">去取下一批</translation>
    </message>
    <message>
        <source>fetch the next roll</source>
        <translation type="unfinished">去取下一卷</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation type="unfinished">少</translation>
    </message>
    <message>
        <source>fewer than {count} labels are left</source>
        <translation type="unfinished">标签剩不到 {count} 张</translation>
    </message>
    <message>
        <source>field {code}</source>
        <translation type="unfinished">字段 {code}</translation>
    </message>
    <message>
        <source>figures do not convince</source>
        <translation type="unfinished">数据不足信</translation>
    </message>
    <message>
        <source>fill a case or close a pallet</source>
        <translation type="unfinished">装箱或封托盘</translation>
    </message>
    <message>
        <source>fill a little more, look at NUMBERS</source>
        <translation type="unfinished">多装一点，看 数据</translation>
    </message>
    <message>
        <source>film or labels</source>
        <translation type="unfinished">膜或标签</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation type="unfinished">快用完</translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished">首个</translation>
    </message>
    <message>
        <source>first label</source>
        <translation type="unfinished">第一张标签</translation>
    </message>
    <message>
        <source>first serial</source>
        <translation type="unfinished">首个编号</translation>
    </message>
    <message>
        <source>first-off</source>
        <translation type="unfinished">首件</translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished">符合</translation>
    </message>
    <message>
        <source>flag</source>
        <translation type="unfinished">标志</translation>
    </message>
    <message>
        <source>flags that contradict</source>
        <translation type="unfinished">标志互相矛盾</translation>
    </message>
    <message>
        <source>floor {mass}</source>
        <translation type="unfinished">下限 {mass}</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">下限、目标、上限</translation>
    </message>
    <message>
        <source>for every product</source>
        <translation type="unfinished">每个产品</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">异物</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">结果值</translation>
    </message>
    <message>
        <source>frame cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">{count} 字节后被下一帧截断</translation>
    </message>
    <message>
        <source>frame of {count} bytes, a weight has {number}</source>
        <translation type="unfinished">帧长 {count} 字节，重量应为 {number}</translation>
    </message>
    <message>
        <source>frame without an end within {count} bytes</source>
        <translation type="unfinished">{count} 字节内帧无结尾</translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished">可用</translation>
    </message>
    <message>
        <source>from {code}</source>
        <translation type="unfinished">从 {code}</translation>
    </message>
    <message>
        <source>from, such as 09:00</source>
        <translation type="unfinished">从，如 09:00</translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished">全检</translation>
    </message>
    <message>
        <source>gate</source>
        <translation type="unfinished">关口</translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished">多给</translation>
    </message>
    <message>
        <source>gives away</source>
        <translation type="unfinished">多给</translation>
    </message>
    <message>
        <source>go on after a pause</source>
        <translation type="unfinished">暂停后继续</translation>
    </message>
    <message>
        <source>go on after a stop</source>
        <translation type="unfinished">停线后继续</translation>
    </message>
    <message>
        <source>gone on after a stop: {why}</source>
        <translation type="unfinished">停后继续：{why}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">良好</translation>
    </message>
    <message>
        <source>gross</source>
        <translation type="unfinished">毛重</translation>
    </message>
    <message>
        <source>gross weight</source>
        <translation type="unfinished">毛重</translation>
    </message>
    <message>
        <source>guards are shut and tools are counted</source>
        <translation type="unfinished">防护已关，工具已点</translation>
    </message>
    <message>
        <source>hands and tools are washed</source>
        <translation type="unfinished">手和工具已洗</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation type="unfinished">收割日</translation>
    </message>
    <message>
        <source>heaviest gross {mass} against Max {most}</source>
        <translation type="unfinished">最大毛重 {mass}，Max {most}</translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished">已扣留</translation>
    </message>
    <message>
        <source>held at the line</source>
        <translation type="unfinished">在线扣留</translation>
    </message>
    <message>
        <source>held up by</source>
        <translation type="unfinished">受限于</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">已扣留，叫质检</translation>
    </message>
    <message>
        <source>here: {line}</source>
        <translation type="unfinished">此处：{line}</translation>
    </message>
    <message>
        <source>high resolution</source>
        <translation type="unfinished">高分辨率</translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished">扣留</translation>
    </message>
    <message>
        <source>hold down</source>
        <translation type="unfinished">按住</translation>
    </message>
    <message>
        <source>hold stays</source>
        <translation type="unfinished">继续扣留</translation>
    </message>
    <message>
        <source>hold the button</source>
        <translation type="unfinished">按住按钮</translation>
    </message>
    <message>
        <source>hold, no record</source>
        <translation type="unfinished">扣留，无记录</translation>
    </message>
    <message>
        <source>holds</source>
        <translation type="unfinished">扣留</translation>
    </message>
    <message>
        <source>holds from</source>
        <translation type="unfinished">生效</translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished">小时</translation>
    </message>
    <message>
        <source>id of the label roll</source>
        <translation type="unfinished">标签卷编号</translation>
    </message>
    <message>
        <source>id of the run</source>
        <translation type="unfinished">生产编号</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation type="unfinished">存疑</translation>
    </message>
    <message>
        <source>in money</source>
        <translation type="unfinished">金额</translation>
    </message>
    <message>
        <source>in motion</source>
        <translation type="unfinished">移动中</translation>
    </message>
    <message>
        <source>in no case</source>
        <translation type="unfinished">未装箱</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">袋内 {mass}</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation type="unfinished">在库</translation>
    </message>
    <message>
        <source>in the printer</source>
        <translation type="unfinished">在打印机里</translation>
    </message>
    <message>
        <source>in window</source>
        <translation type="unfinished">在范围内</translation>
    </message>
    <message>
        <source>in {number} min</source>
        <translation type="unfinished">{number} min 后</translation>
    </message>
    <message>
        <source>in-service error at {gross} gross {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">毛重 {gross} 的使用误差 {mass}，{limit} 的 {share} = {most}</translation>
    </message>
    <message>
        <source>initial zero error</source>
        <translation type="unfinished">开机零点错误</translation>
    </message>
    <message>
        <source>input lot</source>
        <translation type="unfinished">原料批</translation>
    </message>
    <message>
        <source>input lot code</source>
        <translation type="unfinished">原料批号</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished">仪器</translation>
    </message>
    <message>
        <source>interval {mass}</source>
        <translation type="unfinished">分度 {mass}</translation>
    </message>
    <message>
        <source>it came too slowly, or was too short, for a scanner</source>
        <translation type="unfinished">对扫码器来说太慢或太短</translation>
    </message>
    <message>
        <source>it came too warm, or damaged: QA decides</source>
        <translation type="unfinished">到货过热或损坏：质检决定</translation>
    </message>
    <message>
        <source>it changes: mark it on each line</source>
        <translation type="unfinished">它会变：每行都标记</translation>
    </message>
    <message>
        <source>it comes back without help</source>
        <translation type="unfinished">会自动恢复</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">没有应答：开机了吗，电缆插好了吗？</translation>
    </message>
    <message>
        <source>it does not end with Enter</source>
        <translation type="unfinished">结尾没有回车</translation>
    </message>
    <message>
        <source>it does not suit {products}: use another scale</source>
        <translation type="unfinished">不适合 {products}：请用别的秤</translation>
    </message>
    <message>
        <source>it failed its check with test weights: have it adjusted, then check it again</source>
        <translation type="unfinished">用标准砝码检查不合格：请调整后再检查</translation>
    </message>
    <message>
        <source>it is held until a person releases it</source>
        <translation type="unfinished">被挂起，等人放行</translation>
    </message>
    <message>
        <source>it is no serial port</source>
        <translation type="unfinished">不是串口</translation>
    </message>
    <message>
        <source>it is not there: check the plug</source>
        <translation type="unfinished">不存在：检查插头</translation>
    </message>
    <message>
        <source>it is {found}, the {what}'s is {known}: plug that one in again, or stop and start the station to take this one</source>
        <translation type="unfinished">它是 {found}，已知设备（{what}）是 {known}：重新插上它，或停止并启动工作站以接受这一台</translation>
    </message>
    <message>
        <source>it just stays without approval</source>
        <translation type="unfinished">只是保持未批准</translation>
    </message>
    <message>
        <source>it lacks what the station's scanner types first</source>
        <translation type="unfinished">缺少本站扫码器先输入的内容</translation>
    </message>
    <message>
        <source>it never came out</source>
        <translation type="unfinished">没有打出</translation>
    </message>
    <message>
        <source>it reached the scale damaged, nothing was done</source>
        <translation type="unfinished">到达秤时已损坏，未执行</translation>
    </message>
    <message>
        <source>it was cancelled</source>
        <translation type="unfinished">已取消</translation>
    </message>
    <message>
        <source>it was cancelled before printing</source>
        <translation type="unfinished">打印前已取消</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s</source>
        <translation type="unfinished">{seconds} s 后仍未出来</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s ({why})</source>
        <translation type="unfinished">{seconds} s 后仍未出来（{why}）</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">{seconds} s 后还没出来：看看会不会出来</translation>
    </message>
    <message>
        <source>its bag goes out</source>
        <translation type="unfinished">此袋剔出</translation>
    </message>
    <message>
        <source>its marks overlap or leave the line</source>
        <translation type="unfinished">标记重叠或超出该行</translation>
    </message>
    <message>
        <source>its run ended before the printer said that it came out</source>
        <translation type="unfinished">打印机确认出标前生产已结束</translation>
    </message>
    <message>
        <source>its use-by {day} is past: end the run</source>
        <translation type="unfinished">保质期 {day} 已过：结束生产</translation>
    </message>
    <message>
        <source>jammed in the printer</source>
        <translation type="unfinished">卡在打印机里</translation>
    </message>
    <message>
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">保存、恢复或清理记录</translation>
    </message>
    <message>
        <source>kept as {file} and named in station.toml</source>
        <translation type="unfinished">已存为 {file} 并写入 station.toml</translation>
    </message>
    <message>
        <source>knee</source>
        <translation type="unfinished">拐点</translation>
    </message>
    <message>
        <source>label</source>
        <translation type="unfinished">标签</translation>
    </message>
    <message>
        <source>label destroyed</source>
        <translation type="unfinished">标签已销毁</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">标签作废</translation>
    </message>
    <message>
        <source>label never printed</source>
        <translation type="unfinished">标签未打印</translation>
    </message>
    <message>
        <source>label of another run taken out</source>
        <translation type="unfinished">取出了别次生产的标签</translation>
    </message>
    <message>
        <source>label of the roll</source>
        <translation type="unfinished">标签卷的标签</translation>
    </message>
    <message>
        <source>label on bag</source>
        <translation type="unfinished">袋上标签</translation>
    </message>
    <message>
        <source>label roll</source>
        <translation type="unfinished">标签卷</translation>
    </message>
    <message>
        <source>label scan</source>
        <translation type="unfinished">扫描标签</translation>
    </message>
    <message>
        <source>label spoiled</source>
        <translation type="unfinished">标签损坏</translation>
    </message>
    <message>
        <source>label {code}</source>
        <translation type="unfinished">标签{code}</translation>
    </message>
    <message>
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">标签 {serial} 状态不明：{why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">标签 {serial} 还没出来：看打印机</translation>
    </message>
    <message>
        <source>label {serial} is printed again, marked {mark}</source>
        <translation type="unfinished">标签 {serial} 重打，标记 {mark}</translation>
    </message>
    <message>
        <source>label {serial} may still come out: cancel it at the printer, or wait</source>
        <translation type="unfinished">标签 {serial} 可能还会出来：在打印机上取消，或等待</translation>
    </message>
    <message>
        <source>labels are jammed: clear them</source>
        <translation type="unfinished">标签卡住：清除</translation>
    </message>
    <message>
        <source>labels are not taken away: take them away</source>
        <translation type="unfinished">标签没有取走：取走</translation>
    </message>
    <message>
        <source>labels on it {count}</source>
        <translation type="unfinished">标签数 {count}</translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished">末个</translation>
    </message>
    <message>
        <source>last 7 days</source>
        <translation type="unfinished">最近 7 天</translation>
    </message>
    <message>
        <source>last day</source>
        <translation type="unfinished">最后日期</translation>
    </message>
    <message>
        <source>last day {day}</source>
        <translation type="unfinished">最后日期 {day}</translation>
    </message>
    <message>
        <source>last label</source>
        <translation type="unfinished">上一张标签</translation>
    </message>
    <message>
        <source>last of it</source>
        <translation type="unfinished">最后一点</translation>
    </message>
    <message>
        <source>last serial</source>
        <translation type="unfinished">末个编号</translation>
    </message>
    <message>
        <source>last {what}</source>
        <translation type="unfinished">上一袋 {what}</translation>
    </message>
    <message>
        <source>lead</source>
        <translation type="unfinished">班长</translation>
    </message>
    <message>
        <source>lead {code}</source>
        <translation type="unfinished">班长 {code}</translation>
    </message>
    <message>
        <source>lead, on the scale</source>
        <translation type="unfinished">班长，称重员</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">退出全屏</translation>
    </message>
    <message>
        <source>less the stops</source>
        <translation type="unfinished">不计停线</translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished">偏轻</translation>
    </message>
    <message>
        <source>line cleared</source>
        <translation type="unfinished">已清线</translation>
    </message>
    <message>
        <source>line cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">{count} 字节后被下一行截断</translation>
    </message>
    <message>
        <source>line error</source>
        <translation type="unfinished">线路错误</translation>
    </message>
    <message>
        <source>line that does not fit the pattern of its description</source>
        <translation type="unfinished">行不符合描述的模式</translation>
    </message>
    <message>
        <source>line without an end within {count} bytes</source>
        <translation type="unfinished">{count} 字节内行无结尾</translation>
    </message>
    <message>
        <source>line {code}</source>
        <translation type="unfinished">生产线 {code}</translation>
    </message>
    <message>
        <source>line {number}</source>
        <translation type="unfinished">第 {number} 行</translation>
    </message>
    <message>
        <source>lines</source>
        <translation type="unfinished">各行</translation>
    </message>
    <message>
        <source>loaded</source>
        <translation type="unfinished">已装上</translation>
    </message>
    <message>
        <source>look at date and time, then sign</source>
        <translation type="unfinished">核对日期和时间，再签名</translation>
    </message>
    <message>
        <source>look at the bag and its label, then GO ON</source>
        <translation type="unfinished">查看袋子和标签，再按 继续</translation>
    </message>
    <message>
        <source>look at the printer</source>
        <translation type="unfinished">查看打印机</translation>
    </message>
    <message>
        <source>look at the scale's cable and power</source>
        <translation type="unfinished">检查秤的电缆和电源</translation>
    </message>
    <message>
        <source>look whether a label came out</source>
        <translation type="unfinished">看标签是否出来</translation>
    </message>
    <message>
        <source>look whether it comes out</source>
        <translation type="unfinished">看它是否出来</translation>
    </message>
    <message>
        <source>look whether the label is whole</source>
        <translation type="unfinished">看标签是否完整</translation>
    </message>
    <message>
        <source>looked at another clock: right now</source>
        <translation type="unfinished">看过别的钟：现在准</translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished">批次</translation>
    </message>
    <message>
        <source>lot code {code} cannot be printed: allowed are 1 to 20 of the characters A-Z 0-9 . / - (no blanks, no small letters)</source>
        <translation type="unfinished">批号 {code} 无法打印：允许 1 至 20 个字符 A-Z 0-9 . / -（无空格、无小写）</translation>
    </message>
    <message>
        <source>lot {code}</source>
        <translation type="unfinished">批次 {code}</translation>
    </message>
    <message>
        <source>lot {lot} had its last day on {day}: it must not be used</source>
        <translation type="unfinished">批次 {lot} 最后日期是 {day}：不得使用</translation>
    </message>
    <message>
        <source>lot {lot} is already in the record as another delivery ({component} from {supplier}, received {day}): leave the code empty to get a new one</source>
        <translation type="unfinished">批次 {lot} 已记录为另一次到货（{supplier} 的 {component}，{day} 收货）：批号留空即得新号</translation>
    </message>
    <message>
        <source>lot {lot} is held</source>
        <translation type="unfinished">批次 {lot} 已扣留</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">批次 {lot} 已扣留：撤下并换另一批：{where}</translation>
    </message>
    <message>
        <source>lot {lot} is nearly empty</source>
        <translation type="unfinished">批次 {lot} 快用完</translation>
    </message>
    <message>
        <source>lot {lot} is not in the record: receive it before the run</source>
        <translation type="unfinished">批次 {lot} 没有记录：生产前先收货</translation>
    </message>
    <message>
        <source>lot {lot} is not known: check the code</source>
        <translation type="unfinished">批次 {lot} 不明：核对批号</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">不认识批次 {lot}：先收货</translation>
    </message>
    <message>
        <source>lot {lot} is not on the line: on it are {lots}</source>
        <translation type="unfinished">批次 {lot} 不在线上：线上是 {lots}</translation>
    </message>
    <message>
        <source>lot {lot} is on the line and on no label: take it off: {where}</source>
        <translation type="unfinished">批次 {lot} 在线上但不在标签上：撤下：{where}</translation>
    </message>
    <message>
        <source>lot {lot} is {component}, which {product} does not contain: allowed are {allowed}</source>
        <translation type="unfinished">批次 {lot} 是 {component}，{product} 不含它：允许 {allowed}</translation>
    </message>
    <message>
        <source>lot {lot} is {status}: it must not be used, call QA</source>
        <translation type="unfinished">批次 {lot} {status}：不得使用，叫质检</translation>
    </message>
    <message>
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">批次 {lot}：{why}</translation>
    </message>
    <message>
        <source>lot {lot} of {supplier} was received already on {day}: load it, do not receive it again</source>
        <translation type="unfinished">{supplier} 的批次 {lot} 已于 {day} 收货：直接装上，不要再收</translation>
    </message>
    <message>
        <source>lot {lot}: harvested {harvested} after it was received {received}</source>
        <translation type="unfinished">批次 {lot}：收割日 {harvested} 晚于收货日 {received}</translation>
    </message>
    <message>
        <source>lot {lot}: no person holds it; lots.toml says what it is</source>
        <translation type="unfinished">批次 {lot}：没有人扣留；由 lots.toml 规定</translation>
    </message>
    <message>
        <source>lot {lot}: packed {packed} after it was received {received}</source>
        <translation type="unfinished">批次 {lot}：包装日 {packed} 晚于收货日 {received}</translation>
    </message>
    <message>
        <source>lot {lot}: waste needs its mass: weigh it</source>
        <translation type="unfinished">批次 {lot}：报废要有重量：请称重</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} came: give more than nothing, or no mass</source>
        <translation type="unfinished">批次 {lot}：到货 {mass}：给大于零的重量，或不给</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} is below nothing</source>
        <translation type="unfinished">批次 {lot}：{mass} 小于零</translation>
    </message>
    <message>
        <source>lot {lot}: {warmth} °C on arrival: allowed are {least} to {most} °C</source>
        <translation type="unfinished">批次 {lot}：到货 {warmth} °C：允许 {least} 至 {most} °C</translation>
    </message>
    <message>
        <source>lots</source>
        <translation type="unfinished">批次</translation>
    </message>
    <message>
        <source>lots changed while a bag was on the pan: lift it before the next change</source>
        <translation type="unfinished">换批时秤盘上有袋：下次更换前先拿开</translation>
    </message>
    <message>
        <source>lots {lots}</source>
        <translation type="unfinished">批次 {lots}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">机器</translation>
    </message>
    <message>
        <source>made by machine, not reviewed: {said}</source>
        <translation type="unfinished">机器翻译，未审：{said}</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation type="unfinished">维修</translation>
    </message>
    <message>
        <source>make the check</source>
        <translation type="unfinished">做检查</translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished">经理</translation>
    </message>
    <message>
        <source>many frames arrive damaged: check plug and cable, keep it away from motors, and see that no other program reads this port</source>
        <translation type="unfinished">许多帧到达时已损坏：检查插头和电缆，远离电机，并确认没有其他程序读此端口</translation>
    </message>
    <message>
        <source>mark no control characters, and nothing after the end</source>
        <translation type="unfinished">不要标记控制字符和结尾之后</translation>
    </message>
    <message>
        <source>mark the same fields on each line, in the same order</source>
        <translation type="unfinished">每行按同样顺序标记同样的字段</translation>
    </message>
    <message>
        <source>mark the value on each line</source>
        <translation type="unfinished">每行都标记数值</translation>
    </message>
    <message>
        <source>mark two or more, with different weights on the pan</source>
        <translation type="unfinished">标记两行以上，秤盘上重量要不同</translation>
    </message>
    <message>
        <source>may be run</source>
        <translation type="unfinished">可以生产</translation>
    </message>
    <message>
        <source>may not be run</source>
        <translation type="unfinished">不可生产</translation>
    </message>
    <message>
        <source>mean + {factor} s ≥ {nominal}: {holds} so far</source>
        <translation type="unfinished">均值 + {factor} s ≥ {nominal}：目前{holds}</translation>
    </message>
    <message>
        <source>mean in the official sample</source>
        <translation type="unfinished">官方样本均值</translation>
    </message>
    <message>
        <source>mean net</source>
        <translation type="unfinished">平均净重</translation>
    </message>
    <message>
        <source>mean of the whole batch</source>
        <translation type="unfinished">整批均值</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}</source>
        <translation type="unfinished">均值 {mean}，s {spread}</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">均值 {mean}，s {spread}，{count} 袋</translation>
    </message>
    <message>
        <source>mean {number}</source>
        <translation type="unfinished">均值 {number}</translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished">满足</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">金属探测器</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished">分钟</translation>
    </message>
    <message>
        <source>missed {pieces}</source>
        <translation type="unfinished">漏检 {pieces}</translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished">多</translation>
    </message>
    <message>
        <source>more bytes arrive than a scale sends: is this the scale's line?</source>
        <translation type="unfinished">字节多于秤所发：这是秤的线路吗？</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">在线上移动批次</translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished">名称</translation>
    </message>
    <message>
        <source>name of the format</source>
        <translation type="unfinished">格式名称</translation>
    </message>
    <message>
        <source>name of the inspector</source>
        <translation type="unfinished">检查员姓名</translation>
    </message>
    <message>
        <source>name the inspector: scan or type who tests</source>
        <translation type="unfinished">写明检查员：扫或输入</translation>
    </message>
    <message>
        <source>name the wash record: tank and number, as the wash step names it</source>
        <translation type="unfinished">写明清洗记录：槽和编号，与清洗工序一致</translation>
    </message>
    <message>
        <source>near Max</source>
        <translation type="unfinished">接近最大</translation>
    </message>
    <message>
        <source>near the tare</source>
        <translation type="unfinished">接近皮重</translation>
    </message>
    <message>
        <source>net</source>
        <translation type="unfinished">净重</translation>
    </message>
    <message>
        <source>net below {mass}</source>
        <translation type="unfinished">净重低于 {mass}</translation>
    </message>
    <message>
        <source>net below {mass}; {count} below T2</source>
        <translation type="unfinished">净重低于 {mass}；{count} 袋低于 T2</translation>
    </message>
    <message>
        <source>net fill</source>
        <translation type="unfinished">净装量</translation>
    </message>
    <message>
        <source>net {mass}: {verdict}</source>
        <translation type="unfinished">净重 {mass}：{verdict}</translation>
    </message>
    <message>
        <source>never came out</source>
        <translation type="unfinished">没有打出</translation>
    </message>
    <message>
        <source>never printed</source>
        <translation type="unfinished">从未打印</translation>
    </message>
    <message>
        <source>new bag {serial}</source>
        <translation type="unfinished">新袋 {serial}</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">还没有 PIN 或工牌</translation>
    </message>
    <message>
        <source>no USB device</source>
        <translation type="unfinished">没有 USB 设备</translation>
    </message>
    <message>
        <source>no bag</source>
        <translation type="unfinished">没有袋</translation>
    </message>
    <message>
        <source>no bag is expected any more</source>
        <translation type="unfinished">不再有袋</translation>
    </message>
    <message>
        <source>no bag is on record yet</source>
        <translation type="unfinished">尚无袋子记录</translation>
    </message>
    <message>
        <source>no bag is taken: {why}</source>
        <translation type="unfinished">不接收袋子：{why}</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">这些袋子不是产品</translation>
    </message>
    <message>
        <source>no bag of this run is labelled yet: pack one, then scan its label</source>
        <translation type="unfinished">本次生产还没有贴标的袋：先包一袋，再扫标签</translation>
    </message>
    <message>
        <source>no bag of {scope} {name} is in the record: nothing is held</source>
        <translation type="unfinished">记录中没有{scope} {name} 的袋：没有扣留</translation>
    </message>
    <message>
        <source>no checksum known here agrees on all lines: mark another field, or none</source>
        <translation type="unfinished">没有已知校验适合所有行：标记别的字段，或不标</translation>
    </message>
    <message>
        <source>no copy</source>
        <translation type="unfinished">没有副本</translation>
    </message>
    <message>
        <source>no day given</source>
        <translation type="unfinished">未给日期</translation>
    </message>
    <message>
        <source>no error at any load</source>
        <translation type="unfinished">各载荷都无误差</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">无数字</translation>
    </message>
    <message>
        <source>no good bag yet</source>
        <translation type="unfinished">还没有合格袋</translation>
    </message>
    <message>
        <source>no good check of {what} after the last bag</source>
        <translation type="unfinished">最后一袋之后没有合格的{what}检查</translation>
    </message>
    <message>
        <source>no good check of {what} in the run</source>
        <translation type="unfinished">本次生产没有合格的{what}检查</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">没有标签卷：在 {where} 扫入</translation>
    </message>
    <message>
        <source>no labelled bag of the last run is loose</source>
        <translation type="unfinished">上次生产没有散的贴标袋</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">没有标签了：装一卷</translation>
    </message>
    <message>
        <source>no lot of {component} may be used on {day}</source>
        <translation type="unfinished">{day} 没有可用的 {component} 批次</translation>
    </message>
    <message>
        <source>no old product on line, pan or floor</source>
        <translation type="unfinished">线、秤盘、地面无旧产品</translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished">没有价格</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">缺料</translation>
    </message>
    <message>
        <source>no product has it</source>
        <translation type="unfinished">没有产品使用</translation>
    </message>
    <message>
        <source>no proposal worked out yet</source>
        <translation type="unfinished">还没有计算提议</translation>
    </message>
    <message>
        <source>no rate yet</source>
        <translation type="unfinished">还没有速度</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished">无读数</translation>
    </message>
    <message>
        <source>no reading with a bag on the pan</source>
        <translation type="unfinished">秤盘上有袋但无读数</translation>
    </message>
    <message>
        <source>no roll is in</source>
        <translation type="unfinished">没有装标签卷</translation>
    </message>
    <message>
        <source>no run is open</source>
        <translation type="unfinished">没有进行中的生产</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">没有进行中的生产：由班长开始</translation>
    </message>
    <message>
        <source>no run yet</source>
        <translation type="unfinished">还没有生产</translation>
    </message>
    <message>
        <source>no scale yet</source>
        <translation type="unfinished">还没有秤</translation>
    </message>
    <message>
        <source>no scan differed: there is nothing to clear</source>
        <translation type="unfinished">没有扫码不符：无需处理</translation>
    </message>
    <message>
        <source>no single test weight of {mass}: use 1, 2 or 5 times a power of ten from 1 g to 20 kg</source>
        <translation type="unfinished">没有 {mass} 的单个标准砝码：用 1 g 至 20 kg 的 1、2、5 乘十的幂</translation>
    </message>
    <message>
        <source>no target meets every clause: the fills scatter too much</source>
        <translation type="unfinished">没有目标能满足全部条款：装袋差异太大</translation>
    </message>
    <message>
        <source>no time service has kept the clock right for {time}</source>
        <translation type="unfinished">已有 {time} 没有时间服务校准时钟</translation>
    </message>
    <message>
        <source>no weight</source>
        <translation type="unfinished">无重量</translation>
    </message>
    <message>
        <source>nobody may ship them</source>
        <translation type="unfinished">不得发货</translation>
    </message>
    <message>
        <source>nobody signed</source>
        <translation type="unfinished">没有人签名</translation>
    </message>
    <message>
        <source>nobody who may sign has a PIN or badge: station people pin</source>
        <translation type="unfinished">可签名的人都没有 PIN 或工牌：station people pin</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation type="unfinished">标称</translation>
    </message>
    <message>
        <source>nominal {mass}</source>
        <translation type="unfinished">标称 {mass}</translation>
    </message>
    <message>
        <source>nominal {mass} against Min {least}</source>
        <translation type="unfinished">标称 {mass}，Min {least}</translation>
    </message>
    <message>
        <source>nominal {mass} against {count} intervals of {interval}</source>
        <translation type="unfinished">标称 {mass}，{count} 个 {interval} 分度</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">无</translation>
    </message>
    <message>
        <source>none left on line</source>
        <translation type="unfinished">线上没有了</translation>
    </message>
    <message>
        <source>none of what was heard is a weight by this description</source>
        <translation type="unfinished">按此描述，收到的都不是重量</translation>
    </message>
    <message>
        <source>none was taken into use on record yet</source>
        <translation type="unfinished">尚无启用记录</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">还没有</translation>
    </message>
    <message>
        <source>not a multiple of {number}</source>
        <translation type="unfinished">不是 {number} 的倍数</translation>
    </message>
    <message>
        <source>not clear yet: {point}</source>
        <translation type="unfinished">还没清好：{point}</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation type="unfinished">还没清点</translation>
    </message>
    <message>
        <source>not due</source>
        <translation type="unfinished">未到期</translation>
    </message>
    <message>
        <source>not fit to sell</source>
        <translation type="unfinished">不可出售</translation>
    </message>
    <message>
        <source>not found: QA decides</source>
        <translation type="unfinished">没找到：质检决定</translation>
    </message>
    <message>
        <source>not judged: {why}</source>
        <translation type="unfinished">未评定：{why}</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">不贴标签：{reason}</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">现在不行</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">未打印</translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished">未说明</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation type="unfinished">未称重</translation>
    </message>
    <message>
        <source>not weighed in</source>
        <translation type="unfinished">进货未称重</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">尚未审校</translation>
    </message>
    <message>
        <source>not yet: {what}</source>
        <translation type="unfinished">还没有：{what}</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">备注</translation>
    </message>
    <message>
        <source>nothing about the clock is open</source>
        <translation type="unfinished">时钟没有待办</translation>
    </message>
    <message>
        <source>nothing on the pan</source>
        <translation type="unfinished">秤盘上无物</translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished">现状</translation>
    </message>
    <message>
        <source>now {number}</source>
        <translation type="unfinished">现在 {number}</translation>
    </message>
    <message>
        <source>odd parity</source>
        <translation type="unfinished">奇校验</translation>
    </message>
    <message>
        <source>of everything the version says</source>
        <translation type="unfinished">此版本全部内容的</translation>
    </message>
    <message>
        <source>of the last bag</source>
        <translation type="unfinished">最后一袋的</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">共 {count} 袋</translation>
    </message>
    <message>
        <source>old labels and film are off the line</source>
        <translation type="unfinished">旧标签和膜已撤下</translation>
    </message>
    <message>
        <source>old lots are closed or returned</source>
        <translation type="unfinished">旧批次已封或退回</translation>
    </message>
    <message>
        <source>on another pallet</source>
        <translation type="unfinished">在别的托盘上</translation>
    </message>
    <message>
        <source>on no label</source>
        <translation type="unfinished">不在标签上</translation>
    </message>
    <message>
        <source>on the line</source>
        <translation type="unfinished">在线上</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">称重员：{who}</translation>
    </message>
    <message>
        <source>on the {count} bags to come</source>
        <translation type="unfinished">余下 {count} 袋</translation>
    </message>
    <message>
        <source>on the {count} bags to come, any above the floor will do</source>
        <translation type="unfinished">余下 {count} 袋，高于下限即可</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">{code} 上只收到工作站自己发出的内容：检查秤是否开机、电缆和通信设置</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">{code} 上只收到工作站自己发出的内容：检查秤是否开机、电缆和通信设置（{here}）</translation>
    </message>
    <message>
        <source>one line comes again and again and is no weight ({why}): see what the scale shows, such as an error, another unit or another mode, and set it back</source>
        <translation type="unfinished">同一行反复出现且不是重量（{why}）：看看秤显示什么，例如错误、其他单位或其他模式，并改回来</translation>
    </message>
    <message>
        <source>one new bag stands for one reject: touch one alone</source>
        <translation type="unfinished">一个新袋对应一个剔出袋：只点一个</translation>
    </message>
    <message>
        <source>one of {count} bags</source>
        <translation type="unfinished">{count} 袋之一</translation>
    </message>
    <message>
        <source>only a lead goes on after a mismatch</source>
        <translation type="unfinished">扫码不符后只有班长可继续</translation>
    </message>
    <message>
        <source>only just suits</source>
        <translation type="unfinished">勉强适用</translation>
    </message>
    <message>
        <source>only where in doubt</source>
        <translation type="unfinished">仅限存疑的</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">未结</translation>
    </message>
    <message>
        <source>open order</source>
        <translation type="unfinished">订单不限</translation>
    </message>
    <message>
        <source>or scan a badge</source>
        <translation type="unfinished">或扫工牌</translation>
    </message>
    <message>
        <source>or the day</source>
        <translation type="unfinished">或日期</translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished">其他</translation>
    </message>
    <message>
        <source>other unit {found}, the line runs in {unit}: set the scale back</source>
        <translation type="unfinished">单位是 {found}，生产线用 {unit}：把秤调回来</translation>
    </message>
    <message>
        <source>out of bags</source>
        <translation type="unfinished">取自袋中</translation>
    </message>
    <message>
        <source>over capacity</source>
        <translation type="unfinished">超载</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">超载：拿下货物</translation>
    </message>
    <message>
        <source>over capacity: take the load off the pan</source>
        <translation type="unfinished">超载：拿下秤盘上的货物</translation>
    </message>
    <message>
        <source>packed</source>
        <translation type="unfinished">包装日</translation>
    </message>
    <message>
        <source>packed {day}</source>
        <translation type="unfinished">包装 {day}</translation>
    </message>
    <message>
        <source>packed {time} by {who}, production day {day}</source>
        <translation type="unfinished">{who} 于 {time} 包装，生产日 {day}</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">包装员</translation>
    </message>
    <message>
        <source>pallet</source>
        <translation type="unfinished">托盘</translation>
    </message>
    <message>
        <source>pallet broken up</source>
        <translation type="unfinished">托盘已拆</translation>
    </message>
    <message>
        <source>pallet {code}</source>
        <translation type="unfinished">托盘 {code}</translation>
    </message>
    <message>
        <source>pan, chute and tools are clean and dry</source>
        <translation type="unfinished">秤盘、料斗、工具干净且干</translation>
    </message>
    <message>
        <source>paper: delivery note 12</source>
        <translation type="unfinished">单据：送货单 12</translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished">合格</translation>
    </message>
    <message>
        <source>pause</source>
        <translation type="unfinished">暂停</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">安排检查</translation>
    </message>
    <message>
        <source>plate {code}</source>
        <translation type="unfinished">铭牌 {code}</translation>
    </message>
    <message>
        <source>plus or minus</source>
        <translation type="unfinished">正负号</translation>
    </message>
    <message>
        <source>poor print</source>
        <translation type="unfinished">打印差</translation>
    </message>
    <message>
        <source>port {code}</source>
        <translation type="unfinished">端口 {code}</translation>
    </message>
    <message>
        <source>position</source>
        <translation type="unfinished">岗位</translation>
    </message>
    <message>
        <source>present are</source>
        <translation type="unfinished">现有</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">重印标签</translation>
    </message>
    <message>
        <source>print unreadable</source>
        <translation type="unfinished">打印看不清</translation>
    </message>
    <message>
        <source>product</source>
        <translation type="unfinished">产品</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">产品温度</translation>
    </message>
    <message>
        <source>product {product} cannot run on this scale: {why}</source>
        <translation type="unfinished">产品 {product} 不能用这台秤：{why}</translation>
    </message>
    <message>
        <source>product {product} is at version {version} now, not {other}: choose it again</source>
        <translation type="unfinished">产品 {product} 现为版本 {version}，不是 {other}：请重选</translation>
    </message>
    <message>
        <source>product {product} is not known: choose one of {allowed}</source>
        <translation type="unfinished">产品 {product} 不明：从 {allowed} 中选</translation>
    </message>
    <message>
        <source>product {product} version {version}, as it is set</source>
        <translation type="unfinished">产品 {product} 版本 {version}，按现设置</translation>
    </message>
    <message>
        <source>production day</source>
        <translation type="unfinished">生产日</translation>
    </message>
    <message>
        <source>propose a target</source>
        <translation type="unfinished">提出目标值</translation>
    </message>
    <message>
        <source>proposed</source>
        <translation type="unfinished">建议</translation>
    </message>
    <message>
        <source>purge old runs</source>
        <translation type="unfinished">清除旧生产记录</translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished">已装</translation>
    </message>
    <message>
        <source>put it right, then check again</source>
        <translation type="unfinished">改正后再检查</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">质检</translation>
    </message>
    <message>
        <source>qa check</source>
        <translation type="unfinished">质检检查</translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished">速度</translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished">读到</translation>
    </message>
    <message>
        <source>reason</source>
        <translation type="unfinished">原因</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">收货</translation>
    </message>
    <message>
        <source>received {day}</source>
        <translation type="unfinished">收货 {day}</translation>
    </message>
    <message>
        <source>record a check of quality</source>
        <translation type="unfinished">记录质量检查</translation>
    </message>
    <message>
        <source>record a good check of the scale</source>
        <translation type="unfinished">记录秤检查合格</translation>
    </message>
    <message>
        <source>record a study of empty bags</source>
        <translation type="unfinished">记录空袋测定</translation>
    </message>
    <message>
        <source>record an empty bag that fits</source>
        <translation type="unfinished">记录相符的空袋</translation>
    </message>
    <message>
        <source>record that a check failed</source>
        <translation type="unfinished">记录检查不合格</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation type="unfinished">已记录</translation>
    </message>
    <message>
        <source>recounted, stays open</source>
        <translation type="unfinished">已重点，仍未结</translation>
    </message>
    <message>
        <source>reference</source>
        <translation type="unfinished">单号</translation>
    </message>
    <message>
        <source>refuse a label</source>
        <translation type="unfinished">拒绝标签</translation>
    </message>
    <message>
        <source>refused</source>
        <translation type="unfinished">已拒绝</translation>
    </message>
    <message>
        <source>refused: {why}</source>
        <translation type="unfinished">被拒绝：{why}</translation>
    </message>
    <message>
        <source>reject</source>
        <translation type="unfinished">剔出</translation>
    </message>
    <message>
        <source>reject ticket</source>
        <translation type="unfinished">剔出票</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">放行扣留品</translation>
    </message>
    <message>
        <source>released</source>
        <translation type="unfinished">已放行</translation>
    </message>
    <message>
        <source>released at the line by QA</source>
        <translation type="unfinished">质检在线放行</translation>
    </message>
    <message>
        <source>released before the step</source>
        <translation type="unfinished">放行跳变之前的</translation>
    </message>
    <message>
        <source>remark on what is open</source>
        <translation type="unfinished">对未结事项的说明</translation>
    </message>
    <message>
        <source>repacked</source>
        <translation type="unfinished">重新包装</translation>
    </message>
    <message>
        <source>rest N2</source>
        <translation type="unfinished">其余 N2</translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished">结论</translation>
    </message>
    <message>
        <source>returned</source>
        <translation type="unfinished">已退回</translation>
    </message>
    <message>
        <source>returned {count}</source>
        <translation type="unfinished">退回 {count}</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">审阅并签署一天</translation>
    </message>
    <message>
        <source>reviewed</source>
        <translation type="unfinished">已审</translation>
    </message>
    <message>
        <source>reviewed with exceptions</source>
        <translation type="unfinished">已审，有例外</translation>
    </message>
    <message>
        <source>rework</source>
        <translation type="unfinished">返工</translation>
    </message>
    <message>
        <source>rework of {lot} was packed {time} ago: it may go back on the line for {most}</source>
        <translation type="unfinished">{lot} 的返工在 {time} 前包装：{most} 内可回线</translation>
    </message>
    <message>
        <source>reworked</source>
        <translation type="unfinished">返工</translation>
    </message>
    <message>
        <source>ribbon or ink is missing: put it in</source>
        <translation type="unfinished">缺少色带或墨：装上</translation>
    </message>
    <message>
        <source>ribbon or ink is used up: change it</source>
        <translation type="unfinished">色带或墨用完：更换</translation>
    </message>
    <message>
        <source>roll {code}</source>
        <translation type="unfinished">卷 {code}</translation>
    </message>
    <message>
        <source>roll {roll} is in: take it out first</source>
        <translation type="unfinished">卷 {roll} 在机上：先卸下</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation type="unfinished">车间温度</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">规则</translation>
    </message>
    <message>
        <source>run</source>
        <translation type="unfinished">生产</translation>
    </message>
    <message>
        <source>run of {product} ended</source>
        <translation type="unfinished">{product} 生产已结束</translation>
    </message>
    <message>
        <source>run of {product} open, blend lot {lot}</source>
        <translation type="unfinished">{product} 生产已开始，混合批号 {lot}</translation>
    </message>
    <message>
        <source>run reconciled</source>
        <translation type="unfinished">生产已核对</translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished">抽样</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation type="unfinished">取样</translation>
    </message>
    <message>
        <source>samples {count}</source>
        <translation type="unfinished">样品 {count}</translation>
    </message>
    <message>
        <source>say that an alarm is seen</source>
        <translation type="unfinished">确认已看到警报</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">说明标签去向</translation>
    </message>
    <message>
        <source>say which lot is empty</source>
        <translation type="unfinished">说明哪个批次已空</translation>
    </message>
    <message>
        <source>say which lot is on the line</source>
        <translation type="unfinished">说明线上是哪一批</translation>
    </message>
    <message>
        <source>say who is on the scale</source>
        <translation type="unfinished">选择称重员</translation>
    </message>
    <message>
        <source>say who leads</source>
        <translation type="unfinished">选择班长</translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished">秤</translation>
    </message>
    <message>
        <source>scale check</source>
        <translation type="unfinished">秤检查</translation>
    </message>
    <message>
        <source>scale check at the end of the run</source>
        <translation type="unfinished">生产结束时检查秤</translation>
    </message>
    <message>
        <source>scale interval {mass} against at most {most} for {nominal}</source>
        <translation type="unfinished">分度 {mass}，{nominal} 最多 {most}</translation>
    </message>
    <message>
        <source>scale interval {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">分度 {mass}，{limit} 的 {share} = {most}</translation>
    </message>
    <message>
        <source>scale line</source>
        <translation type="unfinished">秤连接</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">秤显示 {mass}，以秤的示值为准</translation>
    </message>
    <message>
        <source>scale's port {code} cannot be opened</source>
        <translation type="unfinished">秤的端口 {code} 打不开</translation>
    </message>
    <message>
        <source>scan a case or pallet</source>
        <translation type="unfinished">扫箱或托盘</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">扫标签</translation>
    </message>
    <message>
        <source>scan a label or lot</source>
        <translation type="unfinished">扫标签或批次</translation>
    </message>
    <message>
        <source>scan a lot</source>
        <translation type="unfinished">扫批次</translation>
    </message>
    <message>
        <source>scan a lot, or touch one</source>
        <translation type="unfinished">扫批次，或点一个</translation>
    </message>
    <message>
        <source>scan a picked bag</source>
        <translation type="unfinished">扫选中的袋</translation>
    </message>
    <message>
        <source>scan a ticket or label</source>
        <translation type="unfinished">扫票或标签</translation>
    </message>
    <message>
        <source>scan back</source>
        <translation type="unfinished">标签扫码</translation>
    </message>
    <message>
        <source>scan of a label</source>
        <translation type="unfinished">扫标签</translation>
    </message>
    <message>
        <source>scan or type a lot code, then Enter</source>
        <translation type="unfinished">扫描或输入批号，然后按回车</translation>
    </message>
    <message>
        <source>scan or type the film lot</source>
        <translation type="unfinished">扫或输入膜批号</translation>
    </message>
    <message>
        <source>scan pallets and cases</source>
        <translation type="unfinished">扫托盘和箱</translation>
    </message>
    <message>
        <source>scan the bags</source>
        <translation type="unfinished">扫袋</translation>
    </message>
    <message>
        <source>scan the bags of the case first</source>
        <translation type="unfinished">先扫箱里的袋</translation>
    </message>
    <message>
        <source>scan the case label</source>
        <translation type="unfinished">扫箱标签</translation>
    </message>
    <message>
        <source>scan the cases</source>
        <translation type="unfinished">扫箱</translation>
    </message>
    <message>
        <source>scan the cases of the pallet first</source>
        <translation type="unfinished">先扫托盘的箱</translation>
    </message>
    <message>
        <source>scan the label</source>
        <translation type="unfinished">扫标签</translation>
    </message>
    <message>
        <source>scan the label of the new bag</source>
        <translation type="unfinished">扫新袋的标签</translation>
    </message>
    <message>
        <source>scan the label, or type its serial</source>
        <translation type="unfinished">扫标签，或输入编号</translation>
    </message>
    <message>
        <source>scan the last label</source>
        <translation type="unfinished">扫最后一张标签</translation>
    </message>
    <message>
        <source>scan the pallets and cases that leave</source>
        <translation type="unfinished">扫要发出的托盘和箱</translation>
    </message>
    <message>
        <source>scan the roll, then Enter</source>
        <translation type="unfinished">扫卷，然后回车</translation>
    </message>
    <message>
        <source>scan the {what}: {where}</source>
        <translation type="unfinished">扫{what}：{where}</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">封口</translation>
    </message>
    <message>
        <source>seal in doubt</source>
        <translation type="unfinished">封口存疑</translation>
    </message>
    <message>
        <source>seal open</source>
        <translation type="unfinished">封口未封</translation>
    </message>
    <message>
        <source>seen on its bag</source>
        <translation type="unfinished">看到在袋上</translation>
    </message>
    <message>
        <source>sent to the laboratory</source>
        <translation type="unfinished">送实验室</translation>
    </message>
    <message>
        <source>sent to the scale</source>
        <translation type="unfinished">已发给秤</translation>
    </message>
    <message>
        <source>serial</source>
        <translation type="unfinished">编号</translation>
    </message>
    <message>
        <source>serial number on its plate</source>
        <translation type="unfinished">铭牌上的序列号</translation>
    </message>
    <message>
        <source>serial number {shown}: give the 1 to 40 characters of the plate</source>
        <translation type="unfinished">编号 {shown}：填铭牌上的 1 至 40 个字符</translation>
    </message>
    <message>
        <source>serial {code}</source>
        <translation type="unfinished">编号 {code}</translation>
    </message>
    <message>
        <source>serials</source>
        <translation type="unfinished">编号</translation>
    </message>
    <message>
        <source>service</source>
        <translation type="unfinished">维护</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">已另放</translation>
    </message>
    <message>
        <source>set aside: {reason}</source>
        <translation type="unfinished">已另放：{reason}</translation>
    </message>
    <message>
        <source>set on purpose</source>
        <translation type="unfinished">有意调整</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">设置人员、PIN 和工牌</translation>
    </message>
    <message>
        <source>set to {mass} in the settings</source>
        <translation type="unfinished">设置中为 {mass}</translation>
    </message>
    <message>
        <source>set unit, interval and capacity under [scale] of station.toml first</source>
        <translation type="unfinished">先在 station.toml 的 [scale] 设单位、分度和量程</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">正在另放：{reason}</translation>
    </message>
    <message>
        <source>setting bag {serial} aside needs a reason: choose one</source>
        <translation type="unfinished">另放袋 {serial} 需要原因：请选</translation>
    </message>
    <message>
        <source>shelve an alarm</source>
        <translation type="unfinished">搁置警报</translation>
    </message>
    <message>
        <source>shelved until {time}</source>
        <translation type="unfinished">搁置到 {time}</translation>
    </message>
    <message>
        <source>shift</source>
        <translation type="unfinished">班次</translation>
    </message>
    <message>
        <source>shift {shift}</source>
        <translation type="unfinished">班次 {shift}</translation>
    </message>
    <message>
        <source>ship</source>
        <translation type="unfinished">发货</translation>
    </message>
    <message>
        <source>shipment</source>
        <translation type="unfinished">发货</translation>
    </message>
    <message>
        <source>shipment came back</source>
        <translation type="unfinished">发货已退回</translation>
    </message>
    <message>
        <source>shipment withdrawn</source>
        <translation type="unfinished">发货已撤回</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">签署生产更换</translation>
    </message>
    <message>
        <source>signed with a difference</source>
        <translation type="unfinished">带差异签名</translation>
    </message>
    <message>
        <source>since</source>
        <translation type="unfinished">自</translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation type="unfinished">自 {time}</translation>
    </message>
    <message>
        <source>since {time}, seen by {who}</source>
        <translation type="unfinished">自 {time}，{who} 已看到</translation>
    </message>
    <message>
        <source>software</source>
        <translation type="unfinished">软件</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing</source>
        <translation type="unfinished">实线：从第一袋起 {error}，虚线：渐增</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing, step: as dated</source>
        <translation type="unfinished">实线：从第一袋起 {error}，虚线：渐增，跳变：有时刻</translation>
    </message>
    <message>
        <source>spoiled ones not counted</source>
        <translation type="unfinished">损坏的没有计</translation>
    </message>
    <message>
        <source>spoiled {count}</source>
        <translation type="unfinished">损坏 {count}</translation>
    </message>
    <message>
        <source>spooled</source>
        <translation type="unfinished">已排队</translation>
    </message>
    <message>
        <source>spread of the fills</source>
        <translation type="unfinished">装袋离散</translation>
    </message>
    <message>
        <source>spread {spread}: a mean of {mean} or more, by the {what} rule</source>
        <translation type="unfinished">离散 {spread}：均值 {mean} 或以上，依规则 {what}</translation>
    </message>
    <message>
        <source>start a run</source>
        <translation type="unfinished">开始生产</translation>
    </message>
    <message>
        <source>state</source>
        <translation type="unfinished">状态</translation>
    </message>
    <message>
        <source>status {code} with the weight {shown}, it needs ten dashes</source>
        <translation type="unfinished">状态 {code} 的重量为 {shown}，应为十个横线</translation>
    </message>
    <message>
        <source>stood</source>
        <translation type="unfinished">停了</translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished">停</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">停线</translation>
    </message>
    <message>
        <source>stops</source>
        <translation type="unfinished">停线</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">库存袋</translation>
    </message>
    <message>
        <source>stuck on askew</source>
        <translation type="unfinished">贴歪了</translation>
    </message>
    <message>
        <source>study of its film lot: {study}</source>
        <translation type="unfinished">其膜批号的测定：{study}</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation type="unfinished">已提交</translation>
    </message>
    <message>
        <source>suits</source>
        <translation type="unfinished">适用</translation>
    </message>
    <message>
        <source>suspect</source>
        <translation type="unfinished">可疑</translation>
    </message>
    <message>
        <source>suspect window</source>
        <translation type="unfinished">可疑时段</translation>
    </message>
    <message>
        <source>suspect window of {what}</source>
        <translation type="unfinished">{what}的可疑时段</translation>
    </message>
    <message>
        <source>take it off the line</source>
        <translation type="unfinished">撤下生产线</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">撤下：{where}</translation>
    </message>
    <message>
        <source>take old files off the disk</source>
        <translation type="unfinished">把旧文件移出磁盘</translation>
    </message>
    <message>
        <source>take over changed settings</source>
        <translation type="unfinished">接受更改的设置</translation>
    </message>
    <message>
        <source>take the lot off and load another</source>
        <translation type="unfinished">撤下批次并换一批</translation>
    </message>
    <message>
        <source>take the old lot off and load the next in one step, or end the run</source>
        <translation type="unfinished">旧批撤下和新批装上要一步完成，或结束生产</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation type="unfinished">已拆开</translation>
    </message>
    <message>
        <source>taken by QA</source>
        <translation type="unfinished">质检取走</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation type="unfinished">已卸</translation>
    </message>
    <message>
        <source>tare</source>
        <translation type="unfinished">皮重</translation>
    </message>
    <message>
        <source>tare error</source>
        <translation type="unfinished">皮重错误</translation>
    </message>
    <message>
        <source>tare {mass}</source>
        <translation type="unfinished">皮重 {mass}</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">目标</translation>
    </message>
    <message>
        <source>target of {product}</source>
        <translation type="unfinished">{product} 的目标</translation>
    </message>
    <message>
        <source>target {mass} now</source>
        <translation type="unfinished">目标 {mass} 现在</translation>
    </message>
    <message>
        <source>target {mass} proposed</source>
        <translation type="unfinished">目标 {mass} 提议</translation>
    </message>
    <message>
        <source>teach a scale of your own</source>
        <translation type="unfinished">请教自己的秤</translation>
    </message>
    <message>
        <source>tell maintenance</source>
        <translation type="unfinished">通知维修</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation type="unfinished">十分位</translation>
    </message>
    <message>
        <source>test weights of class {code} for {mass} may be wrong by {own}, more than a third of the {allowed} the scale may be: use a finer class</source>
        <translation type="unfinished">{code} 级标准砝码在 {mass} 可差 {own}，超过秤允许的 {allowed} 的三分之一：用更高等级</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity ({here})</source>
        <translation type="unfinished">有文字但不是此协议的重量：此端口接了别的设备，还是秤设了别的输出格式？否则检查波特率和校验（{here}）</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity of the converter</source>
        <translation type="unfinished">有文字但不是此协议的重量：此端口接了别的设备，还是秤设了别的输出格式？否则检查转换器的波特率和校验</translation>
    </message>
    <message>
        <source>the bag on the pan may hold lot {lot}, which is held: set it aside and lift it, then change the lot</source>
        <translation type="unfinished">秤盘上的袋可能含已扣留的批次 {lot}：另放并拿开，再换批</translation>
    </message>
    <message>
        <source>the bags scatter too much for a mean tare ({study}): use other bags</source>
        <translation type="unfinished">袋重差异太大，不能取平均皮重（{study}）：换别的袋</translation>
    </message>
    <message>
        <source>the centre is not reached</source>
        <translation type="unfinished">连不上中心</translation>
    </message>
    <message>
        <source>the centre stops {what} {code} ({reason}): {end}</source>
        <translation type="unfinished">中心停用 {what} {code}（{reason}）：{end}</translation>
    </message>
    <message>
        <source>the check of the scale is overdue: {where}</source>
        <translation type="unfinished">秤的检查已逾期：{where}</translation>
    </message>
    <message>
        <source>the check of {what} is overdue: {where}</source>
        <translation type="unfinished">{what}的检查已逾期：{where}</translation>
    </message>
    <message>
        <source>the clock is {time} behind the newest entry of the record</source>
        <translation type="unfinished">时钟比最新记录慢 {time}</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}</source>
        <translation type="unfinished">时钟{way}跳了 {time}</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}, to another day</source>
        <translation type="unfinished">时钟{way}跳了 {time}，到了另一天</translation>
    </message>
    <message>
        <source>the clock was set between the checks: the bags have no sure order in time</source>
        <translation type="unfinished">两次检查之间调过时钟：袋的先后不确定</translation>
    </message>
    <message>
        <source>the code holds a character that no code of ours has</source>
        <translation type="unfinished">码里有我们的码没有的字符</translation>
    </message>
    <message>
        <source>the code presses keys that are no text</source>
        <translation type="unfinished">这个码按了非文字键</translation>
    </message>
    <message>
        <source>the computer slept or was held up: what the scale sent is too old</source>
        <translation type="unfinished">计算机休眠过或被耽搁：秤发来的已经太旧</translation>
    </message>
    <message>
        <source>the demo's settings stay as they are</source>
        <translation type="unfinished">演示的设置保持不变</translation>
    </message>
    <message>
        <source>the device is gone, or another program reads the same port</source>
        <translation type="unfinished">设备不在，或有其他程序读同一端口</translation>
    </message>
    <message>
        <source>the disk cannot be asked: {why}</source>
        <translation type="unfinished">无法查询磁盘：{why}</translation>
    </message>
    <message>
        <source>the disk fills up</source>
        <translation type="unfinished">磁盘快满</translation>
    </message>
    <message>
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">磁盘已满：腾出空间后再打印</translation>
    </message>
    <message>
        <source>the disk is nearly full: free {more} on it, then packing goes on by itself</source>
        <translation type="unfinished">磁盘快满：再腾出 {more}，包装会自动继续</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: take old files off it, or call maintenance</source>
        <translation type="unfinished">磁盘已用 {percent} %，剩 {free}：移走旧文件，或叫维修</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: {why}</source>
        <translation type="unfinished">磁盘已用 {percent} %，剩 {free}：{why}</translation>
    </message>
    <message>
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">空袋 {mass} 与{what}不符：另称一个：{where}</translation>
    </message>
    <message>
        <source>the empty pan does not show zero</source>
        <translation type="unfinished">空秤盘不显示零</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">空秤盘显示 {mass}：擦干净，然后置零</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation type="unfinished">下限</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">标签文件夹不见了：重新建立 {folder}</translation>
    </message>
    <message>
        <source>the known fault of older versions is mended in this one</source>
        <translation type="unfinished">旧版本的已知缺陷在此版本已修复</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}, so it was printed: destroy it first</source>
        <translation type="unfinished">袋 {serial} 的标签{state}，说明已打印：先销毁</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: nothing to answer</source>
        <translation type="unfinished">袋 {serial} 的标签{state}：无需回答</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: only one that is {states} is printed again</source>
        <translation type="unfinished">袋 {serial} 的标签{state}：只有{states}的才重打</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: {fate}</source>
        <translation type="unfinished">袋 {serial} 的标签{state}：{fate}</translation>
    </message>
    <message>
        <source>the label roll ends soon</source>
        <translation type="unfinished">标签卷快用完</translation>
    </message>
    <message>
        <source>the label was refused ({why}): end the run, or approve it at {where}</source>
        <translation type="unfinished">标签被拒（{why}）：结束生产，或在 {where} 批准</translation>
    </message>
    <message>
        <source>the line does not stand</source>
        <translation type="unfinished">生产线没有停</translation>
    </message>
    <message>
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">生产线停着，{reason}：按 生产，再按 更换 (F8) 继续</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">生产线停了</translation>
    </message>
    <message>
        <source>the machine slept for {time}</source>
        <translation type="unfinished">电脑休眠了 {time}</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">平均值低于标称</translation>
    </message>
    <message>
        <source>the new bag has a serial of its own: scan its label</source>
        <translation type="unfinished">新袋有自己的编号：扫它的标签</translation>
    </message>
    <message>
        <source>the new film or roll is the right one</source>
        <translation type="unfinished">新的膜或卷是对的</translation>
    </message>
    <message>
        <source>the newest entry of the record is {time} old</source>
        <translation type="unfinished">最新记录是 {time} 前的</translation>
    </message>
    <message>
        <source>the offset from UTC changed by {time}, as daylight saving does</source>
        <translation type="unfinished">与 UTC 的时差变了 {time}，像夏令时那样</translation>
    </message>
    <message>
        <source>the oldest entry has waited for more than 30 minutes</source>
        <translation type="unfinished">最早的记录已等待超过 30 分钟</translation>
    </message>
    <message>
        <source>the pan is clean, dry and at zero</source>
        <translation type="unfinished">秤盘干净、干、为零</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">放下一袋前秤盘必须空</translation>
    </message>
    <message>
        <source>the plan takes {count} packs, the batch will have only {lot}</source>
        <translation type="unfinished">方案取 {count} 袋，整批只有 {lot}</translation>
    </message>
    <message>
        <source>the port is not open yet</source>
        <translation type="unfinished">端口还没打开</translation>
    </message>
    <message>
        <source>the port is open, no weight was read yet</source>
        <translation type="unfinished">端口已开，还没读到重量</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">打印机放弃了</translation>
    </message>
    <message>
        <source>the printer gives no known job state</source>
        <translation type="unfinished">打印机没有给出已知的任务状态</translation>
    </message>
    <message>
        <source>the printer has stopped: see its panel</source>
        <translation type="unfinished">打印机停了：看它的面板</translation>
    </message>
    <message>
        <source>the printer is offline: switch it on, check its cable</source>
        <translation type="unfinished">打印机离线：开机，检查电缆</translation>
    </message>
    <message>
        <source>the printer is paused: press its button to go on</source>
        <translation type="unfinished">打印机暂停：按它的按钮继续</translation>
    </message>
    <message>
        <source>the printer is switched off</source>
        <translation type="unfinished">打印机关着</translation>
    </message>
    <message>
        <source>the printer needs somebody</source>
        <translation type="unfinished">打印机需要人</translation>
    </message>
    <message>
        <source>the printer says that it is out, but its reply to the page was lost</source>
        <translation type="unfinished">打印机说已打出，但对该页的回复丢失</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">打印机：{why}</translation>
    </message>
    <message>
        <source>the proposal is for version {number}</source>
        <translation type="unfinished">建议针对版本 {number}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">队列连不上打印机：开机，检查电缆</translation>
    </message>
    <message>
        <source>the record's log takes {size}: another program has been reading the record for long, close it</source>
        <translation type="unfinished">记录日志占 {size}：别的程序读了很久，请关闭</translation>
    </message>
    <message>
        <source>the run begins with a check of the scale: {where}</source>
        <translation type="unfinished">生产开始前先检查秤：{where}</translation>
    </message>
    <message>
        <source>the run begins with a check of {what}: {where}</source>
        <translation type="unfinished">生产开始前先检查{what}：{where}</translation>
    </message>
    <message>
        <source>the run begins with a first-off</source>
        <translation type="unfinished">生产从首件标签开始</translation>
    </message>
    <message>
        <source>the run is open</source>
        <translation type="unfinished">生产还未结束</translation>
    </message>
    <message>
        <source>the scale</source>
        <translation type="unfinished">秤</translation>
    </message>
    <message>
        <source>the scale came back at zero and a load lay on the pan before: take everything off, then press the pan once with a hand</source>
        <translation type="unfinished">秤恢复时为零，而之前秤盘上有货物：全部拿下，然后用手按一下秤盘</translation>
    </message>
    <message>
        <source>the scale does not do that</source>
        <translation type="unfinished">秤没有此功能</translation>
    </message>
    <message>
        <source>the scale failed its check</source>
        <translation type="unfinished">秤检查不合格</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">秤检查不合格：调整后再检查：{where}</translation>
    </message>
    <message>
        <source>the scale found no zero when it was switched on: empty the pan and switch it on again</source>
        <translation type="unfinished">秤开机时找不到零点：清空秤盘并重新开机</translation>
    </message>
    <message>
        <source>the scale gave no answer, look at its display</source>
        <translation type="unfinished">秤没有回答，请看它的显示</translation>
    </message>
    <message>
        <source>the scale has just come back: its weights count in a moment</source>
        <translation type="unfinished">秤刚恢复：稍后重量才算数</translation>
    </message>
    <message>
        <source>the scale is a recording: no bag is taken from it</source>
        <translation type="unfinished">秤是一段录制：不接受其中的任何袋</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">秤没有信号：检查电缆和电源</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">{code} 上的秤 {number} s 没有发送：检查是否开机、电缆和通信设置</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">{code} 上的秤 {number} s 没有发送：检查是否开机、电缆和通信设置（{here}）</translation>
    </message>
    <message>
        <source>the scale read high at some loads and low at others</source>
        <translation type="unfinished">秤有的载荷偏高，有的偏低</translation>
    </message>
    <message>
        <source>the scale read high: packs may be short</source>
        <translation type="unfinished">秤偏高：袋可能不足</translation>
    </message>
    <message>
        <source>the scale read low: product was given away</source>
        <translation type="unfinished">秤偏低：多给了产品</translation>
    </message>
    <message>
        <source>the scale refused to set zero: empty the pan</source>
        <translation type="unfinished">秤拒绝清零：请清空秤盘</translation>
    </message>
    <message>
        <source>the scale reports a tare error: empty the pan and clear the tare</source>
        <translation type="unfinished">秤报告皮重错误：清空秤盘并清除皮重</translation>
    </message>
    <message>
        <source>the scale reports a zero error: empty the pan and set it to zero</source>
        <translation type="unfinished">秤报告零点错误：清空秤盘并置零</translation>
    </message>
    <message>
        <source>the scale says centre of zero and shows {mass}</source>
        <translation type="unfinished">秤报告零点中心却显示 {mass}</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set bits 7 and {same} for this port ({here}), or 8N1 on the scale</source>
        <translation type="unfinished">秤发送 7 个数据位和{parity}：把此端口设为 7 位和{same}（{here}），或把秤设为 8N1</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set the same on the converter, or 8N1 on the scale</source>
        <translation type="unfinished">秤发送 7 个数据位和{parity}：把转换器也这样设置，或把秤设为 8N1</translation>
    </message>
    <message>
        <source>the scale sent dashes instead of a weight</source>
        <translation type="unfinished">秤发来的是横线，不是重量</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">秤显示净重：清除秤上的皮重，工作站自己减袋重</translation>
    </message>
    <message>
        <source>the scale shows less than zero: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">秤显示小于零：看秤盘是否放好、有没有东西托着，清空并把秤置零</translation>
    </message>
    <message>
        <source>the scale shows no weight</source>
        <translation type="unfinished">秤没有显示重量</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">秤显示 {unit}，本次生产用 {other}：把秤调回来</translation>
    </message>
    <message>
        <source>the scale's line is not open</source>
        <translation type="unfinished">秤的线路未打开</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">标签扫码已逾期：{where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} did not match</source>
        <translation type="unfinished">标签 {serial} 扫码不符</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">标签 {serial} 扫码不符：班长在 {where} 处理</translation>
    </message>
    <message>
        <source>the settings are in {code}</source>
        <translation type="unfinished">设置的单位是 {code}</translation>
    </message>
    <message>
        <source>the settings before are in station.toml.before</source>
        <translation type="unfinished">之前的设置在 station.toml.before</translation>
    </message>
    <message>
        <source>the settings say so</source>
        <translation type="unfinished">按设置</translation>
    </message>
    <message>
        <source>the station ended before the label's fate was recorded</source>
        <translation type="unfinished">工作站在记下标签去向前就停了</translation>
    </message>
    <message>
        <source>the station fills no cases: customers.toml is missing</source>
        <translation type="unfinished">本站不装箱：缺 customers.toml</translation>
    </message>
    <message>
        <source>the station has a fault ({what}): call maintenance</source>
        <translation type="unfinished">工作站有故障（{what}）：叫维修</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">工作站跟不上秤：拿下袋子并等待</translation>
    </message>
    <message>
        <source>the station stood for long</source>
        <translation type="unfinished">工作站停了很久</translation>
    </message>
    <message>
        <source>the station writes and checkpoints through one, so it cannot happen here</source>
        <translation type="unfinished">本站只通过一个连接写入，这里不会发生</translation>
    </message>
    <message>
        <source>the store is closed</source>
        <translation type="unfinished">记录已关闭</translation>
    </message>
    <message>
        <source>the study has {study}, more than the tare {tare} taken off: raise the tare of {bag}</source>
        <translation type="unfinished">测定得 {study}，大于扣除的皮重 {tare}：调高 {bag} 的皮重</translation>
    </message>
    <message>
        <source>the test weights come to {total} for the load {load} of {mass}: at least {percent} of it are needed</source>
        <translation type="unfinished">载荷 {load} {mass} 的标准砝码合计 {total}：至少需要 {percent}</translation>
    </message>
    <message>
        <source>the year {year} is not believed</source>
        <translation type="unfinished">年份 {year} 不可信</translation>
    </message>
    <message>
        <source>then its number, its verification and who answers for it</source>
        <translation type="unfinished">然后填编号、检定和负责人</translation>
    </message>
    <message>
        <source>there is no run before: nothing is to be counted</source>
        <translation type="unfinished">没有上一次生产：无需清点</translation>
    </message>
    <message>
        <source>there is nothing to report</source>
        <translation type="unfinished">没有可报告的</translation>
    </message>
    <message>
        <source>there is room again: {free} free</source>
        <translation type="unfinished">又有空间了：剩 {free}</translation>
    </message>
    <message>
        <source>these lines are in {units}</source>
        <translation type="unfinished">这些行的单位是 {units}</translation>
    </message>
    <message>
        <source>they do not all end with the same control characters</source>
        <translation type="unfinished">结尾的控制字符不一致</translation>
    </message>
    <message>
        <source>this PIN is not right</source>
        <translation type="unfinished">PIN 不对</translation>
    </message>
    <message>
        <source>this PIN is not right: wait {time}</source>
        <translation type="unfinished">PIN 不对：等 {time}</translation>
    </message>
    <message>
        <source>this badge is not right</source>
        <translation type="unfinished">工牌不对</translation>
    </message>
    <message>
        <source>this badge is not right: wait {time}</source>
        <translation type="unfinished">工牌不对：等 {time}</translation>
    </message>
    <message>
        <source>this bag in it</source>
        <translation type="unfinished">此袋在其中</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">这袋没有记录也没有标签：{why}</translation>
    </message>
    <message>
        <source>this cannot be shelved, {what}: {answer}</source>
        <translation type="unfinished">这个不能推迟，{what}：{answer}</translation>
    </message>
    <message>
        <source>this hour: all {count} bags</source>
        <translation type="unfinished">本小时：共 {count} 袋</translation>
    </message>
    <message>
        <source>this hour: {count} of about {all} bags</source>
        <translation type="unfinished">本小时：约 {all} 袋中的 {count}</translation>
    </message>
    <message>
        <source>this one is destroyed</source>
        <translation type="unfinished">这张已销毁</translation>
    </message>
    <message>
        <source>this user may not use it: add the user to the group that owns it (on most Linux systems dialout) and sign in again</source>
        <translation type="unfinished">此用户无权使用：把用户加入所属的组（多数 Linux 为 dialout）并重新登录</translation>
    </message>
    <message>
        <source>this version can damage a file that two connections write at once</source>
        <translation type="unfinished">此版本在两个连接同时写入时可能损坏文件</translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished">时间</translation>
    </message>
    <message>
        <source>time, with a lot</source>
        <translation type="unfinished">时间，配批次</translation>
    </message>
    <message>
        <source>too many wrong PINs: wait {time}</source>
        <translation type="unfinished">PIN 错误太多：等 {time}</translation>
    </message>
    <message>
        <source>too many wrong badges: wait {time}</source>
        <translation type="unfinished">工牌错误太多：等 {time}</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation type="unfinished">过热</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation type="unfinished">补足</translation>
    </message>
    <message>
        <source>torn or creased</source>
        <translation type="unfinished">撕破或起皱</translation>
    </message>
    <message>
        <source>torn up, seen by me</source>
        <translation type="unfinished">已撕，我看到</translation>
    </message>
    <message>
        <source>touch an alarm first</source>
        <translation type="unfinished">先点一个警报</translation>
    </message>
    <message>
        <source>touch and key in all three counts first</source>
        <translation type="unfinished">先点并输入三个数</translation>
    </message>
    <message>
        <source>touch the rejects it is about first</source>
        <translation type="unfinished">先点相关的剔出袋</translation>
    </message>
    <message>
        <source>touch to change</source>
        <translation type="unfinished">点此更改</translation>
    </message>
    <message>
        <source>touch when thrown out</source>
        <translation type="unfinished">剔出后点此</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">先点自己的名字</translation>
    </message>
    <message>
        <source>two lots overlap for long</source>
        <translation type="unfinished">两批重叠太久</translation>
    </message>
    <message>
        <source>two people release: the second one is missing</source>
        <translation type="unfinished">需两人放行：缺第二人</translation>
    </message>
    <message>
        <source>two people sign</source>
        <translation type="unfinished">两人签名</translation>
    </message>
    <message>
        <source>typed below</source>
        <translation type="unfinished">在下面输入</translation>
    </message>
    <message>
        <source>under capacity</source>
        <translation type="unfinished">低于量程</translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished">单位</translation>
    </message>
    <message>
        <source>unit {shown} is not in the description</source>
        <translation type="unfinished">描述中没有单位 {shown}</translation>
    </message>
    <message>
        <source>unknown command</source>
        <translation type="unfinished">未知命令</translation>
    </message>
    <message>
        <source>until, such as 09:40</source>
        <translation type="unfinished">到，如 09:40</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">上限</translation>
    </message>
    <message>
        <source>upper {mass}</source>
        <translation type="unfinished">上限 {mass}</translation>
    </message>
    <message>
        <source>use by</source>
        <translation type="unfinished">截止</translation>
    </message>
    <message>
        <source>use by {day}</source>
        <translation type="unfinished">截止 {day}</translation>
    </message>
    <message>
        <source>used to set the printer up</source>
        <translation type="unfinished">用于调打印机</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation type="unfinished">真空</translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished">数值</translation>
    </message>
    <message>
        <source>value is {number}, {why}</source>
        <translation type="unfinished">数值 {number}：{why}</translation>
    </message>
    <message>
        <source>value is {shown}, not a number as described</source>
        <translation type="unfinished">数值为 {shown}，不是所述的数</translation>
    </message>
    <message>
        <source>verified {code}</source>
        <translation type="unfinished">检定 {code}</translation>
    </message>
    <message>
        <source>verified {day}: give a day from {first} to today, {today}</source>
        <translation type="unfinished">检定 {day}：应在 {first} 至今天 {today} 之间</translation>
    </message>
    <message>
        <source>verified {shown}: give the day as in {day}</source>
        <translation type="unfinished">检定 {shown}：日期写成 {day}</translation>
    </message>
    <message>
        <source>verified, as in 2026-03-31</source>
        <translation type="unfinished">检定日，如 2026-03-31</translation>
    </message>
    <message>
        <source>version</source>
        <translation type="unfinished">版本</translation>
    </message>
    <message>
        <source>voided</source>
        <translation type="unfinished">作废</translation>
    </message>
    <message>
        <source>wait until the scale shows a steady weight</source>
        <translation type="unfinished">等秤显示稳定重量</translation>
    </message>
    <message>
        <source>wait until the scale stands still: it is never set to zero in motion</source>
        <translation type="unfinished">等秤静止：移动时不清零</translation>
    </message>
    <message>
        <source>waiting for QA</source>
        <translation type="unfinished">等质检</translation>
    </message>
    <message>
        <source>waiting for the scale's first reading</source>
        <translation type="unfinished">正在等秤的第一个读数</translation>
    </message>
    <message>
        <source>warm or damaged</source>
        <translation type="unfinished">温热或损坏</translation>
    </message>
    <message>
        <source>was wrong, is set right</source>
        <translation type="unfinished">之前不准，已调准</translation>
    </message>
    <message>
        <source>wash record</source>
        <translation type="unfinished">清洗记录</translation>
    </message>
    <message>
        <source>washed where allergens change</source>
        <translation type="unfinished">过敏原变化处已清洗</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished">已报废</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">{count} 袋内称一个空袋</translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation type="unfinished">要称重</translation>
    </message>
    <message>
        <source>weigh the rest</source>
        <translation type="unfinished">称剩余</translation>
    </message>
    <message>
        <source>weighed again</source>
        <translation type="unfinished">已复称</translation>
    </message>
    <message>
        <source>weighed again, good</source>
        <translation type="unfinished">复称合格</translation>
    </message>
    <message>
        <source>weighed now</source>
        <translation type="unfinished">现称</translation>
    </message>
    <message>
        <source>weight is {shown}, not a number of the standard's form</source>
        <translation type="unfinished">重量为 {shown}，不是标准格式的数</translation>
    </message>
    <message>
        <source>weight not displayed</source>
        <translation type="unfinished">未显示重量</translation>
    </message>
    <message>
        <source>weighted average {mean}</source>
        <translation type="unfinished">加权均值 {mean}</translation>
    </message>
    <message>
        <source>weights arrive and are used</source>
        <translation type="unfinished">重量到达并被使用</translation>
    </message>
    <message>
        <source>weights come {number} s apart, and one counts for {most} s: set the scale, or the converter on its line, to send more often and at once</source>
        <translation type="unfinished">每 {number} s 才来一个重量，而一个只在 {most} s 内算数：把秤或其线路上的转换器设为更频繁并立即发送</translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished">内容</translation>
    </message>
    <message>
        <source>what is open</source>
        <translation type="unfinished">未结事项</translation>
    </message>
    <message>
        <source>what the station sends comes back in front of the answers: switch the echo of the converter or of the scale off</source>
        <translation type="unfinished">工作站发出的内容在回答之前又传回来：关闭转换器或秤的回显</translation>
    </message>
    <message>
        <source>which label?</source>
        <translation type="unfinished">哪张标签？</translation>
    </message>
    <message>
        <source>which {what}? Scan or type it first</source>
        <translation type="unfinished">哪个{what}？先扫或输入</translation>
    </message>
    <message>
        <source>who decides? Choose a name first</source>
        <translation type="unfinished">谁决定？先选名字</translation>
    </message>
    <message>
        <source>who says so? Touch WHO and choose your name</source>
        <translation type="unfinished">谁确认？点 谁 并选名字</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">全部</translation>
    </message>
    <message>
        <source>whole error</source>
        <translation type="unfinished">全部误差</translation>
    </message>
    <message>
        <source>whole run: all {count} bags</source>
        <translation type="unfinished">整次生产：共 {count} 袋</translation>
    </message>
    <message>
        <source>whole run: {count} of about {all} bags</source>
        <translation type="unfinished">整次生产：约 {all} 袋中的 {count}</translation>
    </message>
    <message>
        <source>whom does it go to? Choose a customer</source>
        <translation type="unfinished">发给谁？选客户</translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished">原因</translation>
    </message>
    <message>
        <source>why it differs: scan or type</source>
        <translation type="unfinished">为何不符：扫或输入</translation>
    </message>
    <message>
        <source>why it may go, or must be dumped</source>
        <translation type="unfinished">为何可放行或须倒掉</translation>
    </message>
    <message>
        <source>why: scan or type the reason</source>
        <translation type="unfinished">原因：扫或输入</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation type="unfinished">擦</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">擦秤盘，然后置零</translation>
    </message>
    <message>
        <source>with a witness</source>
        <translation type="unfinished">需见证</translation>
    </message>
    <message>
        <source>with {customer}</source>
        <translation type="unfinished">在 {customer}</translation>
    </message>
    <message>
        <source>within both bounds</source>
        <translation type="unfinished">在两个界限内</translation>
    </message>
    <message>
        <source>without it</source>
        <translation type="unfinished">没有它</translation>
    </message>
    <message>
        <source>witness {who}</source>
        <translation type="unfinished">见证 {who}</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">使用此屏幕</translation>
    </message>
    <message>
        <source>wrong date</source>
        <translation type="unfinished">日期错</translation>
    </message>
    <message>
        <source>wrong label</source>
        <translation type="unfinished">标签错</translation>
    </message>
    <message>
        <source>wrong lots</source>
        <translation type="unfinished">批次错</translation>
    </message>
    <message>
        <source>wrong roll taken out</source>
        <translation type="unfinished">取出了错的卷</translation>
    </message>
    <message>
        <source>wrong text</source>
        <translation type="unfinished">文字错</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">重量不对</translation>
    </message>
    <message>
        <source>you approve</source>
        <translation type="unfinished">您批准</translation>
    </message>
    <message>
        <source>zero error</source>
        <translation type="unfinished">零点错误</translation>
    </message>
    <message>
        <source>{begin_code} to {end_code}</source>
        <translation type="unfinished">{begin_code} 至 {end_code}</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: FAILS</source>
        <translation type="unfinished">{case}：均值 {mean}，{count} 袋低于 T1：不合格</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: passes</source>
        <translation type="unfinished">{case}：均值 {mean}，{count} 袋低于 T1：合格</translation>
    </message>
    <message>
        <source>{code} is at {number}</source>
        <translation type="unfinished">{code}现为 {number}</translation>
    </message>
    <message>
        <source>{code} is not known: receive it first</source>
        <translation type="unfinished">{code} 不明：先收货</translation>
    </message>
    <message>
        <source>{code} {count} of {whole}</source>
        <translation type="unfinished">{code} {whole} 之 {count}</translation>
    </message>
    <message>
        <source>{count} BAGS HELD OR OUT</source>
        <translation type="unfinished">{count} 袋已扣留或剔出</translation>
    </message>
    <message>
        <source>{count} bag is {what}.</source>
        <translation type="unfinished">{count} 袋{what}。</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} 袋</translation>
    </message>
    <message>
        <source>{count} bags an hour</source>
        <translation type="unfinished">每小时 {count} 袋</translation>
    </message>
    <message>
        <source>{count} bags are dumped: they lie in the reject bin. Release the empty hold.</source>
        <translation type="unfinished">{count} 袋已倒掉：在废料箱里。放行空的扣留。</translation>
    </message>
    <message>
        <source>{count} bags are held</source>
        <translation type="unfinished">{count} 袋已扣留</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">检查不合格后扣留 {count} 袋：质检决定：{where}</translation>
    </message>
    <message>
        <source>{count} bags are in the bin, {expected} by the record: say why they differ</source>
        <translation type="unfinished">废料箱 {count} 袋，记录 {expected}：说明差异</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">已包装 {count} 袋：由班长结束</translation>
    </message>
    <message>
        <source>{count} bags are released.</source>
        <translation type="unfinished">{count} 袋已放行。</translation>
    </message>
    <message>
        <source>{count} bags are {what}.</source>
        <translation type="unfinished">{count} 袋{what}。</translation>
    </message>
    <message>
        <source>{count} bags from {begin} to {end} are held: {why}.</source>
        <translation type="unfinished">{begin} 至 {end} 的 {count} 袋已扣留：{why}。</translation>
    </message>
    <message>
        <source>{count} bags held or out</source>
        <translation type="unfinished">{count} 袋已扣留或剔出</translation>
    </message>
    <message>
        <source>{count} bags held, packed after {begin} until {end}</source>
        <translation type="unfinished">扣留 {count} 袋，{begin} 至 {end} 包装</translation>
    </message>
    <message>
        <source>{count} bags in the batch; {plan}</source>
        <translation type="unfinished">整批 {count} 袋；{plan}</translation>
    </message>
    <message>
        <source>{count} bags lie in the bin by the record</source>
        <translation type="unfinished">按记录废料箱有 {count} 袋</translation>
    </message>
    <message>
        <source>{count} bags of one run</source>
        <translation type="unfinished">一次生产的 {count} 袋</translation>
    </message>
    <message>
        <source>{count} bags weigh less than {mass} in the mean</source>
        <translation type="unfinished">{count} 袋平均不足 {mass}</translation>
    </message>
    <message>
        <source>{count} bags {more} than recorded: count again, or say why</source>
        <translation type="unfinished">比记录{more} {count} 袋：重点一次，或说明原因</translation>
    </message>
    <message>
        <source>{count} case</source>
        <translation type="unfinished">{count} 箱</translation>
    </message>
    <message>
        <source>{count} cases</source>
        <translation type="unfinished">{count} 箱</translation>
    </message>
    <message>
        <source>{count} cases and pallets stand here</source>
        <translation type="unfinished">这里有 {count} 个箱和托盘</translation>
    </message>
    <message>
        <source>{count} characters, allowed are {least} to {most}</source>
        <translation type="unfinished">{count} 个字符，允许 {least} 至 {most}</translation>
    </message>
    <message>
        <source>{count} characters, at most {most}</source>
        <translation type="unfinished">{count} 个字符，最多 {most}</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation type="unfinished">{count} 天</translation>
    </message>
    <message>
        <source>{count} days ago</source>
        <translation type="unfinished">{count} 天前</translation>
    </message>
    <message>
        <source>{count} fills are too few for a proposal: weigh {least} or more</source>
        <translation type="unfinished">{count} 袋太少，无法提议：至少称 {least} 袋</translation>
    </message>
    <message>
        <source>{count} held or set aside</source>
        <translation type="unfinished">{count} 袋扣留或另放</translation>
    </message>
    <message>
        <source>{count} issued, {used} used so far</source>
        <translation type="unfinished">领出 {count}，已用 {used}</translation>
    </message>
    <message>
        <source>{count} kept.</source>
        <translation type="unfinished">已保留 {count} 行。</translation>
    </message>
    <message>
        <source>{count} labels</source>
        <translation type="unfinished">{count} 张标签</translation>
    </message>
    <message>
        <source>{count} labels are in doubt</source>
        <translation type="unfinished">{count} 张标签存疑</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} 张标签状态不明，第一张 {serial}：在 {where} 处理</translation>
    </message>
    <message>
        <source>{count} labels to answer for: look at each bag</source>
        <translation type="unfinished">{count} 张标签要回答：看每个袋</translation>
    </message>
    <message>
        <source>{count} lines are weights, {number} are not: look at each of them</source>
        <translation type="unfinished">{count} 行是重量，{number} 行不是：逐一查看</translation>
    </message>
    <message>
        <source>{count} minutes</source>
        <translation type="unfinished">{count} 分钟</translation>
    </message>
    <message>
        <source>{count} more windows wait.</source>
        <translation type="unfinished">还有 {count} 段等待。</translation>
    </message>
    <message>
        <source>{count} of its bags are held</source>
        <translation type="unfinished">其中 {count} 袋已扣留</translation>
    </message>
    <message>
        <source>{count} of {draws} rehearsed samples of the stored bags pass (failed: mean {mean}, T1 {t1}, T2 {t2})</source>
        <translation type="unfinished">{draws} 次演练样本中 {count} 次合格（不合格：均值 {mean}，T1 {t1}，T2 {t2}）</translation>
    </message>
    <message>
        <source>{count} packs are weighed already, more than the {lot} expected</source>
        <translation type="unfinished">已称 {count} 袋，超过预期的 {lot}</translation>
    </message>
    <message>
        <source>{count} rejects are undecided</source>
        <translation type="unfinished">{count} 个剔出袋未决定</translation>
    </message>
    <message>
        <source>{count} rejects of {day} wait for a decision</source>
        <translation type="unfinished">{day} 的 {count} 个剔出袋等待决定</translation>
    </message>
    <message>
        <source>{count} runs were purged on {day}, export {folder}</source>
        <translation type="unfinished">{day} 已清除 {count} 次生产的记录，存于 {folder}</translation>
    </message>
    <message>
        <source>{count} runs were purged, the last on {day}, export {folder}</source>
        <translation type="unfinished">已清除 {count} 次生产的记录，最后一次 {day}，存于 {folder}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">另放 {count} 袋</translation>
    </message>
    <message>
        <source>{count} stops</source>
        <translation type="unfinished">停线 {count} 次</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} 袋可疑已扣留：质检或班长决定：{where}</translation>
    </message>
    <message>
        <source>{count} things are open</source>
        <translation type="unfinished">{count} 件未结</translation>
    </message>
    <message>
        <source>{count} things are open, first: {what}. Settle them, or write why the day is signed all the same</source>
        <translation type="unfinished">{count} 件未结，第一件：{what}。请处理，或写明为何仍签当天</translation>
    </message>
    <message>
        <source>{count} things happened on {day}</source>
        <translation type="unfinished">{day} 发生 {count} 件</translation>
    </message>
    <message>
        <source>{count} things open, not signed</source>
        <translation type="unfinished">{count} 件未结，未签名</translation>
    </message>
    <message>
        <source>{count} unit</source>
        <translation type="unfinished">{count} 件</translation>
    </message>
    <message>
        <source>{count} units</source>
        <translation type="unfinished">{count} 件</translation>
    </message>
    <message>
        <source>{count} with customers</source>
        <translation type="unfinished">{count} 在客户处</translation>
    </message>
    <message>
        <source>{count} {code} free</source>
        <translation type="unfinished">剩余 {count} {code}</translation>
    </message>
    <message>
        <source>{day} is not reviewed and signed</source>
        <translation type="unfinished">{day} 未审未签</translation>
    </message>
    <message>
        <source>{day} is reviewed and signed.</source>
        <translation type="unfinished">{day} 已审并签名。</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects, {filter}; {open} open</source>
        <translation type="unfinished">{day}：{all} 个剔出袋中的 {shown} 个，{filter}；{open} 个未决</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects; {open} open</source>
        <translation type="unfinished">{day}：{all} 个剔出袋中的 {shown} 个；{open} 个未决</translation>
    </message>
    <message>
        <source>{digits} is no day: give day and month, like 2411 for 24 November</source>
        <translation type="unfinished">{digits} 不是日期：给日和月，如 2411 表示 11月24日</translation>
    </message>
    <message>
        <source>{error}, beyond {limit}</source>
        <translation type="unfinished">{error}，超出 {limit}</translation>
    </message>
    <message>
        <source>{error}, may be {limit}</source>
        <translation type="unfinished">{error}，允许 {limit}</translation>
    </message>
    <message>
        <source>{field} is read as {shown}, not {due}</source>
        <translation type="unfinished">{field}读成 {shown}，不是 {due}</translation>
    </message>
    <message>
        <source>{field} is {shown}, allowed is {allowed}</source>
        <translation type="unfinished">{field}为 {shown}，允许 {allowed}</translation>
    </message>
    <message>
        <source>{first} and {count} more</source>
        <translation type="unfinished">{first} 另有 {count}</translation>
    </message>
    <message>
        <source>{first}, and {count} more</source>
        <translation type="unfinished">{first}，另有 {count} 项</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}：{count} 袋，低于 T1 至多 {most}（{clause}）</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, then {second} more, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}：{count} 袋，再加 {second}，低于 T1 至多 {most}（{clause}）</translation>
    </message>
    <message>
        <source>{last} comes before {first}: give the first serial first</source>
        <translation type="unfinished">{last} 在 {first} 之前：先给首个编号</translation>
    </message>
    <message>
        <source>{mass} DOES NOT FIT ({against})</source>
        <translation type="unfinished">{mass} 不符（{against}）</translation>
    </message>
    <message>
        <source>{mass} FITS ({against})</source>
        <translation type="unfinished">{mass} 相符（{against}）</translation>
    </message>
    <message>
        <source>{mass} a bag</source>
        <translation type="unfinished">每袋 {mass}</translation>
    </message>
    <message>
        <source>{mass} g a bag</source>
        <translation type="unfinished">每袋 {mass} g</translation>
    </message>
    <message>
        <source>{mass} is below what the scale weighs: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">{mass} 低于秤的称量范围：看秤盘是否放好、有没有东西托着，清空并把秤置零</translation>
    </message>
    <message>
        <source>{mass} is in high resolution, which is not the indication</source>
        <translation type="unfinished">{mass} 是高分辨率读数，不是示值</translation>
    </message>
    <message>
        <source>{mass} is more than the scale weighs, {most}</source>
        <translation type="unfinished">{mass} 超过秤的最大称量 {most}</translation>
    </message>
    <message>
        <source>{mass} is not a multiple of {interval}</source>
        <translation type="unfinished">{mass} 不是 {interval} 的倍数</translation>
    </message>
    <message>
        <source>{mass} is the tare, not the load</source>
        <translation type="unfinished">{mass} 是皮重，不是货物</translation>
    </message>
    <message>
        <source>{mass} now</source>
        <translation type="unfinished">现在 {mass}</translation>
    </message>
    <message>
        <source>{mass} proposed</source>
        <translation type="unfinished">提议 {mass}</translation>
    </message>
    <message>
        <source>{mass} this run</source>
        <translation type="unfinished">本次生产 {mass}</translation>
    </message>
    <message>
        <source>{mass} this run, {money} in money</source>
        <translation type="unfinished">本次生产 {mass}，金额 {money}</translation>
    </message>
    <message>
        <source>{mass}: {count} bags, {percent} %</source>
        <translation type="unfinished">{mass}：{count} 袋，{percent} %</translation>
    </message>
    <message>
        <source>{mean} OUTSIDE {least} to {most}</source>
        <translation type="unfinished">{mean} 超出 {least} 至 {most}</translation>
    </message>
    <message>
        <source>{mean} within {least} to {most}</source>
        <translation type="unfinished">{mean} 在 {least} 至 {most} 内</translation>
    </message>
    <message>
        <source>{name} not installed</source>
        <translation type="unfinished">{name} 未安装</translation>
    </message>
    <message>
        <source>{name} serial {code}</source>
        <translation type="unfinished">{name} 编号 {code}</translation>
    </message>
    <message>
        <source>{name} stands for {first} and for {second}: look at the case and keep one</source>
        <translation type="unfinished">{name}既是 {first} 又是 {second}：看箱子，留一个</translation>
    </message>
    <message>
        <source>{name} waits: a bag is on the pan</source>
        <translation type="unfinished">{name} 等待：秤盘上有袋子</translation>
    </message>
    <message>
        <source>{name} would change what the bags of the open run weigh: end the run</source>
        <translation type="unfinished">{name} 会改变当前生产袋子的重量：先结束生产</translation>
    </message>
    <message>
        <source>{name}: mean {mean}, spread {spread}</source>
        <translation type="unfinished">{name}：均值 {mean}，离散 {spread}</translation>
    </message>
    <message>
        <source>{name}: {code} from {who}</source>
        <translation type="unfinished">{name}：{code}，来自 {who}</translation>
    </message>
    <message>
        <source>{number} % full</source>
        <translation type="unfinished">已用 {number} %</translation>
    </message>
    <message>
        <source>{number} % of nominal</source>
        <translation type="unfinished">标称的 {number} %</translation>
    </message>
    <message>
        <source>{number} April {count}</source>
        <translation type="unfinished">{count}年4月{number}日</translation>
    </message>
    <message>
        <source>{number} August {count}</source>
        <translation type="unfinished">{count}年8月{number}日</translation>
    </message>
    <message>
        <source>{number} December {count}</source>
        <translation type="unfinished">{count}年12月{number}日</translation>
    </message>
    <message>
        <source>{number} February {count}</source>
        <translation type="unfinished">{count}年2月{number}日</translation>
    </message>
    <message>
        <source>{number} January {count}</source>
        <translation type="unfinished">{count}年1月{number}日</translation>
    </message>
    <message>
        <source>{number} July {count}</source>
        <translation type="unfinished">{count}年7月{number}日</translation>
    </message>
    <message>
        <source>{number} June {count}</source>
        <translation type="unfinished">{count}年6月{number}日</translation>
    </message>
    <message>
        <source>{number} March {count}</source>
        <translation type="unfinished">{count}年3月{number}日</translation>
    </message>
    <message>
        <source>{number} May {count}</source>
        <translation type="unfinished">{count}年5月{number}日</translation>
    </message>
    <message>
        <source>{number} November {count}</source>
        <translation type="unfinished">{count}年11月{number}日</translation>
    </message>
    <message>
        <source>{number} October {count}</source>
        <translation type="unfinished">{count}年10月{number}日</translation>
    </message>
    <message>
        <source>{number} September {count}</source>
        <translation type="unfinished">{count}年9月{number}日</translation>
    </message>
    <message>
        <source>{number} bags</source>
        <translation type="unfinished">{number} 袋</translation>
    </message>
    <message>
        <source>{number} failed</source>
        <translation type="unfinished">{number} 不合格</translation>
    </message>
    <message>
        <source>{number} held</source>
        <translation type="unfinished">{number} 起扣留</translation>
    </message>
    <message>
        <source>{number} in money</source>
        <translation type="unfinished">金额 {number}</translation>
    </message>
    <message>
        <source>{number} missing</source>
        <translation type="unfinished">少 {number} 张</translation>
    </message>
    <message>
        <source>{number} of {whole}</source>
        <translation type="unfinished">{number} / {whole}</translation>
    </message>
    <message>
        <source>{number} of {whole} allowed</source>
        <translation type="unfinished">{number} / 允许 {whole}</translation>
    </message>
    <message>
        <source>{number} of {whole} bags</source>
        <translation type="unfinished">{number} / {whole} 袋</translation>
    </message>
    <message>
        <source>{number} of {whole}: {what}</source>
        <translation type="unfinished">{number} / {whole}：{what}</translation>
    </message>
    <message>
        <source>{number} to {count} days</source>
        <translation type="unfinished">{number} 至 {count} 天</translation>
    </message>
    <message>
        <source>{number} to {whole} {unit}</source>
        <translation type="unfinished">{number} 至 {whole} {unit}</translation>
    </message>
    <message>
        <source>{number} too many</source>
        <translation type="unfinished">多 {number} 张</translation>
    </message>
    <message>
        <source>{picked} picked, {count} weighed</source>
        <translation type="unfinished">选 {picked}，已称 {count}</translation>
    </message>
    <message>
        <source>{product}, version {version}</source>
        <translation type="unfinished">{product}，版本 {version}</translation>
    </message>
    <message>
        <source>{product}, weighed {time}</source>
        <translation type="unfinished">{product}，称于 {time}</translation>
    </message>
    <message>
        <source>{product}: {mass} kg net</source>
        <translation type="unfinished">{product}：净 {mass} kg</translation>
    </message>
    <message>
        <source>{result} by {code}</source>
        <translation type="unfinished">{result}，{code}</translation>
    </message>
    <message>
        <source>{seconds} s: {frames} weights, {garbage} not understood ({percent} %, 5 % are allowed), {bytes} bytes</source>
        <translation type="unfinished">{seconds} s：{frames} 个重量，{garbage} 个看不懂（{percent} %，允许 5 %），{bytes} 字节</translation>
    </message>
    <message>
        <source>{serial} must say</source>
        <translation type="unfinished">{serial} 应为</translation>
    </message>
    <message>
        <source>{serial}: as recorded</source>
        <translation type="unfinished">{serial}：与记录一致</translation>
    </message>
    <message>
        <source>{sscc} had its use-by date on {day}: it must not leave</source>
        <translation type="unfinished">{sscc} 的保质期到 {day} 为止：不得发出</translation>
    </message>
    <message>
        <source>{sscc} is a pallet: a pallet holds cases</source>
        <translation type="unfinished">{sscc} 是托盘：托盘装箱</translation>
    </message>
    <message>
        <source>{sscc} is gone with {shipment}</source>
        <translation type="unfinished">{sscc} 已随 {shipment} 发出</translation>
    </message>
    <message>
        <source>{sscc} is on pallet {pallet}</source>
        <translation type="unfinished">{sscc} 在托盘 {pallet} 上</translation>
    </message>
    <message>
        <source>{sscc} is undone</source>
        <translation type="unfinished">{sscc} 已撤销</translation>
    </message>
    <message>
        <source>{sscc} is undone.</source>
        <translation type="unfinished">{sscc} 已撤销。</translation>
    </message>
    <message>
        <source>{text} is no figure: key in digits, such as 3.4</source>
        <translation type="unfinished">{text} 不是数字：请输入如 3.4</translation>
    </message>
    <message>
        <source>{text} is no serial of a bag, such as A1-7K-000042</source>
        <translation type="unfinished">{text} 不是袋编号，如 A1-7K-000042</translation>
    </message>
    <message>
        <source>{text} is no time: write {form}</source>
        <translation type="unfinished">{text} 不是时间：写 {form}</translation>
    </message>
    <message>
        <source>{time}: {mass}; mean so far {mean}</source>
        <translation type="unfinished">{time}：{mass}；目前均值 {mean}</translation>
    </message>
    <message>
        <source>{value} cannot be: allowed is {low} to {high}</source>
        <translation type="unfinished">{value} 不可能：允许 {low} 至 {high}</translation>
    </message>
    <message>
        <source>{what} by {code}: {why}</source>
        <translation type="unfinished">{what}，{code}：{why}</translation>
    </message>
    <message>
        <source>{what} cannot be released: {why}</source>
        <translation type="unfinished">{what} 不能放行：{why}</translation>
    </message>
    <message>
        <source>{what} failed its check</source>
        <translation type="unfinished">{what}检查不合格</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what}检查不合格：改正后再检查：{where}</translation>
    </message>
    <message>
        <source>{what} failed its last check</source>
        <translation type="unfinished">{what}上次检查不合格</translation>
    </message>
    <message>
        <source>{what} failed: write what is done about it before it is recorded</source>
        <translation type="unfinished">{what}不合格：先写怎么处理再记录</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{minutes} 分钟后{what}</translation>
    </message>
    <message>
        <source>{what} is on record.</source>
        <translation type="unfinished">{what}已记录。</translation>
    </message>
    <message>
        <source>{what} keeps no bag any more: release the hold</source>
        <translation type="unfinished">{what} 已无扣留的袋：放行此扣留</translation>
    </message>
    <message>
        <source>{what} lost on {code}</source>
        <translation type="unfinished">{what}：在 {code} 上断开</translation>
    </message>
    <message>
        <source>{what} needs {thing}</source>
        <translation type="unfinished">{what}需要{thing}</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">现在{what}</translation>
    </message>
    <message>
        <source>{what} was released already</source>
        <translation type="unfinished">{what} 已放行过</translation>
    </message>
    <message>
        <source>{what} was scanned already</source>
        <translation type="unfinished">{what} 已扫过</translation>
    </message>
    <message>
        <source>{what} was {usual}, now {seen}: is this still the same product?</source>
        <translation type="unfinished">{what}原为 {usual}，现为 {seen}：还是同一产品吗？</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}：核对日期和时间，然后在 {where} 签名</translation>
    </message>
    <message>
        <source>{what}: no checks in the settings</source>
        <translation type="unfinished">{what}：设置中没有检查</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} 不能签此项</translation>
    </message>
    <message>
        <source>{who} cannot witness a decision of {other}: choose another person</source>
        <translation type="unfinished">{who} 不能见证 {other} 的决定：选别人</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} 没有签名：{act} 需要 PIN 或工牌</translation>
    </message>
    <message>
        <source>{who} does not lead: the lead signs first</source>
        <translation type="unfinished">{who} 不是班长：班长先签名</translation>
    </message>
    <message>
        <source>{who} has no PIN: the manager sets one, station people pin {id}</source>
        <translation type="unfinished">{who} 没有 PIN：由经理设置，station people pin {id}</translation>
    </message>
    <message>
        <source>{who} is nobody in people.toml</source>
        <translation type="unfinished">{who} 不在 people.toml 中</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} 不能在此签名</translation>
    </message>
    <message>
        <source>{who} signs first: another person signs second</source>
        <translation type="unfinished">{who} 先签：另一人再签</translation>
    </message>
    <message>
        <source>{why}, after a page was out</source>
        <translation type="unfinished">{why}，已经出了一页</translation>
    </message>
    <message>
        <source>{why}, after printing may have begun</source>
        <translation type="unfinished">{why}，可能已经开始打印</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}：两人在 {where} 批准标签</translation>
    </message>
</context>
</TS>
