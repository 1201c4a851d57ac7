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
        <source>BACK</source>
        <translation type="unfinished">返回</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">放上袋子</translation>
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
        <source>DO NOT SIGN</source>
        <translation type="unfinished">不签名</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">清空秤盘</translation>
    </message>
    <message>
        <source>END RUN</source>
        <translation type="unfinished">结束生产</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">首件</translation>
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
        <source>LABELS</source>
        <translation type="unfinished">标签</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">语言</translation>
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
        <source>No good bag yet</source>
        <translation type="unfinished">还没有合格袋</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">没有进行中的生产</translation>
    </message>
    <message>
        <source>O2</source>
        <translation type="unfinished">O2</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">按包装员</translation>
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
        <source>PACKER</source>
        <translation type="unfinished">包装</translation>
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
        <source>SHIPPING</source>
        <translation type="unfinished">发货</translation>
    </message>
    <message>
        <source>SIGN</source>
        <translation type="unfinished">签名</translation>
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
        <source>TARE</source>
        <translation type="unfinished">皮重</translation>
    </message>
    <message>
        <source>TRACE</source>
        <translation type="unfinished">追溯</translation>
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
        <source>WIPE PAN</source>
        <translation type="unfinished">擦秤盘</translation>
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
        <source>a check goes on at the scale: put no bag on it</source>
        <translation type="unfinished">正在检查秤：不要放袋子</translation>
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
        <source>fill a case or close a pallet</source>
        <translation type="unfinished">装箱或封托盘</translation>
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
        <source>in the bag {mass}</source>
        <translation type="unfinished">袋内 {mass}</translation>
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
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">没有标签卷：在 {where} 扫入</translation>
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
        <source>ship</source>
        <translation type="unfinished">发货</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">签署生产更换</translation>
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
        <source>take it off: {where}</source>
        <translation type="unfinished">撤下：{where}</translation>
    </message>
    <message>
        <source>take over changed settings</source>
        <translation type="unfinished">接受更改的设置</translation>
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
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">空袋 {mass} 与{what}不符：另称一个：{where}</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">空秤盘显示 {mass}：擦干净，然后置零</translation>
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
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">放下一袋前秤盘必须空</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">打印机：{why}</translation>
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
        <source>wash record</source>
        <translation type="unfinished">清洗记录</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">{count} 袋内称一个空袋</translation>
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
