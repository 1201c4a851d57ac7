<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_CN" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 产品</translation>
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
        <source>ADD</source>
        <translation type="unfinished">加</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">警报</translation>
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
        <source>BEFORE</source>
        <translation type="unfinished">之前</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">废料箱</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">最佳食用日期</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">叫班长</translation>
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
        <source>CHECKS</source>
        <translation type="unfinished">检查</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">清除</translation>
    </message>
    <message>
        <source>CO2</source>
        <translation type="unfinished">CO2</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">已清点</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">切割日</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">决定</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">不签名</translation>
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
        <source>EMPTY PAN</source>
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
        <source>FILTER</source>
        <translation type="unfinished">筛选</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">首件</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">放弃</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">继续</translation>
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
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">我已看到</translation>
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
        <source>LABELS</source>
        <translation type="unfinished">标签</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">语言</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">班长</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">取走袋子</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">生产线</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">重新加载</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">查询</translation>
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
        <source>Labels in doubt</source>
        <translation type="unfinished">状态不明的标签</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">包装员屏幕的语言</translation>
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
        <source>MANAGER</source>
        <translation type="unfinished">经理</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">更多</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">平均净重 {mass}</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">新扣留</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">无读数</translation>
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
        <source>No good bag yet</source>
        <translation type="unfinished">还没有合格袋</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">没有进行中的生产</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">按包装员</translation>
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
        <source>On the scale</source>
        <translation type="unfinished">称重员</translation>
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
        <source>PAPER</source>
        <translation type="unfinished">纸张</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">打印</translation>
    </message>
    <message>
        <source>QA</source>
        <translation type="unfinished">质检</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">质量</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">收货</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">记录</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">记录提议</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">演练</translation>
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
        <source>ROLL</source>
        <translation type="unfinished">标签卷</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">生产</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">生产，再按 {door} ({key})</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">被拒绝。{why}</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">生产进行中</translation>
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
        <source>SEAL</source>
        <translation type="unfinished">封口</translation>
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
        <source>STOP</source>
        <translation type="unfinished">停线</translation>
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
        <source>Start a run</source>
        <translation type="unfinished">开始生产</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2、T1、标称</translation>
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
        <source>TRACE</source>
        <translation type="unfinished">追溯</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">培训</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">以秤本身的示值为准。如果屏幕与秤不一致，以秤为准：停下并叫班长。</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">先点自己的名字。</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">食用截止日期</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">等待</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">称一袋</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">擦秤盘</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">计算</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">为什么放到一边？</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">秤盘上有袋子：做完并取走，再结束生产</translation>
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
        <source>a cover is open: close it</source>
        <translation type="unfinished">盖子开着：关上</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">门开着：关上</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">被扣留的批次在线上</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">标签不符</translation>
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
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">新卷从首件标签开始</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">暂停</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">有生产正在进行：先结束它</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">停线后</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">下面还有 {count} 个</translation>
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
        <source>as people.toml says</source>
        <translation type="unfinished">按 people.toml</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">正在询问生产线 …</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">随机</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">袋</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">袋 {code}，膜批号 {lot} 没有皮重测定：请做一次：{where}</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">袋</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">休息</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">封口裂开</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">叫人</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">更换或说明标签卷</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">检查{what}</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">{what}后检查秤：{where}</translation>
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
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">核对标签，再处理扫码</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">确认日期和时间</translation>
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
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">清点上次生产的袋数：{where}</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">日期或时间存疑</translation>
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
        <source>decide about suspect bags</source>
        <translation type="unfinished">决定可疑袋</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">决定袋子的去向</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">完成</translation>
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
        <source>expired – take it off the line</source>
        <translation type="unfinished">已过期，撤下生产线</translation>
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
        <source>first label</source>
        <translation type="unfinished">第一张标签</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">下限、目标、上限</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">异物</translation>
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
        <source>gross weight</source>
        <translation type="unfinished">毛重</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">已扣留，叫质检</translation>
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
        <source>hold, no record</source>
        <translation type="unfinished">扣留，无记录</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">袋内 {mass}</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">没有应答：开机了吗，电缆插好了吗？</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">{seconds} s 后还没出来：看看会不会出来</translation>
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
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">保存、恢复或清理记录</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">标签作废</translation>
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
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">标签 {serial} 状态不明：{why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">标签 {serial} 还没出来：看打印机</translation>
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
        <source>last label</source>
        <translation type="unfinished">上一张标签</translation>
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
        <source>lead, on the scale</source>
        <translation type="unfinished">班长，称重员</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">退出全屏</translation>
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
        <source>look whether the label is whole</source>
        <translation type="unfinished">看标签是否完整</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">批次 {lot} 已扣留：撤下并换另一批：{where}</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">不认识批次 {lot}：先收货</translation>
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
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">批次 {lot}：{why}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">机器</translation>
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
        <source>metal detector</source>
        <translation type="unfinished">金属探测器</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">在线上移动批次</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">还没有 PIN 或工牌</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">这些袋子不是产品</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">没有标签卷：在 {where} 扫入</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">没有标签了：装一卷</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">缺料</translation>
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
        <source>no run is open</source>
        <translation type="unfinished">没有进行中的生产</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">没有进行中的生产：由班长开始</translation>
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
        <source>not labelled: {reason}</source>
        <translation type="unfinished">不贴标签：{reason}</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">尚未审校</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">共 {count} 袋</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">称重员：{who}</translation>
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
        <source>over capacity: take the load off</source>
        <translation type="unfinished">超载：拿下货物</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">包装员</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">安排检查</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">重印标签</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">产品温度</translation>
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
        <source>put it right, then check again</source>
        <translation type="unfinished">改正后再检查</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">质检</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">收货</translation>
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
        <source>refuse a label</source>
        <translation type="unfinished">拒绝标签</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">放行扣留品</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">审阅并签署一天</translation>
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
        <source>room temperature</source>
        <translation type="unfinished">车间温度</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">规则</translation>
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
        <source>say that an alarm is seen</source>
        <translation type="unfinished">确认已看到警报</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">说明标签去向</translation>
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
        <source>scale line</source>
        <translation type="unfinished">秤连接</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">秤显示 {mass}，以秤的示值为准</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">扫标签</translation>
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
        <source>scan the last label</source>
        <translation type="unfinished">扫最后一张标签</translation>
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
        <source>service</source>
        <translation type="unfinished">维护</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">已另放</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">设置人员、PIN 和工牌</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">正在另放：{reason}</translation>
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
        <source>ship</source>
        <translation type="unfinished">发货</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">签署生产更换</translation>
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
        <source>start a run</source>
        <translation type="unfinished">开始生产</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">停线</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">库存袋</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">撤下：{where}</translation>
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
        <source>tare</source>
        <translation type="unfinished">皮重</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">目标</translation>
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
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">磁盘已满：腾出空间后再打印</translation>
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
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">标签文件夹不见了：重新建立 {folder}</translation>
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
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">生产线停着，{reason}：按 生产，再按 更换 (F8) 继续</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">生产线停了</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">平均值低于标称</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">放下一袋前秤盘必须空</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">打印机放弃了</translation>
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
        <source>the printer: {why}</source>
        <translation type="unfinished">打印机：{why}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">队列连不上打印机：开机，检查电缆</translation>
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
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">秤检查不合格：调整后再检查：{where}</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">秤没有信号：检查电缆和电源</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">秤显示净重：清除秤上的皮重，工作站自己减袋重</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">秤显示 {unit}，本次生产用 {other}：把秤调回来</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">标签扫码已逾期：{where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">标签 {serial} 扫码不符：班长在 {where} 处理</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">工作站跟不上秤：拿下袋子并等待</translation>
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
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">这袋没有记录也没有标签：{why}</translation>
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
        <source>touch an alarm first</source>
        <translation type="unfinished">先点一个警报</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">先点自己的名字</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">上限</translation>
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
        <source>wash record</source>
        <translation type="unfinished">清洗记录</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">{count} 袋内称一个空袋</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">擦秤盘，然后置零</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">使用此屏幕</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">重量不对</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} 袋</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">检查不合格后扣留 {count} 袋：质检决定：{where}</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">已包装 {count} 袋：由班长结束</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} 张标签状态不明，第一张 {serial}：在 {where} 处理</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">另放 {count} 袋</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} 袋可疑已扣留：质检或班长决定：{where}</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what}检查不合格：改正后再检查：{where}</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{minutes} 分钟后{what}</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">现在{what}</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}：核对日期和时间，然后在 {where} 签名</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} 不能签此项</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} 没有签名：{act} 需要 PIN 或工牌</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} 不能在此签名</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}：两人在 {where} 批准标签</translation>
    </message>
</context>
</TS>
