<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pa_IN" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>% of nominal</source>
        <translation type="unfinished">ਨਾਮਾਤਰ ਦਾ %</translation>
    </message>
    <message>
        <source>% of the lot in bags</source>
        <translation type="unfinished">ਬੈਗਾਂ ਵਿੱਚ ਲਾਟ ਦਾ %</translation>
    </message>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 ਉਤਪਾਦ</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation type="unfinished">1 ਬੈਗ</translation>
    </message>
    <message>
        <source>1 run was purged on {day}, export {folder}</source>
        <translation type="unfinished">1 ਦੌਰ {day} ਨੂੰ ਮਿਟਾਇਆ, ਨਕਲ {folder}</translation>
    </message>
    <message>
        <source>100 % together</source>
        <translation type="unfinished">ਕੁੱਲ 100 %</translation>
    </message>
    <message>
        <source>2 LOTS</source>
        <translation type="unfinished">2 ਲਾਟ</translation>
    </message>
    <message>
        <source>3 CREW</source>
        <translation type="unfinished">3 ਟੀਮ</translation>
    </message>
    <message>
        <source>A code was scanned, but no field waits for one: open the page it is for</source>
        <translation type="unfinished">ਕੋਡ ਸਕੈਨ ਹੋਇਆ ਪਰ ਕੋਈ ਖਾਨਾ ਉਡੀਕ ਨਹੀਂ ਰਿਹਾ: ਉਸਦਾ ਪੰਨਾ ਖੋਲ੍ਹੋ</translation>
    </message>
    <message>
        <source>A copy of {sscc} comes.</source>
        <translation type="unfinished">{sscc} ਦੀ ਕਾਪੀ ਆ ਰਹੀ ਹੈ।</translation>
    </message>
    <message>
        <source>A manager approves a proposal as a new version of the product.</source>
        <translation type="unfinished">ਮੈਨੇਜਰ ਸੁਝਾਅ ਨੂੰ ਉਤਪਾਦ ਦੇ ਨਵੇਂ ਰੂਪ ਵਜੋਂ ਮਨਜ਼ੂਰ ਕਰਦਾ ਹੈ।</translation>
    </message>
    <message>
        <source>A new scale: connect it, touch LOOK, then check it with the test weights.</source>
        <translation type="unfinished">ਨਵਾਂ ਕੰਡਾ: ਜੋੜੋ, ਦੇਖੋ ਛੂਹੋ, ਫਿਰ ਵੱਟਿਆਂ ਨਾਲ ਜਾਂਚੋ।</translation>
    </message>
    <message>
        <source>A scale that is to be asked needs its request above.</source>
        <translation type="unfinished">ਪੁੱਛਣ ਵਾਲੇ ਕੰਡੇ ਲਈ ਉੱਪਰ ਸਵਾਲ ਲਿਖੋ।</translation>
    </message>
    <message>
        <source>ADD</source>
        <translation type="unfinished">ਪਾਓ</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">ਅਲਾਰਮ</translation>
    </message>
    <message>
        <source>ALL</source>
        <translation type="unfinished">ਸਾਰੇ</translation>
    </message>
    <message>
        <source>ALL DAYS</source>
        <translation type="unfinished">ਸਾਰੇ ਦਿਨ</translation>
    </message>
    <message>
        <source>ALL WEIGHED</source>
        <translation type="unfinished">ਸਾਰੇ ਤੋਲੇ</translation>
    </message>
    <message>
        <source>APPLIED</source>
        <translation type="unfinished">ਲੱਗਿਆ</translation>
    </message>
    <message>
        <source>APPROVE</source>
        <translation type="unfinished">ਮਨਜ਼ੂਰ</translation>
    </message>
    <message>
        <source>ASKED</source>
        <translation type="unfinished">ਪੁੱਛਿਆ</translation>
    </message>
    <message>
        <source>AT REST</source>
        <translation type="unfinished">ਟਿਕਿਆ</translation>
    </message>
    <message>
        <source>ATTEND</source>
        <translation type="unfinished">ਧਿਆਨ</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation type="unfinished">ਜੋੜ ਰਹੇ ਹਾਂ …</translation>
    </message>
    <message>
        <source>An open run keeps the dates it was opened with.</source>
        <translation type="unfinished">ਖੁੱਲ੍ਹਾ ਦੌਰ ਆਪਣੀਆਂ ਸ਼ੁਰੂ ਦੀਆਂ ਤਾਰੀਖਾਂ ਰੱਖਦਾ ਹੈ।</translation>
    </message>
    <message>
        <source>Arrived at</source>
        <translation type="unfinished">ਪਹੁੰਚਣ ਵੇਲੇ</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation type="unfinished">ਵਾਪਸ</translation>
    </message>
    <message>
        <source>BAG AGAIN</source>
        <translation type="unfinished">ਬੈਗ ਦੁਬਾਰਾ</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">ਬੈਗ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>BAGS</source>
        <translation type="unfinished">ਬੈਗ</translation>
    </message>
    <message>
        <source>BEFORE</source>
        <translation type="unfinished">ਪਹਿਲਾਂ</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">ਰੱਦ ਡੱਬਾ</translation>
    </message>
    <message>
        <source>BLEND LOT</source>
        <translation type="unfinished">ਮਿਸ਼ਰਣ ਲਾਟ</translation>
    </message>
    <message>
        <source>BLENDS</source>
        <translation type="unfinished">ਮਿਸ਼ਰਣ</translation>
    </message>
    <message>
        <source>BLOCKED {count}</source>
        <translation type="unfinished">ਅਟਕਿਆ {count}</translation>
    </message>
    <message>
        <source>BY DAY</source>
        <translation type="unfinished">ਦਿਨ ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>BY HOUR</source>
        <translation type="unfinished">ਘੰਟੇ ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>BY POSITION</source>
        <translation type="unfinished">ਥਾਂ ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>BY PRODUCT</source>
        <translation type="unfinished">ਉਤਪਾਦ ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>Bag {serial} and {count} around it</source>
        <translation type="unfinished">ਬੈਗ {serial} ਤੇ ਨੇੜਲੇ {count}</translation>
    </message>
    <message>
        <source>Bag {serial} was not set aside: LOOK UP shows it.</source>
        <translation type="unfinished">ਬੈਗ {serial} ਵੱਖ ਨਹੀਂ ਰੱਖਿਆ: ਲੱਭੋ ਵਿੱਚ ਦੇਖੋ।</translation>
    </message>
    <message>
        <source>Bags since the last good check of the scale before are covered by no check of it any more: QA decides about them.</source>
        <translation type="unfinished">ਪਿਛਲੇ ਕੰਡੇ ਦੀ ਆਖਰੀ ਚੰਗੀ ਜਾਂਚ ਮਗਰੋਂ ਦੇ ਬੈਗਾਂ ਦਾ ਫੈਸਲਾ QA ਕਰੇਗਾ।</translation>
    </message>
    <message>
        <source>Below T1</source>
        <translation type="unfinished">T1 ਤੋਂ ਹੇਠਾਂ</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">ਇਸ ਤੋਂ ਪਹਿਲਾਂ ਸਭ ਤੋਂ ਵਧੀਆ</translation>
    </message>
    <message>
        <source>Best before {day}</source>
        <translation type="unfinished">ਬਿਹਤਰ ਇਸ ਤੋਂ ਪਹਿਲਾਂ: {day}</translation>
    </message>
    <message>
        <source>By {what}</source>
        <translation type="unfinished">{what} ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">ਲੀਡ ਬੁਲਾਓ</translation>
    </message>
    <message>
        <source>CAME BACK</source>
        <translation type="unfinished">ਵਾਪਸ ਆਇਆ</translation>
    </message>
    <message>
        <source>CASE</source>
        <translation type="unfinished">ਡੱਬਾ</translation>
    </message>
    <message>
        <source>CASES</source>
        <translation type="unfinished">ਡੱਬੇ</translation>
    </message>
    <message>
        <source>CHANGE</source>
        <translation type="unfinished">ਬਦਲੀ</translation>
    </message>
    <message>
        <source>CHANGE, CLOCK</source>
        <translation type="unfinished">ਬਦਲੀ, ਘੜੀ</translation>
    </message>
    <message>
        <source>CHECK</source>
        <translation type="unfinished">ਜਾਂਚ</translation>
    </message>
    <message>
        <source>CHECK IT</source>
        <translation type="unfinished">ਇਸ ਨੂੰ ਜਾਂਚੋ</translation>
    </message>
    <message>
        <source>CHECK THE SCALE</source>
        <translation type="unfinished">ਕੰਡਾ ਜਾਂਚੋ</translation>
    </message>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished">ਜਾਂਚਾਂ</translation>
    </message>
    <message>
        <source>CHECKS (F4) settles it.</source>
        <translation type="unfinished">ਜਾਂਚਾਂ (F4) ਵਿੱਚ ਨਿਪਟਾਓ।</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">ਮਿਟਾਓ</translation>
    </message>
    <message>
        <source>CLEAR LINE</source>
        <translation type="unfinished">ਲਾਈਨ ਸਾਫ਼</translation>
    </message>
    <message>
        <source>CLEAR TARE</source>
        <translation type="unfinished">ਟੇਅਰ ਹਟਾਓ</translation>
    </message>
    <message>
        <source>CLOCK</source>
        <translation type="unfinished">ਘੜੀ</translation>
    </message>
    <message>
        <source>CLOSE PALLET</source>
        <translation type="unfinished">ਪੈਲੇਟ ਬੰਦ</translation>
    </message>
    <message>
        <source>COOLER TEMPERATURE</source>
        <translation type="unfinished">ਕੂਲਰ ਤਾਪਮਾਨ</translation>
    </message>
    <message>
        <source>COUNT</source>
        <translation type="unfinished">ਗਿਣਤੀ</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">ਗਿਣਿਆ</translation>
    </message>
    <message>
        <source>CUSTOMERS</source>
        <translation type="unfinished">ਗਾਹਕ</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">ਕੱਟਿਆ</translation>
    </message>
    <message>
        <source>Came</source>
        <translation type="unfinished">ਆਇਆ</translation>
    </message>
    <message>
        <source>Case {sscc} is filled; its label comes.</source>
        <translation type="unfinished">ਡੱਬਾ {sscc} ਭਰਿਆ; ਲੇਬਲ ਆ ਰਿਹਾ।</translation>
    </message>
    <message>
        <source>Checked {stage}. Bags wait meanwhile.</source>
        <translation type="unfinished">ਜਾਂਚ: {stage}। ਬੈਗ ਉਦੋਂ ਤੱਕ ਉਡੀਕਦੇ ਹਨ।</translation>
    </message>
    <message>
        <source>Choose cells, then say what they are: VALUE and, where they are there, UNIT, FLAG, CHECK. Type the digits of the scale's display, its unit, and what else is true now.</source>
        <translation type="unfinished">ਖਾਨੇ ਚੁਣੋ, ਫਿਰ ਦੱਸੋ ਕੀ ਹਨ: ਮੁੱਲ ਤੇ, ਜੇ ਹੋਣ, ਇਕਾਈ, ਫਲੈਗ, ਜਾਂਚ। ਕੰਡੇ ਦੇ ਅੰਕ, ਇਕਾਈ ਤੇ ਹੋਰ ਜੋ ਸੱਚ ਹੈ ਲਿਖੋ।</translation>
    </message>
    <message>
        <source>Choose the cells first: touch them, or use the arrow keys.</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਖਾਨੇ ਚੁਣੋ: ਛੂਹੋ, ਜਾਂ ਤੀਰ ਵਰਤੋ।</translation>
    </message>
    <message>
        <source>Commands of level 2</source>
        <translation type="unfinished">ਪੱਧਰ 2 ਦੇ ਹੁਕਮ</translation>
    </message>
    <message>
        <source>Correct the decision about {bags}?</source>
        <translation type="unfinished">{bags} ਬਾਰੇ ਫੈਸਲਾ ਸੁਧਾਰੋ?</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">ਫੈਸਲਾ</translation>
    </message>
    <message>
        <source>DESTROYED</source>
        <translation type="unfinished">ਨਸ਼ਟ</translation>
    </message>
    <message>
        <source>DIAGNOSE</source>
        <translation type="unfinished">ਜਾਂਚ ਕਰੋ</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">ਦਸਤਖਤ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>DOES NOT SUIT</source>
        <translation type="unfinished">ਠੀਕ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>DOUBT</source>
        <translation type="unfinished">ਸ਼ੱਕ</translation>
    </message>
    <message>
        <source>DOWNGRADED</source>
        <translation type="unfinished">ਦਰਜਾ ਘਟਾਇਆ</translation>
    </message>
    <message>
        <source>DRAW</source>
        <translation type="unfinished">ਚੁਣੋ</translation>
    </message>
    <message>
        <source>DUMP</source>
        <translation type="unfinished">ਸੁੱਟੋ</translation>
    </message>
    <message>
        <source>DUMPED</source>
        <translation type="unfinished">ਸੁੱਟਿਆ</translation>
    </message>
    <message>
        <source>Decided: {decision}.</source>
        <translation type="unfinished">ਫੈਸਲਾ: {decision}।</translation>
    </message>
    <message>
        <source>Disk</source>
        <translation type="unfinished">ਡਿਸਕ</translation>
    </message>
    <message>
        <source>Due at {time}.</source>
        <translation type="unfinished">ਸਮਾਂ {time}।</translation>
    </message>
    <message>
        <source>EMPTY</source>
        <translation type="unfinished">ਖਾਲੀ</translation>
    </message>
    <message>
        <source>EMPTY BAG</source>
        <translation type="unfinished">ਖਾਲੀ ਬੈਗ</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">ਪੱਲਾ ਖਾਲੀ ਕਰੋ</translation>
    </message>
    <message>
        <source>EMPTY THE PAN</source>
        <translation type="unfinished">ਪੱਲਾ ਖਾਲੀ ਕਰੋ</translation>
    </message>
    <message>
        <source>END</source>
        <translation type="unfinished">ਖਤਮ</translation>
    </message>
    <message>
        <source>END RUN</source>
        <translation type="unfinished">ਦੌਰ ਖਤਮ ਕਰੋ</translation>
    </message>
    <message>
        <source>ENTER</source>
        <translation type="unfinished">ਦਰਜ ਕਰੋ</translation>
    </message>
    <message>
        <source>EVIDENCE</source>
        <translation type="unfinished">ਸਬੂਤ</translation>
    </message>
    <message>
        <source>Everything the scale sends goes into {file}</source>
        <translation type="unfinished">ਕੰਡਾ ਜੋ ਭੇਜੇ ਸਭ {file} ਵਿੱਚ ਜਾਂਦਾ</translation>
    </message>
    <message>
        <source>FAILED</source>
        <translation type="unfinished">ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>FAILED: check again</source>
        <translation type="unfinished">ਫੇਲ੍ਹ: ਮੁੜ ਜਾਂਚੋ</translation>
    </message>
    <message>
        <source>FAILING</source>
        <translation type="unfinished">ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>FAILS</source>
        <translation type="unfinished">ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>FILL CASE</source>
        <translation type="unfinished">ਡੱਬਾ ਭਰੋ</translation>
    </message>
    <message>
        <source>FILTER</source>
        <translation type="unfinished">ਛਾਂਟੋ</translation>
    </message>
    <message>
        <source>FINISHING</source>
        <translation type="unfinished">ਮੁੱਕ ਰਿਹਾ</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">ਪਹਿਲਾ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>FLAG</source>
        <translation type="unfinished">ਫਲੈਗ</translation>
    </message>
    <message>
        <source>Fri {number}</source>
        <translation type="unfinished">ਸ਼ੁੱਕਰ {number}</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished">ਸ਼ੁੱਕਰਵਾਰ</translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished">ਕਿਸ ਤੋਂ</translation>
    </message>
    <message>
        <source>From the recording {file}: TAKE a line.</source>
        <translation type="unfinished">ਰਿਕਾਰਡਿੰਗ {file} ਤੋਂ: ਲਾਈਨ ਲਓ।</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">ਛੱਡੋ</translation>
    </message>
    <message>
        <source>GIVEN AWAY</source>
        <translation type="unfinished">ਵੱਧ ਦਿੱਤਾ</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">ਜਾਰੀ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>GOOD</source>
        <translation type="unfinished">ਠੀਕ</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation type="unfinished">ਵੱਧ ਦਿੱਤਾ</translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation type="unfinished">ਛੱਡਿਆ।</translation>
    </message>
    <message>
        <source>Given up: nothing is recorded.</source>
        <translation type="unfinished">ਛੱਡਿਆ: ਕੁਝ ਦਰਜ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>Good bags: {count} of {order}, set aside: {aside}</source>
        <translation type="unfinished">ਚੰਗੇ ਬੈਗ: {order} ਵਿੱਚੋਂ {count}, ਵੱਖ ਰੱਖੇ: {aside}</translation>
    </message>
    <message>
        <source>Good bags: {count}, set aside: {aside}</source>
        <translation type="unfinished">ਚੰਗੇ ਬੈਗ: {count}, ਵੱਖ ਰੱਖੇ: {aside}</translation>
    </message>
    <message>
        <source>HELD</source>
        <translation type="unfinished">ਰੋਕਿਆ</translation>
    </message>
    <message>
        <source>HISTORY</source>
        <translation type="unfinished">ਪਿਛਲਾ ਰਿਕਾਰਡ</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation type="unfinished">ਰੋਕੋ</translation>
    </message>
    <message>
        <source>HOLD IT</source>
        <translation type="unfinished">ਇਸਨੂੰ ਰੋਕੋ</translation>
    </message>
    <message>
        <source>HOLD STAYS</source>
        <translation type="unfinished">ਰੋਕ ਰਹੇਗੀ</translation>
    </message>
    <message>
        <source>HOLD STILL</source>
        <translation type="unfinished">ਠਹਿਰਾਓ</translation>
    </message>
    <message>
        <source>HOLDS</source>
        <translation type="unfinished">ਰੋਕਾਂ</translation>
    </message>
    <message>
        <source>HOUSE</source>
        <translation type="unfinished">ਗੋਦਾਮ</translation>
    </message>
    <message>
        <source>Held: {what}</source>
        <translation type="unfinished">ਰੋਕਿਆ: {what}</translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished">ਇੱਥੇ</translation>
    </message>
    <message>
        <source>How many bags have which net. Touch a bar to read it.</source>
        <translation type="unfinished">ਕਿੰਨੇ ਬੈਗਾਂ ਦਾ ਕਿੰਨਾ ਸ਼ੁੱਧ। ਪੜ੍ਹਨ ਲਈ ਡੰਡਾ ਛੂਹੋ।</translation>
    </message>
    <message>
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">ਮੈਂ ਦੇਖ ਲਿਆ</translation>
    </message>
    <message>
        <source>I see it there</source>
        <translation type="unfinished">ਮੈਂ ਉੱਥੇ ਦੇਖਿਆ</translation>
    </message>
    <message>
        <source>IN DOUBT</source>
        <translation type="unfinished">ਸ਼ੱਕ ਹੇਠ</translation>
    </message>
    <message>
        <source>IN USE.</source>
        <translation type="unfinished">ਵਰਤੋਂ ਵਿੱਚ।</translation>
    </message>
    <message>
        <source>INBOX</source>
        <translation type="unfinished">ਬਾਕੀ ਕੰਮ</translation>
    </message>
    <message>
        <source>INPUT LOT</source>
        <translation type="unfinished">ਕੱਚਾ ਲਾਟ</translation>
    </message>
    <message>
        <source>INPUT LOTS</source>
        <translation type="unfinished">ਕੱਚੇ ਲਾਟ</translation>
    </message>
    <message>
        <source>INSPECTOR</source>
        <translation type="unfinished">ਇੰਸਪੈਕਟਰ</translation>
    </message>
    <message>
        <source>In the settings</source>
        <translation type="unfinished">ਸੈਟਿੰਗਾਂ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">ਵਰਤੋਂ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>Is the scale on, and are baud rate and parity those of its menu?</source>
        <translation type="unfinished">ਕੰਡਾ ਚਾਲੂ ਹੈ? ਬੌਡ ਤੇ ਪੈਰਿਟੀ ਉਸਦੇ ਮੀਨੂ ਵਾਲੇ ਹਨ?</translation>
    </message>
    <message>
        <source>Issued − used − spoiled − samples − returned</source>
        <translation type="unfinished">ਦਿੱਤੇ − ਵਰਤੇ − ਖਰਾਬ − ਨਮੂਨੇ − ਮੋੜੇ</translation>
    </message>
    <message>
        <source>It cannot be released</source>
        <translation type="unfinished">ਛੱਡਿਆ ਨਹੀਂ ਜਾ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>Its lines</source>
        <translation type="unfinished">ਇਸ ਦੀਆਂ ਲਾਈਨਾਂ</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation type="unfinished">ਰੱਖੋ</translation>
    </message>
    <message>
        <source>KEEP CHART</source>
        <translation type="unfinished">ਚਾਰਟ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>KEEP LINE</source>
        <translation type="unfinished">ਲਾਈਨ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>Kept as {name} (PNG, SVG, CSV) in {folder}</source>
        <translation type="unfinished">{name} ਵਜੋਂ ਰੱਖਿਆ (PNG, SVG, CSV), {folder}</translation>
    </message>
    <message>
        <source>Key in how many bags lie in the bin.</source>
        <translation type="unfinished">ਰੱਦ ਡੱਬੇ ਵਿੱਚ ਕਿੰਨੇ ਬੈਗ ਹਨ, ਭਰੋ।</translation>
    </message>
    <message>
        <source>LABEL ON BAG</source>
        <translation type="unfinished">ਬੈਗ ਤੇ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>LABEL ROLL</source>
        <translation type="unfinished">ਲੇਬਲ ਰੋਲ</translation>
    </message>
    <message>
        <source>LABEL {state}</source>
        <translation type="unfinished">ਲੇਬਲ {state}</translation>
    </message>
    <message>
        <source>LABELS</source>
        <translation type="unfinished">ਲੇਬਲ</translation>
    </message>
    <message>
        <source>LABELS (F5) settles it.</source>
        <translation type="unfinished">ਲੇਬਲ (F5) ਵਿੱਚ ਨਿਪਟਾਓ।</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">ਭਾਸ਼ਾ</translation>
    </message>
    <message>
        <source>LAST</source>
        <translation type="unfinished">ਆਖਰੀ</translation>
    </message>
    <message>
        <source>LAST 7 DAYS</source>
        <translation type="unfinished">ਪਿਛਲੇ 7 ਦਿਨ</translation>
    </message>
    <message>
        <source>LAST DAY</source>
        <translation type="unfinished">ਪਿਛਲਾ ਦਿਨ</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">ਲੀਡ</translation>
    </message>
    <message>
        <source>LEAVE</source>
        <translation type="unfinished">ਬੰਦ ਕਰੋ</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">ਬੈਗ ਚੁੱਕੋ</translation>
    </message>
    <message>
        <source>LIFT THE BAG OFF</source>
        <translation type="unfinished">ਬੈਗ ਚੁੱਕੋ</translation>
    </message>
    <message>
        <source>LIFT THE WEIGHTS OFF</source>
        <translation type="unfinished">ਵੱਟੇ ਚੁੱਕੋ</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">ਲਾਈਨ</translation>
    </message>
    <message>
        <source>LISTEN</source>
        <translation type="unfinished">ਸੁਣੋ</translation>
    </message>
    <message>
        <source>LISTEN to the scale, or open a RECORDING; put a known weight on the pan and TAKE a line.</source>
        <translation type="unfinished">ਕੰਡਾ ਸੁਣੋ, ਜਾਂ ਰਿਕਾਰਡਿੰਗ ਖੋਲ੍ਹੋ; ਜਾਣਿਆ ਭਾਰ ਰੱਖੋ ਤੇ ਲਾਈਨ ਲਓ।</translation>
    </message>
    <message>
        <source>LOAD</source>
        <translation type="unfinished">ਲਗਾਓ</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">ਦੁਬਾਰਾ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>LOAD CLEAN</source>
        <translation type="unfinished">ਸਾਫ਼ ਲਗਾਓ</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation type="unfinished">ਦੇਖੋ</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">ਲੱਭੋ</translation>
    </message>
    <message>
        <source>LOSSES</source>
        <translation type="unfinished">ਘਾਟੇ</translation>
    </message>
    <message>
        <source>LOT</source>
        <translation type="unfinished">ਲਾਟ</translation>
    </message>
    <message>
        <source>LOTS</source>
        <translation type="unfinished">ਲਾਟ</translation>
    </message>
    <message>
        <source>Label roll {roll}: a difference of {difference} is open</source>
        <translation type="unfinished">ਲੇਬਲ ਰੋਲ {roll}: {difference} ਦਾ ਫ਼ਰਕ ਬਾਕੀ</translation>
    </message>
    <message>
        <source>Label {serial} is in doubt</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਬਾਰੇ ਸ਼ੱਕ</translation>
    </message>
    <message>
        <source>Labels in doubt</source>
        <translation type="unfinished">ਸ਼ੱਕੀ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">ਪੈਕਰ ਦੀ ਸਕ੍ਰੀਨ ਦੀ ਭਾਸ਼ਾ</translation>
    </message>
    <message>
        <source>Languages</source>
        <translation type="unfinished">ਭਾਸ਼ਾਵਾਂ</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished">ਲੀਡ</translation>
    </message>
    <message>
        <source>Lead is wanted at this line</source>
        <translation type="unfinished">ਇਸ ਲਾਈਨ 'ਤੇ ਲੀਡ ਦੀ ਲੋੜ ਹੈ</translation>
    </message>
    <message>
        <source>Lead {who}, on the scale {person}</source>
        <translation type="unfinished">ਲੀਡ {who}, ਕੰਡੇ 'ਤੇ {person}</translation>
    </message>
    <message>
        <source>Line stands: {reason}. Look, then touch</source>
        <translation type="unfinished">ਲਾਈਨ ਖੜ੍ਹੀ: {reason}। ਦੇਖੋ, ਫਿਰ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>Look, then touch</source>
        <translation type="unfinished">ਦੇਖੋ, ਫਿਰ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation type="unfinished">ਲੱਭ ਰਹੇ ਹਾਂ …</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished">ਲਾਟ</translation>
    </message>
    <message>
        <source>Lot {lot} is held, and every bag that may hold some of it.</source>
        <translation type="unfinished">ਲਾਟ {lot} ਰੋਕਿਆ, ਤੇ ਹਰ ਬੈਗ ਜਿਸ ਵਿੱਚ ਇਹ ਹੋ ਸਕਦਾ ਹੈ।</translation>
    </message>
    <message>
        <source>Lot {lot} is released, and the bags that were held with it.</source>
        <translation type="unfinished">ਲਾਟ {lot} ਛੱਡਿਆ, ਤੇ ਇਸ ਨਾਲ ਰੋਕੇ ਬੈਗ ਵੀ।</translation>
    </message>
    <message>
        <source>Lot {lot} received and held.</source>
        <translation type="unfinished">ਲਾਟ {lot} ਲਿਆ ਤੇ ਰੋਕਿਆ।</translation>
    </message>
    <message>
        <source>Lot {lot} received.</source>
        <translation type="unfinished">ਲਾਟ {lot} ਲਿਆ।</translation>
    </message>
    <message>
        <source>Lot {lot}: {move}, on record.</source>
        <translation type="unfinished">ਲਾਟ {lot}: {move}, ਦਰਜ।</translation>
    </message>
    <message>
        <source>MANAGER</source>
        <translation type="unfinished">ਮੈਨੇਜਰ</translation>
    </message>
    <message>
        <source>METAL DETECTOR</source>
        <translation type="unfinished">ਧਾਤ ਖੋਜੀ</translation>
    </message>
    <message>
        <source>MISMATCH</source>
        <translation type="unfinished">ਨਹੀਂ ਮਿਲਦਾ</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">ਹੋਰ</translation>
    </message>
    <message>
        <source>MOVING</source>
        <translation type="unfinished">ਹਿੱਲਦਾ</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation type="unfinished">ਨਿਰਮਾਤਾ ਤੇ ਮਾਡਲ</translation>
    </message>
    <message>
        <source>Max / e = {number}, class {code} allows {least} to {most}</source>
        <translation type="unfinished">Max / e = {number}, ਸ਼੍ਰੇਣੀ {code} ਵਿੱਚ {least} ਤੋਂ {most}</translation>
    </message>
    <message>
        <source>Mean needed</source>
        <translation type="unfinished">ਲੋੜੀਂਦੀ ਔਸਤ</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">ਔਸਤ ਸ਼ੁੱਧ ਭਾਰ {mass}</translation>
    </message>
    <message>
        <source>Mean so far</source>
        <translation type="unfinished">ਹੁਣ ਤੱਕ ਔਸਤ</translation>
    </message>
    <message>
        <source>Mon {number}</source>
        <translation type="unfinished">ਸੋਮ {number}</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished">ਸੋਮਵਾਰ</translation>
    </message>
    <message>
        <source>NEAR MAX</source>
        <translation type="unfinished">ਵੱਧ ਤੋਂ ਵੱਧ ਨੇੜੇ</translation>
    </message>
    <message>
        <source>NEAR THE TARE</source>
        <translation type="unfinished">ਟੇਅਰ ਦੇ ਨੇੜੇ</translation>
    </message>
    <message>
        <source>NET</source>
        <translation type="unfinished">ਸ਼ੁੱਧ</translation>
    </message>
    <message>
        <source>NEVER CAME OUT</source>
        <translation type="unfinished">ਨਿਕਲਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">ਨਵੀਂ ਰੋਕ</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation type="unfinished">ਅਗਲਾ</translation>
    </message>
    <message>
        <source>NEXT CASE</source>
        <translation type="unfinished">ਅਗਲਾ ਡੱਬਾ</translation>
    </message>
    <message>
        <source>NO FORECAST</source>
        <translation type="unfinished">ਅਨੁਮਾਨ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>NO MARKS</source>
        <translation type="unfinished">ਨਿਸ਼ਾਨ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">ਰੀਡਿੰਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>NO RUN IS OPEN</source>
        <translation type="unfinished">ਕੋਈ ਦੌਰ ਖੁੱਲ੍ਹਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>NOBODY</source>
        <translation type="unfinished">ਕੋਈ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>NOMINAL</source>
        <translation type="unfinished">ਨਾਮਾਤਰ</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation type="unfinished">ਕੋਈ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>NOT MET</source>
        <translation type="unfinished">ਪੂਰੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>NOW</source>
        <translation type="unfinished">ਹੁਣ</translation>
    </message>
    <message>
        <source>NUMBERS</source>
        <translation type="unfinished">ਅੰਕੜੇ</translation>
    </message>
    <message>
        <source>Next: {what}</source>
        <translation type="unfinished">ਅੱਗੇ: {what}</translation>
    </message>
    <message>
        <source>No alarm stands. What needs nobody is kept as an event.</source>
        <translation type="unfinished">ਕੋਈ ਅਲਾਰਮ ਨਹੀਂ। ਬਾਕੀ ਗੱਲਾਂ ਘਟਨਾ ਵਜੋਂ ਰੱਖੀਆਂ ਜਾਂਦੀਆਂ ਹਨ।</translation>
    </message>
    <message>
        <source>No bag is on record yet.</source>
        <translation type="unfinished">ਹਾਲੇ ਕੋਈ ਬੈਗ ਦਰਜ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>No bag is suspect.</source>
        <translation type="unfinished">ਕੋਈ ਬੈਗ ਸ਼ੱਕੀ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>No case stands here</source>
        <translation type="unfinished">ਇੱਥੇ ਕੋਈ ਡੱਬਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>No description yet</source>
        <translation type="unfinished">ਅਜੇ ਵੇਰਵਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>No good bag yet</source>
        <translation type="unfinished">ਹਾਲੇ ਕੋਈ ਚੰਗਾ ਬੈਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>No label is in doubt</source>
        <translation type="unfinished">ਕਿਸੇ ਲੇਬਲ ਬਾਰੇ ਸ਼ੱਕ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>No lot is on the line: scan one.</source>
        <translation type="unfinished">ਲਾਈਨ ਤੇ ਕੋਈ ਲਾਟ ਨਹੀਂ: ਸਕੈਨ ਕਰੋ।</translation>
    </message>
    <message>
        <source>No roll is in</source>
        <translation type="unfinished">ਕੋਈ ਰੋਲ ਨਹੀਂ ਲੱਗਾ</translation>
    </message>
    <message>
        <source>No run is open</source>
        <translation type="unfinished">ਕੋਈ ਦੌਰ ਖੁੱਲ੍ਹਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">ਕੋਈ ਦੌਰ ਨਹੀਂ ਚੱਲ ਰਿਹਾ</translation>
    </message>
    <message>
        <source>No target can be proposed: {why}.</source>
        <translation type="unfinished">ਕੋਈ ਟੀਚਾ ਨਹੀਂ ਸੁਝਾ ਸਕਦੇ: {why}।</translation>
    </message>
    <message>
        <source>No whole line was heard yet.</source>
        <translation type="unfinished">ਅਜੇ ਪੂਰੀ ਲਾਈਨ ਨਹੀਂ ਸੁਣੀ।</translation>
    </message>
    <message>
        <source>Not kept: {why}, {folder}</source>
        <translation type="unfinished">ਨਹੀਂ ਰੱਖਿਆ: {why}, {folder}</translation>
    </message>
    <message>
        <source>Not recorded: {why}</source>
        <translation type="unfinished">ਦਰਜ ਨਹੀਂ ਹੋਇਆ: {why}</translation>
    </message>
    <message>
        <source>Nothing is held or packed.</source>
        <translation type="unfinished">ਕੁਝ ਰੋਕਿਆ ਜਾਂ ਪੈਕ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">ਕੁਝ ਬਾਕੀ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>Nothing keeps it.</source>
        <translation type="unfinished">ਕੋਈ ਰੁਕਾਵਟ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>Nothing waits for a signature.</source>
        <translation type="unfinished">ਕੁਝ ਵੀ ਦਸਤਖਤ ਦੀ ਉਡੀਕ ਵਿੱਚ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">ਪੈਕਰ ਦੀ</translation>
    </message>
    <message>
        <source>OLD ONE DESTROYED</source>
        <translation type="unfinished">ਪੁਰਾਣਾ ਨਸ਼ਟ</translation>
    </message>
    <message>
        <source>ON ITS BAG</source>
        <translation type="unfinished">ਆਪਣੇ ਬੈਗ ਤੇ</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation type="unfinished">ਖੋਲ੍ਹੋ</translation>
    </message>
    <message>
        <source>OPEN ONLY</source>
        <translation type="unfinished">ਸਿਰਫ ਖੁੱਲ੍ਹੇ</translation>
    </message>
    <message>
        <source>ORDER DONE</source>
        <translation type="unfinished">ਆਰਡਰ ਪੂਰਾ</translation>
    </message>
    <message>
        <source>OVER</source>
        <translation type="unfinished">ਵੱਧ</translation>
    </message>
    <message>
        <source>OVERDUE {minutes} min</source>
        <translation type="unfinished">{minutes} min ਲੰਘ ਗਏ</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}</source>
        <translation type="unfinished">ਦਰਜ {bags}, ਗਿਣੇ {count}</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} fewer. Why?</source>
        <translation type="unfinished">ਦਰਜ {bags}, ਗਿਣੇ {count}: {difference} ਘੱਟ। ਕਿਉਂ?</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} more. Why?</source>
        <translation type="unfinished">ਦਰਜ {bags}, ਗਿਣੇ {count}: {difference} ਵੱਧ। ਕਿਉਂ?</translation>
    </message>
    <message>
        <source>On record; it holds from the next run on.</source>
        <translation type="unfinished">ਦਰਜ; ਅਗਲੇ ਦੌਰ ਤੋਂ ਲਾਗੂ।</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished">ਕੰਡੇ 'ਤੇ</translation>
    </message>
    <message>
        <source>Open a run first: a check is made at its loads.</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਦੌਰ ਖੋਲ੍ਹੋ: ਜਾਂਚ ਉਸ ਦੇ ਭਾਰਾਂ ਤੇ ਹੁੰਦੀ ਹੈ।</translation>
    </message>
    <message>
        <source>Order: open</source>
        <translation type="unfinished">ਆਰਡਰ: ਖੁੱਲ੍ਹਾ</translation>
    </message>
    <message>
        <source>Order: {count} bags</source>
        <translation type="unfinished">ਆਰਡਰ: {count} ਬੈਗ</translation>
    </message>
    <message>
        <source>PACKED ON</source>
        <translation type="unfinished">ਪੈਕ ਮਿਤੀ</translation>
    </message>
    <message>
        <source>PACKER</source>
        <translation type="unfinished">ਪੈਕਰ</translation>
    </message>
    <message>
        <source>PALLET</source>
        <translation type="unfinished">ਪੈਲੇਟ</translation>
    </message>
    <message>
        <source>PALLETS</source>
        <translation type="unfinished">ਪੈਲੇਟ</translation>
    </message>
    <message>
        <source>PAN WHEN EMPTY</source>
        <translation type="unfinished">ਖਾਲੀ ਪੱਲਾ</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation type="unfinished">ਪਰਚੀ</translation>
    </message>
    <message>
        <source>PASSED</source>
        <translation type="unfinished">ਪਾਸ</translation>
    </message>
    <message>
        <source>PEOPLE</source>
        <translation type="unfinished">ਲੋਕ</translation>
    </message>
    <message>
        <source>PLUS/MINUS</source>
        <translation type="unfinished">ਜੋੜ/ਘਟਾਓ</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">ਛਾਪੋ</translation>
    </message>
    <message>
        <source>PRINT AGAIN</source>
        <translation type="unfinished">ਮੁੜ ਛਾਪੋ</translation>
    </message>
    <message>
        <source>PRODUCT TEMPERATURE</source>
        <translation type="unfinished">ਉਤਪਾਦ ਤਾਪਮਾਨ</translation>
    </message>
    <message>
        <source>PROPOSE</source>
        <translation type="unfinished">ਸੁਝਾਓ</translation>
    </message>
    <message>
        <source>PROPOSE when they differ enough.</source>
        <translation type="unfinished">ਵੱਖ ਹੋਣ ਤੇ ਸੁਝਾਓ।</translation>
    </message>
    <message>
        <source>PUT AN EMPTY BAG ON</source>
        <translation type="unfinished">ਖਾਲੀ ਬੈਗ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>PUT ON {weights}</source>
        <translation type="unfinished">{weights} ਰੱਖੋ</translation>
    </message>
    <message>
        <source>PUT {serial} ON</source>
        <translation type="unfinished">{serial} ਰੱਖੋ</translation>
    </message>
    <message>
        <source>Pallet {sscc} is closed; its label comes.</source>
        <translation type="unfinished">ਪੈਲੇਟ {sscc} ਬੰਦ; ਲੇਬਲ ਆ ਰਿਹਾ।</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished">ਹਿੱਸੇ</translation>
    </message>
    <message>
        <source>Plate in the settings</source>
        <translation type="unfinished">ਸੈਟਿੰਗਾਂ ਵਿੱਚ ਪਲੇਟ</translation>
    </message>
    <message>
        <source>Print again: {what}</source>
        <translation type="unfinished">ਮੁੜ ਛਾਪੋ: {what}</translation>
    </message>
    <message>
        <source>Protocol</source>
        <translation type="unfinished">ਪ੍ਰੋਟੋਕੋਲ</translation>
    </message>
    <message>
        <source>Put another weight on, and TAKE a line at rest and one in motion too.</source>
        <translation type="unfinished">ਹੋਰ ਭਾਰ ਰੱਖੋ, ਖੜ੍ਹੀ ਤੇ ਹਿੱਲਦੀ ਲਾਈਨ ਵੀ ਲਓ।</translation>
    </message>
    <message>
        <source>Put its number into station.toml.</source>
        <translation type="unfinished">ਉਸਦਾ ਨੰਬਰ station.toml ਵਿੱਚ ਲਿਖੋ।</translation>
    </message>
    <message>
        <source>QA check</source>
        <translation type="unfinished">QA ਜਾਂਚ</translation>
    </message>
    <message>
        <source>QA decides</source>
        <translation type="unfinished">QA ਫੈਸਲਾ ਕਰੇ</translation>
    </message>
    <message>
        <source>QA decides: release all, or let the hold stay</source>
        <translation type="unfinished">QA ਫੈਸਲਾ ਕਰੇ: ਸਭ ਛੱਡੇ, ਜਾਂ ਰੋਕ ਰਹੇ</translation>
    </message>
    <message>
        <source>QA holds the button</source>
        <translation type="unfinished">QA ਬਟਨ ਦਬਾਏ</translation>
    </message>
    <message>
        <source>QA or a manager releases a lot: touch WHO and choose your name</source>
        <translation type="unfinished">QA ਜਾਂ ਮੈਨੇਜਰ ਲਾਟ ਛੱਡਦਾ ਹੈ: ਕੌਣ ਛੂਹੋ ਤੇ ਨਾਂ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>QA said go on</source>
        <translation type="unfinished">QA ਨੇ ਕਿਹਾ ਜਾਰੀ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">ਗੁਣਵੱਤਾ</translation>
    </message>
    <message>
        <source>READY</source>
        <translation type="unfinished">ਤਿਆਰ</translation>
    </message>
    <message>
        <source>REASON TO REFUSE</source>
        <translation type="unfinished">ਰੱਦ ਦਾ ਕਾਰਨ</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">ਪ੍ਰਾਪਤ ਕਰੋ</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">ਰਿਕਾਰਡ ਕਰੋ</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">ਸੁਝਾਅ ਦਰਜ ਕਰੋ</translation>
    </message>
    <message>
        <source>RECORDED</source>
        <translation type="unfinished">ਦਰਜ</translation>
    </message>
    <message>
        <source>RECORDING</source>
        <translation type="unfinished">ਰਿਕਾਰਡਿੰਗ</translation>
    </message>
    <message>
        <source>REFUSE</source>
        <translation type="unfinished">ਰੱਦ</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">ਅਭਿਆਸ</translation>
    </message>
    <message>
        <source>REJECTS</source>
        <translation type="unfinished">ਰੱਦ ਬੈਗ</translation>
    </message>
    <message>
        <source>RELEASE</source>
        <translation type="unfinished">ਛੱਡੋ</translation>
    </message>
    <message>
        <source>RELEASE ALL</source>
        <translation type="unfinished">ਸਭ ਛੱਡੋ</translation>
    </message>
    <message>
        <source>RELEASE BEFORE STEP</source>
        <translation type="unfinished">ਪਹਿਲੇ ਛੱਡੋ</translation>
    </message>
    <message>
        <source>REPORT</source>
        <translation type="unfinished">ਰਿਪੋਰਟ</translation>
    </message>
    <message>
        <source>REPRINT</source>
        <translation type="unfinished">ਮੁੜ ਛਪਾਈ</translation>
    </message>
    <message>
        <source>RETURN</source>
        <translation type="unfinished">ਮੋੜੋ</translation>
    </message>
    <message>
        <source>RETURNED</source>
        <translation type="unfinished">ਮੋੜੇ</translation>
    </message>
    <message>
        <source>REWORKED</source>
        <translation type="unfinished">ਮੁੜ ਕੰਮ</translation>
    </message>
    <message>
        <source>ROLL</source>
        <translation type="unfinished">ਰੋਲ</translation>
    </message>
    <message>
        <source>ROLL IN</source>
        <translation type="unfinished">ਰੋਲ ਲਗਾਓ</translation>
    </message>
    <message>
        <source>ROLL OUT</source>
        <translation type="unfinished">ਰੋਲ ਕੱਢੋ</translation>
    </message>
    <message>
        <source>ROOM TEMPERATURE</source>
        <translation type="unfinished">ਕਮਰੇ ਦਾ ਤਾਪਮਾਨ</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">ਦੌਰ</translation>
    </message>
    <message>
        <source>RUN, then SERVICE (F9), SWAP</source>
        <translation type="unfinished">ਦੌਰ, ਫਿਰ ਸੇਵਾ (F9), ਬਦਲੋ</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">ਦੌਰ, ਫਿਰ {door} ({key})</translation>
    </message>
    <message>
        <source>RUNS</source>
        <translation type="unfinished">ਦੌਰ</translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished">ਹੱਦ</translation>
    </message>
    <message>
        <source>Reading the record</source>
        <translation type="unfinished">ਰਿਕਾਰਡ ਪੜ੍ਹ ਰਹੇ ਹਾਂ</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">ਰਿਕਾਰਡ</translation>
    </message>
    <message>
        <source>Recorded as refused</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ ਦਰਜ</translation>
    </message>
    <message>
        <source>Recorded: {file}</source>
        <translation type="unfinished">ਰਿਕਾਰਡ ਹੋਇਆ: {file}</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ</translation>
    </message>
    <message>
        <source>Refused. Count the bags first.</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। ਪਹਿਲਾਂ ਬੈਗ ਗਿਣੋ।</translation>
    </message>
    <message>
        <source>Refused. Look at another clock and say why first.</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। ਪਹਿਲਾਂ ਹੋਰ ਘੜੀ ਦੇਖੋ ਤੇ ਕਾਰਨ ਦੱਸੋ।</translation>
    </message>
    <message>
        <source>Refused. No run is open.</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। ਕੋਈ ਦੌਰ ਖੁੱਲ੍ਹਾ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>Refused. Say which label, why, and where the old one is.</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। ਦੱਸੋ ਕਿਹੜਾ ਲੇਬਲ, ਕਿਉਂ, ਤੇ ਪੁਰਾਣਾ ਕਿੱਥੇ ਹੈ।</translation>
    </message>
    <message>
        <source>Refused. Scan the roll and key in its labels first.</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। ਪਹਿਲਾਂ ਰੋਲ ਸਕੈਨ ਕਰੋ ਤੇ ਲੇਬਲ ਗਿਣਤੀ ਭਰੋ।</translation>
    </message>
    <message>
        <source>Refused. Touch the two who sign, the lead first.</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। ਦੋਵੇਂ ਦਸਤਖਤ ਵਾਲੇ ਛੂਹੋ, ਪਹਿਲਾਂ ਲੀਡ।</translation>
    </message>
    <message>
        <source>Refused. Touch who signs.</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। ਦਸਤਖਤ ਕਰਨ ਵਾਲਾ ਛੂਹੋ।</translation>
    </message>
    <message>
        <source>Refused. Who signs? Touch WHO and choose your name.</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। ਦਸਤਖਤ ਕੌਣ ਕਰੇ? ਕੌਣ ਛੂਹੋ ਤੇ ਨਾਂ ਚੁਣੋ।</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। {why}</translation>
    </message>
    <message>
        <source>Rehearsing …</source>
        <translation type="unfinished">ਅਭਿਆਸ …</translation>
    </message>
    <message>
        <source>Roll {roll} is in. Count it out</source>
        <translation type="unfinished">ਰੋਲ {roll} ਲੱਗਾ ਹੈ। ਗਿਣ ਕੇ ਕੱਢੋ</translation>
    </message>
    <message>
        <source>Roll {roll}: why {difference}?</source>
        <translation type="unfinished">ਰੋਲ {roll}: {difference} ਕਿਉਂ?</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">ਦੌਰ ਚੱਲ ਰਿਹਾ</translation>
    </message>
    <message>
        <source>SAFE</source>
        <translation type="unfinished">ਸੁਰੱਖਿਅਤ</translation>
    </message>
    <message>
        <source>SAMPLED</source>
        <translation type="unfinished">ਨਮੂਨਾ</translation>
    </message>
    <message>
        <source>SAMPLES</source>
        <translation type="unfinished">ਨਮੂਨੇ</translation>
    </message>
    <message>
        <source>SAVE</source>
        <translation type="unfinished">ਸੰਭਾਲੋ</translation>
    </message>
    <message>
        <source>SCALE</source>
        <translation type="unfinished">ਕੰਡਾ</translation>
    </message>
    <message>
        <source>SCAN</source>
        <translation type="unfinished">ਸਕੈਨ</translation>
    </message>
    <message>
        <source>SCAN A BAG</source>
        <translation type="unfinished">ਬੈਗ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>SCAN THE FILM LOT</source>
        <translation type="unfinished">ਫਿਲਮ ਲਾਟ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>SEAL</source>
        <translation type="unfinished">ਸੀਲ ਕਰੋ</translation>
    </message>
    <message>
        <source>SEAL CHECK</source>
        <translation type="unfinished">ਸੀਲ ਜਾਂਚ</translation>
    </message>
    <message>
        <source>SERIALS</source>
        <translation type="unfinished">ਨੰਬਰ</translation>
    </message>
    <message>
        <source>SERVICE</source>
        <translation type="unfinished">ਸੇਵਾ</translation>
    </message>
    <message>
        <source>SET ASIDE</source>
        <translation type="unfinished">ਵੱਖ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>SHELVE</source>
        <translation type="unfinished">ਟਾਲੋ</translation>
    </message>
    <message>
        <source>SHIP</source>
        <translation type="unfinished">ਭੇਜੋ</translation>
    </message>
    <message>
        <source>SHIPPING</source>
        <translation type="unfinished">ਰਵਾਨਗੀ</translation>
    </message>
    <message>
        <source>SIGN</source>
        <translation type="unfinished">ਦਸਤਖਤ</translation>
    </message>
    <message>
        <source>SIGN DAY</source>
        <translation type="unfinished">ਦਿਨ 'ਤੇ ਦਸਤਖਤ</translation>
    </message>
    <message>
        <source>SIGNS</source>
        <translation type="unfinished">ਦਸਤਖਤੀ</translation>
    </message>
    <message>
        <source>SMA SCP-0499 level {code}</source>
        <translation type="unfinished">SMA SCP-0499 ਪੱਧਰ {code}</translation>
    </message>
    <message>
        <source>SPOILED</source>
        <translation type="unfinished">ਖਰਾਬ</translation>
    </message>
    <message>
        <source>SPOOLED</source>
        <translation type="unfinished">ਕਤਾਰ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>SPREAD</source>
        <translation type="unfinished">ਫੈਲਾਅ</translation>
    </message>
    <message>
        <source>START CHECK</source>
        <translation type="unfinished">ਜਾਂਚ ਸ਼ੁਰੂ</translation>
    </message>
    <message>
        <source>START OVER</source>
        <translation type="unfinished">ਮੁੜ ਸ਼ੁਰੂ</translation>
    </message>
    <message>
        <source>START RUN</source>
        <translation type="unfinished">ਦੌਰ ਸ਼ੁਰੂ ਕਰੋ</translation>
    </message>
    <message>
        <source>STARTING</source>
        <translation type="unfinished">ਸ਼ੁਰੂ ਹੋ ਰਿਹਾ ਹੈ</translation>
    </message>
    <message>
        <source>STATION</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished">ਰੋਕ</translation>
    </message>
    <message>
        <source>STOP RECORDING</source>
        <translation type="unfinished">ਰਿਕਾਰਡਿੰਗ ਰੋਕੋ</translation>
    </message>
    <message>
        <source>STOPS</source>
        <translation type="unfinished">ਰੁਕਣਾ</translation>
    </message>
    <message>
        <source>STUDY {count} BAGS</source>
        <translation type="unfinished">{count} ਬੈਗਾਂ ਦੀ ਜਾਂਚ</translation>
    </message>
    <message>
        <source>SUBMITTED</source>
        <translation type="unfinished">ਭੇਜਿਆ</translation>
    </message>
    <message>
        <source>SUSPECT BAGS</source>
        <translation type="unfinished">ਸ਼ੱਕੀ ਬੈਗ</translation>
    </message>
    <message>
        <source>SUSPECT WINDOW</source>
        <translation type="unfinished">ਸ਼ੱਕੀ ਸਮਾਂ</translation>
    </message>
    <message>
        <source>SWAP</source>
        <translation type="unfinished">ਬਦਲੋ</translation>
    </message>
    <message>
        <source>Same product?</source>
        <translation type="unfinished">ਉਹੀ ਉਤਪਾਦ?</translation>
    </message>
    <message>
        <source>Sat {number}</source>
        <translation type="unfinished">ਸ਼ਨੀ {number}</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished">ਸ਼ਨੀਵਾਰ</translation>
    </message>
    <message>
        <source>Scale {what} failed its last check</source>
        <translation type="unfinished">ਕੰਡਾ {what} ਆਖਰੀ ਜਾਂਚ ਵਿੱਚ ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>Scan a label, or type a serial or a blend lot.</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ ਕਰੋ, ਜਾਂ ਨੰਬਰ ਜਾਂ ਮਿਸ਼ਰਣ ਲਾਟ ਲਿਖੋ।</translation>
    </message>
    <message>
        <source>Scan the bags, type first..last, or touch NEXT CASE</source>
        <translation type="unfinished">ਬੈਗ ਸਕੈਨ ਕਰੋ, ਪਹਿਲਾ..ਆਖਰੀ ਲਿਖੋ, ਜਾਂ ਅਗਲਾ ਡੱਬਾ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>Scan the cases of the pallet</source>
        <translation type="unfinished">ਪੈਲੇਟ ਦੇ ਡੱਬੇ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>Scan the label on a bag</source>
        <translation type="unfinished">ਬੈਗ ਦਾ ਲੇਬਲ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>Scan the pallets and cases that leave</source>
        <translation type="unfinished">ਜਾਣ ਵਾਲੇ ਪੈਲੇਟ ਤੇ ਡੱਬੇ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation type="unfinished">ਸੀਰੀਅਲ ਨੰਬਰ</translation>
    </message>
    <message>
        <source>Settings and record are being read: no bag is taken yet</source>
        <translation type="unfinished">ਸੈਟਿੰਗਾਂ ਅਤੇ ਰਿਕਾਰਡ ਪੜ੍ਹੇ ਜਾ ਰਹੇ ਹਨ: ਅਜੇ ਕੋਈ ਬੈਗ ਨਹੀਂ ਲਿਆ ਜਾਂਦਾ</translation>
    </message>
    <message>
        <source>Shipment {number} is on record.</source>
        <translation type="unfinished">ਰਵਾਨਗੀ {number} ਦਰਜ।</translation>
    </message>
    <message>
        <source>Shipments</source>
        <translation type="unfinished">ਰਵਾਨਗੀਆਂ</translation>
    </message>
    <message>
        <source>Sign as the second person to {act}</source>
        <translation type="unfinished">ਦੂਜੇ ਵਜੋਂ ਦਸਤਖਤ ਕਰੋ: {act}</translation>
    </message>
    <message>
        <source>Sign to {act}</source>
        <translation type="unfinished">ਦਸਤਖਤ ਕਰੋ: {act}</translation>
    </message>
    <message>
        <source>Signed and on record.</source>
        <translation type="unfinished">ਦਸਤਖਤ ਹੋਏ ਤੇ ਦਰਜ।</translation>
    </message>
    <message>
        <source>Solid: mean so far, dotted: its limits. Dashed: mean of about 40 bags. Touch a bag.</source>
        <translation type="unfinished">ਪੂਰੀ: ਹੁਣ ਤੱਕ ਔਸਤ, ਬਿੰਦੂ: ਹੱਦਾਂ। ਟੁੱਟਵੀਂ: ਲਗਭਗ 40 ਬੈਗਾਂ ਦੀ ਔਸਤ। ਬੈਗ ਛੂਹੋ।</translation>
    </message>
    <message>
        <source>Start a run</source>
        <translation type="unfinished">ਦੌਰ ਸ਼ੁਰੂ ਕਰੋ</translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ</translation>
    </message>
    <message>
        <source>Stop and start the station to use it</source>
        <translation type="unfinished">ਵਰਤਣ ਲਈ ਸਟੇਸ਼ਨ ਬੰਦ ਕਰਕੇ ਚਲਾਓ</translation>
    </message>
    <message>
        <source>Study kept: mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">ਜਾਂਚ ਰੱਖੀ: ਔਸਤ {mean}, s {spread}, {count} ਬੈਗ</translation>
    </message>
    <message>
        <source>Sun {number}</source>
        <translation type="unfinished">ਐਤ {number}</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished">ਐਤਵਾਰ</translation>
    </message>
    <message>
        <source>Suspect window of {what}: {count} bags are held</source>
        <translation type="unfinished">{what} ਦਾ ਸ਼ੱਕੀ ਸਮਾਂ: {count} ਬੈਗ ਰੋਕੇ</translation>
    </message>
    <message>
        <source>T1 packs in the official sample</source>
        <translation type="unfinished">ਸਰਕਾਰੀ ਨਮੂਨੇ ਵਿੱਚ T1 ਬੈਗ</translation>
    </message>
    <message>
        <source>T1 packs of the whole batch</source>
        <translation type="unfinished">ਪੂਰੇ ਬੈਚ ਦੇ T1 ਬੈਗ</translation>
    </message>
    <message>
        <source>T2 packs in the long run</source>
        <translation type="unfinished">ਲੰਮੇ ਸਮੇਂ ਵਿੱਚ T2 ਬੈਗ</translation>
    </message>
    <message>
        <source>T2 packs in the official sample</source>
        <translation type="unfinished">ਸਰਕਾਰੀ ਨਮੂਨੇ ਵਿੱਚ T2 ਬੈਗ</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, ਨਾਮਾਤਰ</translation>
    </message>
    <message>
        <source>TAKE INTO USE</source>
        <translation type="unfinished">ਵਰਤੋਂ ਵਿੱਚ ਲਓ</translation>
    </message>
    <message>
        <source>TAKE LINE</source>
        <translation type="unfinished">ਲਾਈਨ ਲਓ</translation>
    </message>
    <message>
        <source>TAKE OUT</source>
        <translation type="unfinished">ਕੱਢੋ</translation>
    </message>
    <message>
        <source>TAKE READING</source>
        <translation type="unfinished">ਰੀਡਿੰਗ ਲਓ</translation>
    </message>
    <message>
        <source>TARE</source>
        <translation type="unfinished">ਟੇਅਰ</translation>
    </message>
    <message>
        <source>TARGET</source>
        <translation type="unfinished">ਟੀਚਾ</translation>
    </message>
    <message>
        <source>TEACH</source>
        <translation type="unfinished">ਸਿਖਾਓ</translation>
    </message>
    <message>
        <source>TELL</source>
        <translation type="unfinished">ਦੱਸੋ</translation>
    </message>
    <message>
        <source>THE BAG</source>
        <translation type="unfinished">ਇਹ ਬੈਗ</translation>
    </message>
    <message>
        <source>THE DAY</source>
        <translation type="unfinished">ਦਿਨ</translation>
    </message>
    <message>
        <source>THE SCALE FAILS: its bags are held, call maintenance</source>
        <translation type="unfinished">ਕੰਡਾ ਫੇਲ੍ਹ: ਇਸ ਦੇ ਬੈਗ ਰੋਕੇ, ਮੁਰੰਮਤ ਵਾਲੇ ਬੁਲਾਓ</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS</source>
        <translation type="unfinished">ਕੰਡਾ ਠੀਕ ਹੈ</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS, beyond its first limit: have it adjusted soon</source>
        <translation type="unfinished">ਕੰਡਾ ਠੀਕ ਹੈ, ਪਰ ਪਹਿਲੀ ਹੱਦ ਤੋਂ ਪਰੇ: ਜਲਦੀ ਠੀਕ ਕਰਵਾਓ</translation>
    </message>
    <message>
        <source>THIN</source>
        <translation type="unfinished">ਨੇੜੇ</translation>
    </message>
    <message>
        <source>THIS HOUR</source>
        <translation type="unfinished">ਇਹ ਘੰਟਾ</translation>
    </message>
    <message>
        <source>TIME</source>
        <translation type="unfinished">ਸਮਾਂ</translation>
    </message>
    <message>
        <source>TOPPED UP</source>
        <translation type="unfinished">ਪੂਰਾ ਕੀਤਾ</translation>
    </message>
    <message>
        <source>TRACE</source>
        <translation type="unfinished">ਖੋਜ</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">ਸਿਖਲਾਈ</translation>
    </message>
    <message>
        <source>TRAINING IS OVER</source>
        <translation type="unfinished">ਸਿਖਲਾਈ ਮੁੱਕ ਗਈ</translation>
    </message>
    <message>
        <source>Take a line, mark its value and say the unit first.</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਲਾਈਨ ਲਓ, ਮੁੱਲ ਤੇ ਨਿਸ਼ਾਨ ਲਾਓ ਤੇ ਇਕਾਈ ਦੱਸੋ।</translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished">ਟੀਚਾ</translation>
    </message>
    <message>
        <source>Target {target} instead of {now}, held up by {what}: {then} given away a bag instead of {old}.</source>
        <translation type="unfinished">ਟੀਚਾ {now} ਦੀ ਥਾਂ {target}, ਰੋਕ: {what}: ਹਰ ਬੈਗ {old} ਦੀ ਥਾਂ {then} ਵੱਧ।</translation>
    </message>
    <message>
        <source>The bin of {day} is counted: {count}.</source>
        <translation type="unfinished">{day} ਦਾ ਰੱਦ ਡੱਬਾ ਗਿਣਿਆ: {count}।</translation>
    </message>
    <message>
        <source>The clock</source>
        <translation type="unfinished">ਘੜੀ</translation>
    </message>
    <message>
        <source>The line is the lowest mean that holds for a spread. Touch it to read it.</source>
        <translation type="unfinished">ਲਕੀਰ: ਫੈਲਾਅ ਲਈ ਘੱਟ ਤੋਂ ਘੱਟ ਔਸਤ। ਪੜ੍ਹਨ ਲਈ ਛੂਹੋ।</translation>
    </message>
    <message>
        <source>The next check is {stage}.</source>
        <translation type="unfinished">ਅਗਲੀ ਜਾਂਚ: {stage}।</translation>
    </message>
    <message>
        <source>The port is opened again. What the scale says of itself stands beside.</source>
        <translation type="unfinished">ਪੋਰਟ ਮੁੜ ਖੁੱਲ੍ਹਿਆ। ਕੰਡਾ ਆਪਣੇ ਬਾਰੇ ਜੋ ਦੱਸੇ ਨਾਲ ਹੈ।</translation>
    </message>
    <message>
        <source>The proposal is on record. A manager approves it, as a new version.</source>
        <translation type="unfinished">ਸੁਝਾਅ ਦਰਜ। ਮੈਨੇਜਰ ਨਵੇਂ ਰੂਪ ਵਜੋਂ ਮਨਜ਼ੂਰ ਕਰੇ।</translation>
    </message>
    <message>
        <source>The recording ended: {why}</source>
        <translation type="unfinished">ਰਿਕਾਰਡਿੰਗ ਮੁੱਕੀ: {why}</translation>
    </message>
    <message>
        <source>The reject bin of {day} was not counted</source>
        <translation type="unfinished">{day} ਦਾ ਰੱਦ ਡੱਬਾ ਨਹੀਂ ਗਿਣਿਆ</translation>
    </message>
    <message>
        <source>The run ended: nothing is recorded.</source>
        <translation type="unfinished">ਦੌਰ ਮੁੱਕਿਆ: ਕੁਝ ਦਰਜ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>The run ended: the check was given up.</source>
        <translation type="unfinished">ਦੌਰ ਮੁੱਕਿਆ: ਜਾਂਚ ਛੱਡੀ ਗਈ।</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਆਪਣੀ ਰੀਡਿੰਗ ਹੀ ਮੰਨੀ ਜਾਵੇਗੀ। ਜੇ ਸਕ੍ਰੀਨ ਤੇ ਕੰਡਾ ਵੱਖਰੇ ਹੋਣ ਤਾਂ ਕੰਡਾ ਸਹੀ ਹੈ: ਰੁਕੋ ਤੇ ਲੀਡ ਨੂੰ ਬੁਲਾਓ।</translation>
    </message>
    <message>
        <source>The scan of label {serial} does not match</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਦਾ ਸਕੈਨ ਨਹੀਂ ਮਿਲਦਾ</translation>
    </message>
    <message>
        <source>The test is on record, as {what}.</source>
        <translation type="unfinished">ਟੈਸਟ ਦਰਜ ਹੋਇਆ: {what}।</translation>
    </message>
    <message>
        <source>There is no chart to keep.</source>
        <translation type="unfinished">ਰੱਖਣ ਲਈ ਚਾਰਟ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>There is no recording: make one on the page WIRE.</source>
        <translation type="unfinished">ਕੋਈ ਰਿਕਾਰਡਿੰਗ ਨਹੀਂ: ਤਾਰ ਸਫ਼ੇ ਤੇ ਬਣਾਓ।</translation>
    </message>
    <message>
        <source>There is no run before</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਕੋਈ ਦੌਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>There is nothing to keep yet.</source>
        <translation type="unfinished">ਹਾਲੇ ਰੱਖਣ ਲਈ ਕੁਝ ਨਹੀਂ।</translation>
    </message>
    <message>
        <source>This run stays as it is.</source>
        <translation type="unfinished">ਇਹ ਦੌਰ ਇਉਂ ਹੀ ਰਹੇਗਾ।</translation>
    </message>
    <message>
        <source>This screen is left at RUN, MORE, LEAVE, by somebody who may</source>
        <translation type="unfinished">ਇਹ ਸਕ੍ਰੀਨ ਦੌਰ, ਹੋਰ, ਬੰਦ ਕਰੋ ਤੇ ਅਧਿਕਾਰ ਵਾਲਾ ਹੀ ਛੱਡਦਾ</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation type="unfinished">ਧਾਗੇ</translation>
    </message>
    <message>
        <source>Thu {number}</source>
        <translation type="unfinished">ਵੀਰ {number}</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished">ਵੀਰਵਾਰ</translation>
    </message>
    <message>
        <source>Touch PASSED or FAILED.</source>
        <translation type="unfinished">ਪਾਸ ਜਾਂ ਫੇਲ੍ਹ ਛੂਹੋ।</translation>
    </message>
    <message>
        <source>Touch a line.</source>
        <translation type="unfinished">ਇੱਕ ਕਤਾਰ ਛੂਹੋ।</translation>
    </message>
    <message>
        <source>Touch the rejects it is about first.</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਰੱਦ ਬੈਗ ਛੂਹੋ।</translation>
    </message>
    <message>
        <source>Touch what becomes of it first.</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਛੂਹੋ ਕੀ ਕਰਨਾ ਹੈ।</translation>
    </message>
    <message>
        <source>Touch what is checked first.</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਛੂਹੋ ਕੀ ਜਾਂਚਣਾ ਹੈ।</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਆਪਣਾ ਨਾਂ ਛੂਹੋ।</translation>
    </message>
    <message>
        <source>Tue {number}</source>
        <translation type="unfinished">ਮੰਗਲ {number}</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished">ਮੰਗਲਵਾਰ</translation>
    </message>
    <message>
        <source>UNDO</source>
        <translation type="unfinished">ਵਾਪਸ ਕਰੋ</translation>
    </message>
    <message>
        <source>UNIT</source>
        <translation type="unfinished">ਇਕਾਈ</translation>
    </message>
    <message>
        <source>UNIT {code}</source>
        <translation type="unfinished">ਇਕਾਈ {code}</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">ਇਸ ਦਿਨ ਤੱਕ ਵਰਤੋ</translation>
    </message>
    <message>
        <source>Use by {day}</source>
        <translation type="unfinished">ਇਸ ਦਿਨ ਤੱਕ ਵਰਤੋ: {day}</translation>
    </message>
    <message>
        <source>VALUE</source>
        <translation type="unfinished">ਮੁੱਲ</translation>
    </message>
    <message>
        <source>VOIDED</source>
        <translation type="unfinished">ਰੱਦ</translation>
    </message>
    <message>
        <source>Version</source>
        <translation type="unfinished">ਵਰਜਨ</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">ਰੁਕੋ</translation>
    </message>
    <message>
        <source>WARN</source>
        <translation type="unfinished">ਚੇਤਾਵਨੀ</translation>
    </message>
    <message>
        <source>WASH RECORD</source>
        <translation type="unfinished">ਧੁਆਈ ਰਿਕਾਰਡ</translation>
    </message>
    <message>
        <source>WASTE</source>
        <translation type="unfinished">ਕੂੜਾ</translation>
    </message>
    <message>
        <source>WEIGH AN EMPTY BAG</source>
        <translation type="unfinished">ਖਾਲੀ ਬੈਗ ਤੋਲੋ</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">ਇੱਕ ਬੈਗ ਤੋਲੋ</translation>
    </message>
    <message>
        <source>WEIGHED AGAIN</source>
        <translation type="unfinished">ਮੁੜ ਤੋਲਿਆ</translation>
    </message>
    <message>
        <source>WEIGHTS</source>
        <translation type="unfinished">ਭਾਰ</translation>
    </message>
    <message>
        <source>WHO</source>
        <translation type="unfinished">ਕੌਣ</translation>
    </message>
    <message>
        <source>WHOLE RUN</source>
        <translation type="unfinished">ਪੂਰਾ ਦੌਰ</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">ਪੱਲਾ ਪੂੰਝੋ</translation>
    </message>
    <message>
        <source>WIRE</source>
        <translation type="unfinished">ਤਾਰ</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">ਹਿਸਾਬ ਲਾਓ</translation>
    </message>
    <message>
        <source>WOULD BE ACCEPTED</source>
        <translation type="unfinished">ਮਨਜ਼ੂਰ ਹੁੰਦਾ</translation>
    </message>
    <message>
        <source>WOULD NOT BE ACCEPTED</source>
        <translation type="unfinished">ਮਨਜ਼ੂਰ ਨਾ ਹੁੰਦਾ</translation>
    </message>
    <message>
        <source>Wait until the day is read.</source>
        <translation type="unfinished">ਦਿਨ ਪੜ੍ਹੇ ਜਾਣ ਤੱਕ ਉਡੀਕੋ।</translation>
    </message>
    <message>
        <source>Wed {number}</source>
        <translation type="unfinished">ਬੁੱਧ {number}</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished">ਬੁੱਧਵਾਰ</translation>
    </message>
    <message>
        <source>Weigh again in this order: net as shown, less the whole error, less even growth</source>
        <translation type="unfinished">ਇਸ ਕ੍ਰਮ ਵਿੱਚ ਮੁੜ ਤੋਲੋ: ਦਿਖਾਇਆ ਸ਼ੁੱਧ, ਪੂਰੀ ਗਲਤੀ ਘਟਾ ਕੇ, ਬਰਾਬਰ ਵਾਧਾ ਘਟਾ ਕੇ</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">ਕੀ</translation>
    </message>
    <message>
        <source>What becomes of the bags?</source>
        <translation type="unfinished">ਬੈਗਾਂ ਦਾ ਕੀ ਹੋਵੇ?</translation>
    </message>
    <message>
        <source>What becomes of {bags}?</source>
        <translation type="unfinished">{bags} ਦਾ ਕੀ ਹੋਵੇ?</translation>
    </message>
    <message>
        <source>Who decides?</source>
        <translation type="unfinished">ਫੈਸਲਾ ਕੌਣ ਕਰੇ?</translation>
    </message>
    <message>
        <source>Who is touched first signs; who is touched second witnesses or releases too</source>
        <translation type="unfinished">ਪਹਿਲਾ ਛੂਹਿਆ ਦਸਤਖਤ ਕਰੇ; ਦੂਜਾ ਗਵਾਹ ਜਾਂ ਉਹ ਵੀ ਛੱਡੇ</translation>
    </message>
    <message>
        <source>Who leads touches why the line may go on</source>
        <translation type="unfinished">ਲੀਡ ਛੂਹੇ ਕਿ ਲਾਈਨ ਕਿਉਂ ਚੱਲ ਸਕਦੀ ਹੈ</translation>
    </message>
    <message>
        <source>Why does the line stop?</source>
        <translation type="unfinished">ਲਾਈਨ ਕਿਉਂ ਰੁਕੀ?</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">ਕਿਉਂ ਵੱਖ ਰੱਖਿਆ?</translation>
    </message>
    <message>
        <source>Why? Choose or type the reason.</source>
        <translation type="unfinished">ਕਿਉਂ? ਕਾਰਨ ਚੁਣੋ ਜਾਂ ਲਿਖੋ।</translation>
    </message>
    <message>
        <source>Working a target out from the bags …</source>
        <translation type="unfinished">ਬੈਗਾਂ ਤੋਂ ਟੀਚਾ ਕੱਢ ਰਹੇ ਹਾਂ …</translation>
    </message>
    <message>
        <source>Working a target out from the bags: {count} tried …</source>
        <translation type="unfinished">ਬੈਗਾਂ ਤੋਂ ਟੀਚਾ ਕੱਢ ਰਹੇ ਹਾਂ: {count} ਪਰਖੇ …</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation type="unfinished">ਲਿਖ ਰਹੇ …</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation type="unfinished">ਲਿਖਿਆ: {file}</translation>
    </message>
    <message>
        <source>Written: {file} and {count} more in {folder}</source>
        <translation type="unfinished">ਲਿਖੇ: {file} ਤੇ {count} ਹੋਰ, {folder}</translation>
    </message>
    <message>
        <source>YIELD OF LOTS</source>
        <translation type="unfinished">ਲਾਟਾਂ ਦੀ ਉਪਜ</translation>
    </message>
    <message>
        <source>ZERO</source>
        <translation type="unfinished">ਜ਼ੀਰੋ</translation>
    </message>
    <message>
        <source>Zero stepped by {step} between {before} and {after}.</source>
        <translation type="unfinished">ਜ਼ੀਰੋ {before} ਤੇ {after} ਵਿਚਕਾਰ {step} ਹਿੱਲਿਆ।</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">ਪੱਲੇ 'ਤੇ ਬੈਗ ਹੈ: ਪੂਰਾ ਕਰੋ, ਚੁੱਕੋ, ਫਿਰ ਦੌਰ ਖਤਮ ਕਰੋ</translation>
    </message>
    <message>
        <source>a bag that is {what} has no new bag</source>
        <translation type="unfinished">{what} ਬੈਗ ਦਾ ਨਵਾਂ ਬੈਗ ਨਹੀਂ ਹੁੰਦਾ</translation>
    </message>
    <message>
        <source>a bag that is {what} wants a witness: a second person signs</source>
        <translation type="unfinished">{what} ਬੈਗ ਲਈ ਗਵਾਹ: ਦੂਜਾ ਬੰਦਾ ਦਸਤਖਤ ਕਰੇ</translation>
    </message>
    <message>
        <source>a case was packed short or over</source>
        <translation type="unfinished">ਇੱਕ ਡੱਬੇ ਵਿੱਚ ਘੱਟ ਜਾਂ ਵੱਧ</translation>
    </message>
    <message>
        <source>a check failed</source>
        <translation type="unfinished">ਜਾਂਚ ਫੇਲ੍ਹ ਹੋਈ</translation>
    </message>
    <message>
        <source>a check goes on at the scale: put no bag on it</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਜਾਂਚ ਚੱਲ ਰਹੀ ਹੈ: ਬੈਗ ਨਾ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>a check is due soon</source>
        <translation type="unfinished">ਜਾਂਚ ਜਲਦੀ ਹੋਣੀ ਹੈ</translation>
    </message>
    <message>
        <source>a check is overdue</source>
        <translation type="unfinished">ਜਾਂਚ ਵਿੱਚ ਦੇਰੀ</translation>
    </message>
    <message>
        <source>a check needs test weights: name at least one</source>
        <translation type="unfinished">ਜਾਂਚ ਲਈ ਵੱਟੇ ਚਾਹੀਦੇ: ਘੱਟੋ-ਘੱਟ ਇੱਕ ਲਿਖੋ</translation>
    </message>
    <message>
        <source>a copy was printed</source>
        <translation type="unfinished">ਇੱਕ ਕਾਪੀ ਛਪੀ</translation>
    </message>
    <message>
        <source>a cover is open: close it</source>
        <translation type="unfinished">ਢੱਕਣ ਖੁੱਲ੍ਹਾ ਹੈ: ਬੰਦ ਕਰੋ</translation>
    </message>
    <message>
        <source>a decision needs a reason: choose or write why</source>
        <translation type="unfinished">ਫੈਸਲੇ ਲਈ ਕਾਰਨ ਚਾਹੀਦਾ: ਚੁਣੋ ਜਾਂ ਲਿਖੋ</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">ਦਰਵਾਜ਼ਾ ਖੁੱਲ੍ਹਾ ਹੈ: ਬੰਦ ਕਰੋ</translation>
    </message>
    <message>
        <source>a figure</source>
        <translation type="unfinished">ਅੰਕ</translation>
    </message>
    <message>
        <source>a forecast needs at least two packs</source>
        <translation type="unfinished">ਅਨੁਮਾਨ ਲਈ ਘੱਟੋ ਘੱਟ ਦੋ ਬੈਗ</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">ਰੋਕਿਆ ਲਾਟ ਲਾਈਨ 'ਤੇ ਹੈ</translation>
    </message>
    <message>
        <source>a hold needs a reason: write why</source>
        <translation type="unfinished">ਰੋਕਣ ਲਈ ਕਾਰਨ ਚਾਹੀਦਾ: ਲਿਖੋ</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">ਲੇਬਲ ਨਹੀਂ ਮਿਲਦਾ</translation>
    </message>
    <message>
        <source>a load was taken for zero when the scale came back: with the pan empty set the scale to zero, or switch it off and on</source>
        <translation type="unfinished">ਕੰਡਾ ਮੁੜਨ ਵੇਲੇ ਭਾਰ ਨੂੰ ਜ਼ੀਰੋ ਮੰਨਿਆ ਗਿਆ: ਖਾਲੀ ਪੱਲੇ ਨਾਲ ਜ਼ੀਰੋ ਕਰੋ, ਜਾਂ ਬੰਦ ਕਰਕੇ ਚਾਲੂ ਕਰੋ</translation>
    </message>
    <message>
        <source>a lot ends soon</source>
        <translation type="unfinished">ਲਾਟ ਜਲਦੀ ਮੁੱਕੇਗਾ</translation>
    </message>
    <message>
        <source>a lot should be empty</source>
        <translation type="unfinished">ਲਾਟ ਖਾਲੀ ਹੋਣਾ ਚਾਹੀਦਾ</translation>
    </message>
    <message>
        <source>a new bag</source>
        <translation type="unfinished">ਨਵਾਂ ਬੈਗ</translation>
    </message>
    <message>
        <source>a new code is made</source>
        <translation type="unfinished">ਨਵਾਂ ਕੋਡ ਬਣੇਗਾ</translation>
    </message>
    <message>
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">ਨਵਾਂ ਰੋਲ ਪਹਿਲੇ ਲੇਬਲ ਨਾਲ ਸ਼ੁਰੂ ਹੁੰਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>a numbered copy</source>
        <translation type="unfinished">ਨੰਬਰ ਵਾਲੀ ਕਾਪੀ</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">ਵਿਰਾਮ</translation>
    </message>
    <message>
        <source>a release needs a reason: write why</source>
        <translation type="unfinished">ਛੱਡਣ ਲਈ ਕਾਰਨ ਚਾਹੀਦਾ: ਲਿਖੋ</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">ਦੌਰ ਚੱਲ ਰਿਹਾ ਹੈ: ਅਗਲੇ ਤੋਂ ਪਹਿਲਾਂ ਖਤਮ ਕਰੋ</translation>
    </message>
    <message>
        <source>a run needs a lead and a person on the scale</source>
        <translation type="unfinished">ਦੌਰ ਲਈ ਲੀਡ ਤੇ ਕੰਡੇ ਤੇ ਬੰਦਾ ਚਾਹੀਦਾ</translation>
    </message>
    <message>
        <source>a scale that says nothing</source>
        <translation type="unfinished">ਚੁੱਪ ਕੰਡਾ</translation>
    </message>
    <message>
        <source>a suspect window of {what} is open ({count} bags)</source>
        <translation type="unfinished">{what} ਦਾ ਸ਼ੱਕੀ ਸਮਾਂ ਬਾਕੀ ({count} ਬੈਗ)</translation>
    </message>
    <message>
        <source>a version is not refused</source>
        <translation type="unfinished">ਵਰਜਨ ਨਾਮਨਜ਼ੂਰ ਨਹੀਂ ਹੁੰਦਾ</translation>
    </message>
    <message>
        <source>a weight every {gap} ms</source>
        <translation type="unfinished">ਹਰ {gap} ms ਭਾਰ</translation>
    </message>
    <message>
        <source>a whole run is not dumped: hold its bags first</source>
        <translation type="unfinished">ਪੂਰਾ ਦੌਰ ਨਹੀਂ ਸੁੱਟਦੇ: ਪਹਿਲਾਂ ਬੈਗ ਰੋਕੋ</translation>
    </message>
    <message>
        <source>about {mass} in bags of {loaded} loaded</source>
        <translation type="unfinished">ਪਾਏ {loaded} ਵਿੱਚੋਂ ਲਗਭਗ {mass} ਬੈਗਾਂ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>above the highest of the description, {number}</source>
        <translation type="unfinished">ਦੱਸੇ ਵੱਧ ਤੋਂ ਵੱਧ {number} ਤੋਂ ਉੱਪਰ</translation>
    </message>
    <message>
        <source>adds up</source>
        <translation type="unfinished">ਹਿਸਾਬ ਠੀਕ</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">ਰੋਕ ਤੋਂ ਬਾਅਦ</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation type="unfinished">ਅੱਗੇ</translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished">ਹਵਾ</translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished">ਸਾਰੇ</translation>
    </message>
    <message>
        <source>all 999 lot codes of {day} are used: give a code by hand</source>
        <translation type="unfinished">{day} ਦੇ ਸਾਰੇ 999 ਲਾਟ ਕੋਡ ਵਰਤੇ ਗਏ: ਕੋਡ ਹੱਥੀਂ ਦਿਓ</translation>
    </message>
    <message>
        <source>all days</source>
        <translation type="unfinished">ਸਾਰੇ ਦਿਨ</translation>
    </message>
    <message>
        <source>all found</source>
        <translation type="unfinished">ਸਾਰੇ ਮਿਲੇ</translation>
    </message>
    <message>
        <source>all loads are taken</source>
        <translation type="unfinished">ਸਾਰੇ ਭਾਰ ਲਏ ਗਏ</translation>
    </message>
    <message>
        <source>all reviewed</source>
        <translation type="unfinished">ਸਭ ਦੇਖੇ ਗਏ</translation>
    </message>
    <message>
        <source>all {count} lines are weights: compare them with what the scale showed</source>
        <translation type="unfinished">ਸਾਰੀਆਂ {count} ਲਾਈਨਾਂ ਭਾਰ ਹਨ: ਕੰਡੇ ਨਾਲ ਮਿਲਾਓ</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation type="unfinished">ਇਜਾਜ਼ਤ</translation>
    </message>
    <message>
        <source>allowed {floor} to {upper}, T1 {t1}, T2 {t2}</source>
        <translation type="unfinished">ਇਜਾਜ਼ਤ {floor} ਤੋਂ {upper}, T1 {t1}, T2 {t2}</translation>
    </message>
    <message>
        <source>an aid to the inspector, no official result</source>
        <translation type="unfinished">ਇੰਸਪੈਕਟਰ ਦੀ ਮਦਦ, ਸਰਕਾਰੀ ਨਤੀਜਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>an alarm is not shelved for {minutes} minutes: allowed are {allowed}</source>
        <translation type="unfinished">ਅਲਾਰਮ {minutes} ਮਿੰਟ ਨਹੀਂ ਟਲਦਾ: ਇਜਾਜ਼ਤ {allowed}</translation>
    </message>
    <message>
        <source>an empty bag weighs {mass}, {more} more than the tare taken off</source>
        <translation type="unfinished">ਖਾਲੀ ਬੈਗ {mass}, ਘਟਾਈ ਟੇਅਰ ਤੋਂ {more} ਵੱਧ</translation>
    </message>
    <message>
        <source>an order of {count} bags: give 1 or more, or leave it open</source>
        <translation type="unfinished">{count} ਬੈਗਾਂ ਦਾ ਆਰਡਰ: 1 ਜਾਂ ਵੱਧ ਦਿਓ, ਜਾਂ ਖੁੱਲ੍ਹਾ ਛੱਡੋ</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished">ਤੇ {count} ਹੋਰ</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">ਤੇ {count} ਹੋਰ, ਹੇਠਾਂ</translation>
    </message>
    <message>
        <source>another code was scanned</source>
        <translation type="unfinished">ਕੋਈ ਹੋਰ ਕੋਡ ਸਕੈਨ ਹੋਇਆ</translation>
    </message>
    <message>
        <source>another device is at {code}</source>
        <translation type="unfinished">{code} ਉੱਤੇ ਹੋਰ ਯੰਤਰ ਹੈ</translation>
    </message>
    <message>
        <source>another one is set</source>
        <translation type="unfinished">ਹੋਰ ਲੱਗਾ ਹੈ</translation>
    </message>
    <message>
        <source>another program has it: close that program, or name another port</source>
        <translation type="unfinished">ਹੋਰ ਪ੍ਰੋਗਰਾਮ ਕੋਲ ਹੈ: ਉਹ ਬੰਦ ਕਰੋ, ਜਾਂ ਹੋਰ ਪੋਰਟ ਲਿਖੋ</translation>
    </message>
    <message>
        <source>another scale is here, {here}; in use is {known}: take it into use, {where}</source>
        <translation type="unfinished">ਹੋਰ ਕੰਡਾ ਹੈ, {here}; ਵਰਤੋਂ ਵਿੱਚ {known}: ਇਸ ਨੂੰ ਵਰਤੋਂ ਵਿੱਚ ਲਓ, {where}</translation>
    </message>
    <message>
        <source>any number</source>
        <translation type="unfinished">ਕੋਈ ਵੀ ਗਿਣਤੀ</translation>
    </message>
    <message>
        <source>applied</source>
        <translation type="unfinished">ਲੱਗਿਆ</translation>
    </message>
    <message>
        <source>approve a label</source>
        <translation type="unfinished">ਲੇਬਲ ਮਨਜ਼ੂਰ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>approve a product version</source>
        <translation type="unfinished">ਉਤਪਾਦ ਦਾ ਰੂਪ ਮਨਜ਼ੂਰ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>approve or refuse a target</source>
        <translation type="unfinished">ਟੀਚਾ ਮਨਜ਼ੂਰ ਜਾਂ ਨਾਮਨਜ਼ੂਰ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>approved</source>
        <translation type="unfinished">ਮਨਜ਼ੂਰ</translation>
    </message>
    <message>
        <source>as far as one approval goes</source>
        <translation type="unfinished">ਇੱਕ ਮਨਜ਼ੂਰੀ ਜਿੰਨੀ</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">ਜਿਵੇਂ ਮਿਲਿਆ</translation>
    </message>
    <message>
        <source>as left</source>
        <translation type="unfinished">ਜਿਵੇਂ ਛੱਡਿਆ</translation>
    </message>
    <message>
        <source>as left, after its adjustment</source>
        <translation type="unfinished">ਠੀਕ ਕਰਨ ਤੋਂ ਬਾਅਦ</translation>
    </message>
    <message>
        <source>as people.toml says</source>
        <translation type="unfinished">people.toml ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation type="unfinished">ਜਿਵੇਂ ਤੋਲਿਆ</translation>
    </message>
    <message>
        <source>asked by, as in W\r\n</source>
        <translation type="unfinished">ਮੰਗ, ਜਿਵੇਂ W\r\n</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">ਲਾਈਨ ਨੂੰ ਪੁੱਛਿਆ …</translation>
    </message>
    <message>
        <source>at least {least} {unit}</source>
        <translation type="unfinished">ਘੱਟੋ ਘੱਟ {least} {unit}</translation>
    </message>
    <message>
        <source>at most {most} {unit}</source>
        <translation type="unfinished">ਵੱਧ ਤੋਂ ਵੱਧ {most} {unit}</translation>
    </message>
    <message>
        <source>at once</source>
        <translation type="unfinished">ਹੁਣੇ ਤੋਂ</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">ਬੇਤਰਤੀਬ</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation type="unfinished">ਖੜ੍ਹਾ</translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">ਪਿੱਛੇ</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">ਬੈਗ</translation>
    </message>
    <message>
        <source>bag of the run</source>
        <translation type="unfinished">ਦੌਰ ਦਾ ਬੈਗ</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">ਬੈਗ {code}, ਫਿਲਮ ਲਾਟ {lot} ਦੀ ਟੇਅਰ ਜਾਂਚ ਨਹੀਂ: ਕਰੋ: {where}</translation>
    </message>
    <message>
        <source>bag {code}: rework of {lot}, last day {day}</source>
        <translation type="unfinished">ਬੈਗ {code}: {lot} ਦਾ ਮੁੜ ਕੰਮ, ਆਖਰੀ ਦਿਨ {day}</translation>
    </message>
    <message>
        <source>bag {serial} has had {copies} already: the lead signs for the next one</source>
        <translation type="unfinished">ਬੈਗ {serial} ਨੂੰ {copies} ਮਿਲ ਚੁੱਕੀ: ਅਗਲੀ ਲਈ ਲੀਡ ਦਸਤਖਤ ਕਰੇ</translation>
    </message>
    <message>
        <source>bag {serial} has had {count} copies: set it aside</source>
        <translation type="unfinished">ਬੈਗ {serial} ਦੀਆਂ {count} ਕਾਪੀਆਂ ਹੋ ਗਈਆਂ: ਵੱਖ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>bag {serial} is held: it gets no label before QA has released it</source>
        <translation type="unfinished">ਬੈਗ {serial} ਰੋਕਿਆ: QA ਦੇ ਛੱਡਣ ਤੱਕ ਲੇਬਲ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>bag {serial} is of blend lot {lot}, the case of {other}: close this case and begin another</source>
        <translation type="unfinished">ਬੈਗ {serial} ਮਿਸ਼ਰਣ ਲਾਟ {lot} ਦਾ, ਡੱਬਾ {other} ਦਾ: ਇਹ ਡੱਬਾ ਬੰਦ ਕਰੋ ਤੇ ਨਵਾਂ ਸ਼ੁਰੂ ਕਰੋ</translation>
    </message>
    <message>
        <source>bag {serial} is {what}: scan the label of the new bag</source>
        <translation type="unfinished">ਬੈਗ {serial} {what}: ਨਵੇਂ ਬੈਗ ਦਾ ਲੇਬਲ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>bag {serial} lies under the hold of {what}: have it released first, or dump it</source>
        <translation type="unfinished">ਬੈਗ {serial} {what} ਦੀ ਰੋਕ ਹੇਠ ਹੈ: ਪਹਿਲਾਂ ਰੋਕ ਛੁਡਾਓ, ਜਾਂ ਸੁੱਟੋ</translation>
    </message>
    <message>
        <source>bag {serial} was picked already</source>
        <translation type="unfinished">ਬੈਗ {serial} ਪਹਿਲਾਂ ਹੀ ਚੁਣਿਆ</translation>
    </message>
    <message>
        <source>bag {serial} was scanned already</source>
        <translation type="unfinished">ਬੈਗ {serial} ਪਹਿਲਾਂ ਹੀ ਸਕੈਨ</translation>
    </message>
    <message>
        <source>bag, case, pallet or lot</source>
        <translation type="unfinished">ਬੈਗ, ਡੱਬਾ, ਪੈਲੇਟ ਜਾਂ ਲਾਟ</translation>
    </message>
    <message>
        <source>bag, record</source>
        <translation type="unfinished">ਬੈਗ, ਰਿਕਾਰਡ</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">ਬੈਗ</translation>
    </message>
    <message>
        <source>bags are taken again: {why}</source>
        <translation type="unfinished">ਬੈਗ ਮੁੜ ਲਏ ਜਾਂਦੇ ਹਨ: {why}</translation>
    </message>
    <message>
        <source>bags left on the line were set aside or cooled</source>
        <translation type="unfinished">ਲਾਈਨ ਤੇ ਰਹੇ ਬੈਗ ਵੱਖ ਜਾਂ ਠੰਢੇ ਕੀਤੇ</translation>
    </message>
    <message>
        <source>bags since then looked at</source>
        <translation type="unfinished">ਉਸ ਤੋਂ ਬਾਅਦ ਦੇ ਬੈਗ ਦੇਖੇ</translation>
    </message>
    <message>
        <source>before bag {count}</source>
        <translation type="unfinished">ਬੈਗ {count} ਤੋਂ ਪਹਿਲਾਂ</translation>
    </message>
    <message>
        <source>below T1</source>
        <translation type="unfinished">T1 ਤੋਂ ਹੇਠਾਂ</translation>
    </message>
    <message>
        <source>below T1: {count} of at most {most}</source>
        <translation type="unfinished">T1 ਤੋਂ ਹੇਠਾਂ: {count}, ਵੱਧ ਤੋਂ ਵੱਧ {most}</translation>
    </message>
    <message>
        <source>below T2</source>
        <translation type="unfinished">T2 ਤੋਂ ਹੇਠਾਂ</translation>
    </message>
    <message>
        <source>below T2: {count}</source>
        <translation type="unfinished">T2 ਤੋਂ ਹੇਠਾਂ: {count}</translation>
    </message>
    <message>
        <source>below T2: {count} of at most {most}</source>
        <translation type="unfinished">T2 ਤੋਂ ਹੇਠਾਂ: {count}, ਵੱਧ ਤੋਂ ਵੱਧ {most}</translation>
    </message>
    <message>
        <source>below floor</source>
        <translation type="unfinished">ਹੇਠਲੀ ਹੱਦ ਤੋਂ ਘੱਟ</translation>
    </message>
    <message>
        <source>below the lowest of the description, {number}</source>
        <translation type="unfinished">ਦੱਸੇ ਘੱਟੋ-ਘੱਟ {number} ਤੋਂ ਹੇਠਾਂ</translation>
    </message>
    <message>
        <source>between the fields stands {one} and also {other}: mark what changes</source>
        <translation type="unfinished">ਖਾਨਿਆਂ ਵਿਚਕਾਰ {one} ਤੇ {other}: ਜੋ ਬਦਲਦਾ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>bin and belt empty</source>
        <translation type="unfinished">ਬਿਨ ਤੇ ਬੈਲਟ ਖਾਲੀ</translation>
    </message>
    <message>
        <source>bin count</source>
        <translation type="unfinished">ਰੱਦ ਡੱਬੇ ਦੀ ਗਿਣਤੀ</translation>
    </message>
    <message>
        <source>blend</source>
        <translation type="unfinished">ਮਿਸ਼ਰਣ</translation>
    </message>
    <message>
        <source>blend lot</source>
        <translation type="unfinished">ਮਿਸ਼ਰਣ ਲਾਟ</translation>
    </message>
    <message>
        <source>blend lot code</source>
        <translation type="unfinished">ਮਿਸ਼ਰਣ ਲਾਟ ਕੋਡ</translation>
    </message>
    <message>
        <source>blend {lot}, use-by {day}</source>
        <translation type="unfinished">ਮਿਸ਼ਰਣ {lot}, {day} ਤੱਕ ਵਰਤੋ</translation>
    </message>
    <message>
        <source>both on the label</source>
        <translation type="unfinished">ਦੋਵੇਂ ਲੇਬਲ ਤੇ</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">ਬਰੇਕ</translation>
    </message>
    <message>
        <source>burst after its label, destroyed</source>
        <translation type="unfinished">ਲੇਬਲ ਬਾਅਦ ਫਟਿਆ, ਨਸ਼ਟ</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">ਸੀਲ ਖੁੱਲ੍ਹੀ</translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished">ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>by the record</source>
        <translation type="unfinished">ਰਿਕਾਰਡ ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>by {code}</source>
        <translation type="unfinished">{code} ਵੱਲੋਂ</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity ({here}), and that this is the scale</source>
        <translation type="unfinished">ਬਾਈਟ ਆਉਂਦੇ ਪਰ ਕੋਈ ਲਾਈਨ ਸ਼ੁਰੂ ਜਾਂ ਖਤਮ ਨਹੀਂ ਹੁੰਦੀ: ਬੌਡ ਤੇ ਪੈਰਿਟੀ ਦੇਖੋ ({here}), ਤੇ ਕਿ ਇਹ ਕੰਡਾ ਹੀ ਹੈ</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity of the converter, and that this is the scale</source>
        <translation type="unfinished">ਬਾਈਟ ਆਉਂਦੇ ਪਰ ਕੋਈ ਲਾਈਨ ਸ਼ੁਰੂ ਜਾਂ ਖਤਮ ਨਹੀਂ ਹੁੰਦੀ: ਕਨਵਰਟਰ ਦਾ ਬੌਡ ਤੇ ਪੈਰਿਟੀ ਦੇਖੋ, ਤੇ ਕਿ ਇਹ ਕੰਡਾ ਹੀ ਹੈ</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity ({here})</source>
        <translation type="unfinished">ਬਾਈਟ ਆਉਂਦੇ ਪਰ ਕੋਈ ਫਰੇਮ ਨਹੀਂ: ਬੌਡ ਤੇ ਪੈਰਿਟੀ ਦੇਖੋ ({here})</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity of the converter</source>
        <translation type="unfinished">ਬਾਈਟ ਆਉਂਦੇ ਪਰ ਕੋਈ ਫਰੇਮ ਨਹੀਂ: ਕਨਵਰਟਰ ਦਾ ਬੌਡ ਤੇ ਪੈਰਿਟੀ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>bytes that belong to no frame</source>
        <translation type="unfinished">ਕਿਸੇ ਫਰੇਮ ਦੇ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>bytes that belong to no line</source>
        <translation type="unfinished">ਕਿਸੇ ਲਾਈਨ ਦੇ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>call QA</source>
        <translation type="unfinished">QA ਨੂੰ ਬੁਲਾਓ</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">ਕਿਸੇ ਨੂੰ ਬੁਲਾਉਣਾ</translation>
    </message>
    <message>
        <source>case</source>
        <translation type="unfinished">ਡੱਬਾ</translation>
    </message>
    <message>
        <source>case opened</source>
        <translation type="unfinished">ਡੱਬਾ ਖੋਲ੍ਹਿਆ</translation>
    </message>
    <message>
        <source>case {code}</source>
        <translation type="unfinished">ਡੱਬਾ {code}</translation>
    </message>
    <message>
        <source>category-b</source>
        <translation type="unfinished">ਸ਼੍ਰੇਣੀ B</translation>
    </message>
    <message>
        <source>centre of zero</source>
        <translation type="unfinished">ਜ਼ੀਰੋ ਦਾ ਕੇਂਦਰ</translation>
    </message>
    <message>
        <source>chance to pass the official test</source>
        <translation type="unfinished">ਸਰਕਾਰੀ ਜਾਂਚ ਪਾਸ ਹੋਣ ਦੀ ਸੰਭਾਵਨਾ</translation>
    </message>
    <message>
        <source>change every {count} ms</source>
        <translation type="unfinished">ਹਰ {count} ms ਬਦਲਦੇ</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">ਲੇਬਲ ਰੋਲ ਬਦਲਣਾ ਜਾਂ ਸਮਝਾਉਣਾ</translation>
    </message>
    <message>
        <source>changed after weighing</source>
        <translation type="unfinished">ਤੋਲਣ ਮਗਰੋਂ ਬਦਲਿਆ</translation>
    </message>
    <message>
        <source>changed after weighing: {net} is recorded, {found} is on the pan</source>
        <translation type="unfinished">ਤੋਲਣ ਮਗਰੋਂ ਬਦਲਿਆ: ਦਰਜ {net}, ਪੱਲੇ ਤੇ {found}</translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished">ਜਾਂਚ</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">{what} ਦੀ ਜਾਂਚ</translation>
    </message>
    <message>
        <source>check the plug</source>
        <translation type="unfinished">ਪਲੱਗ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>check the plug, the cable and the {what}'s power</source>
        <translation type="unfinished">ਪਲੱਗ, ਤਾਰ ਤੇ ਬਿਜਲੀ ਦੇਖੋ ({what})</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">{what} ਤੋਂ ਬਾਅਦ ਕੰਡਾ ਜਾਂਚੋ: {where}</translation>
    </message>
    <message>
        <source>checked again, good</source>
        <translation type="unfinished">ਮੁੜ ਜਾਂਚਿਆ, ਠੀਕ</translation>
    </message>
    <message>
        <source>checked was {known}, here is {found}: CHECK IT again</source>
        <translation type="unfinished">ਜਾਂਚਿਆ ਸੀ {known}, ਇੱਥੇ ਹੈ {found}: ਫਿਰ ਇਸ ਨੂੰ ਜਾਂਚੋ</translation>
    </message>
    <message>
        <source>checking …</source>
        <translation type="unfinished">ਜਾਂਚ ਹੋ ਰਹੀ …</translation>
    </message>
    <message>
        <source>checks made</source>
        <translation type="unfinished">ਹੋਈਆਂ ਜਾਂਚਾਂ</translation>
    </message>
    <message>
        <source>checksum {code} does not agree</source>
        <translation type="unfinished">ਜੋੜ {code} ਨਹੀਂ ਮਿਲਦਾ</translation>
    </message>
    <message>
        <source>choose a lot of {component}</source>
        <translation type="unfinished">{component} ਦਾ ਲਾਟ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>choose a product</source>
        <translation type="unfinished">ਉਤਪਾਦ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>choose the product first, then its lots</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਉਤਪਾਦ ਚੁਣੋ, ਫਿਰ ਲਾਟ</translation>
    </message>
    <message>
        <source>class {code}</source>
        <translation type="unfinished">ਸ਼੍ਰੇਣੀ {code}</translation>
    </message>
    <message>
        <source>class {code} knows no scale interval of {interval} (R 76 Table 3)</source>
        <translation type="unfinished">ਸ਼੍ਰੇਣੀ {code} ਵਿੱਚ {interval} ਵੰਡ ਨਹੀਂ (R 76 ਸਾਰਣੀ 3)</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation type="unfinished">ਸਫਾਈ</translation>
    </message>
    <message>
        <source>clear a scan that differed</source>
        <translation type="unfinished">ਨਾ ਮਿਲਦੇ ਸਕੈਨ ਨੂੰ ਠੀਕ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>clear the line and sign for it: {where}</source>
        <translation type="unfinished">ਲਾਈਨ ਖਾਲੀ ਕਰੋ ਤੇ ਦਸਤਖਤ ਕਰੋ: {where}</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">ਬੰਦ</translation>
    </message>
    <message>
        <source>code</source>
        <translation type="unfinished">ਕੋਡ</translation>
    </message>
    <message>
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">ਲੇਬਲ ਮਿਲਾਓ, ਫਿਰ ਸਕੈਨ ਠੀਕ ਕਰੋ</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">ਪੂਰਾ</translation>
    </message>
    <message>
        <source>component {component} is not known: allowed are {allowed}</source>
        <translation type="unfinished">ਹਿੱਸਾ {component} ਅਣਜਾਣ: ਇਜਾਜ਼ਤ {allowed}</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">ਤਾਰੀਖ ਤੇ ਸਮਾਂ ਪੱਕਾ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>connected by {device}</source>
        <translation type="unfinished">{device} ਨਾਲ ਜੁੜਿਆ</translation>
    </message>
    <message>
        <source>cooler temperature</source>
        <translation type="unfinished">ਕੂਲਰ ਦਾ ਤਾਪਮਾਨ</translation>
    </message>
    <message>
        <source>correct what was recorded</source>
        <translation type="unfinished">ਦਰਜ ਗੱਲ ਠੀਕ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>count on the core was wrong</source>
        <translation type="unfinished">ਰੋਲ ਦੀ ਗਿਣਤੀ ਗਲਤ ਸੀ</translation>
    </message>
    <message>
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">ਪਿਛਲੇ ਦੌਰ ਦੇ ਬੈਗ ਗਿਣੋ: {where}</translation>
    </message>
    <message>
        <source>counted {count}</source>
        <translation type="unfinished">ਗਿਣੇ {count}</translation>
    </message>
    <message>
        <source>counted {count}, agrees</source>
        <translation type="unfinished">ਗਿਣੇ {count}, ਮਿਲਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>counted {count}, {difference}</source>
        <translation type="unfinished">ਗਿਣੇ {count}, {difference}</translation>
    </message>
    <message>
        <source>counted {count}, {difference}: {why}</source>
        <translation type="unfinished">ਗਿਣੇ {count}, {difference}: {why}</translation>
    </message>
    <message>
        <source>customer's own limits</source>
        <translation type="unfinished">ਗਾਹਕ ਦੀਆਂ ਆਪਣੀਆਂ ਹੱਦਾਂ</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">ਤਾਰੀਖ ਜਾਂ ਸਮੇਂ ਬਾਰੇ ਸ਼ੱਕ</translation>
    </message>
    <message>
        <source>dated step</source>
        <translation type="unfinished">ਸਮੇਂ ਵਾਲੀ ਛਾਲ</translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished">ਦਿਨ</translation>
    </message>
    <message>
        <source>day after</source>
        <translation type="unfinished">ਅਗਲਾ ਦਿਨ</translation>
    </message>
    <message>
        <source>day before</source>
        <translation type="unfinished">ਪਿਛਲਾ ਦਿਨ</translation>
    </message>
    <message>
        <source>day, month</source>
        <translation type="unfinished">ਦਿਨ, ਮਹੀਨਾ</translation>
    </message>
    <message>
        <source>decide about suspect bags</source>
        <translation type="unfinished">ਸ਼ੱਕੀ ਬੈਗਾਂ ਦਾ ਫੈਸਲਾ</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">ਬੈਗ ਦਾ ਕੀ ਕਰਨਾ ਹੈ, ਫੈਸਲਾ</translation>
    </message>
    <message>
        <source>declared tare {mass}</source>
        <translation type="unfinished">ਦੱਸੀ ਟੇਅਰ {mass}</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation type="unfinished">ਨਸ਼ਟ</translation>
    </message>
    <message>
        <source>destructive</source>
        <translation type="unfinished">ਤੋੜ ਕੇ</translation>
    </message>
    <message>
        <source>destructive-e-mark</source>
        <translation type="unfinished">ਤੋੜ ਕੇ (℮)</translation>
    </message>
    <message>
        <source>device {code}</source>
        <translation type="unfinished">ਯੰਤਰ {code}</translation>
    </message>
    <message>
        <source>differs</source>
        <translation type="unfinished">ਵੱਖਰਾ</translation>
    </message>
    <message>
        <source>digest</source>
        <translation type="unfinished">ਡਾਈਜੈਸਟ</translation>
    </message>
    <message>
        <source>digits it shows</source>
        <translation type="unfinished">ਦਿਖਾਏ ਅੰਕ</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation type="unfinished">ਠੀਕ ਨਹੀਂ ਬੈਠਦੀ</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">ਹੋ ਗਿਆ</translation>
    </message>
    <message>
        <source>double</source>
        <translation type="unfinished">ਦੂਹਰਾ</translation>
    </message>
    <message>
        <source>downgraded</source>
        <translation type="unfinished">ਦਰਜਾ ਘਟਾਇਆ</translation>
    </message>
    <message>
        <source>dumped</source>
        <translation type="unfinished">ਸੁੱਟਿਆ</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation type="unfinished">ਖਾਲੀ ਕੀਤਾ</translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished">ਖਾਲੀ</translation>
    </message>
    <message>
        <source>empty bag</source>
        <translation type="unfinished">ਖਾਲੀ ਬੈਗ</translation>
    </message>
    <message>
        <source>empty by now?</source>
        <translation type="unfinished">ਹੁਣ ਖਾਲੀ?</translation>
    </message>
    <message>
        <source>empty pan</source>
        <translation type="unfinished">ਖਾਲੀ ਪੱਲਾ</translation>
    </message>
    <message>
        <source>end a run</source>
        <translation type="unfinished">ਦੌਰ ਖਤਮ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>end the run</source>
        <translation type="unfinished">ਦੌਰ ਖਤਮ ਕਰੋ</translation>
    </message>
    <message>
        <source>enter this</source>
        <translation type="unfinished">ਇਹ ਦਰਜ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>equal</source>
        <translation type="unfinished">ਬਰਾਬਰ</translation>
    </message>
    <message>
        <source>even</source>
        <translation type="unfinished">ਬਰਾਬਰ</translation>
    </message>
    <message>
        <source>even growth</source>
        <translation type="unfinished">ਬਰਾਬਰ ਵਾਧਾ</translation>
    </message>
    <message>
        <source>even parity</source>
        <translation type="unfinished">ਜਿਸਤ ਪੈਰਿਟੀ</translation>
    </message>
    <message>
        <source>event</source>
        <translation type="unfinished">ਘਟਨਾ</translation>
    </message>
    <message>
        <source>example {number}, {line}</source>
        <translation type="unfinished">ਨਮੂਨਾ {number}, {line}</translation>
    </message>
    <message>
        <source>expired</source>
        <translation type="unfinished">ਮਿਆਦ ਪੁੱਗੀ</translation>
    </message>
    <message>
        <source>expired – take it off the line</source>
        <translation type="unfinished">ਮਿਆਦ ਪੁੱਗੀ – ਲਾਈਨ ਤੋਂ ਹਟਾਓ</translation>
    </message>
    <message>
        <source>explained</source>
        <translation type="unfinished">ਸਮਝਾਇਆ</translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished">ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>failed: what is done</source>
        <translation type="unfinished">ਫੇਲ੍ਹ: ਕੀ ਕੀਤਾ</translation>
    </message>
    <message>
        <source>fetch the next lot</source>
        <translation type="unfinished">ਅਗਲਾ ਲਾਟ ਲਿਆਓ</translation>
    </message>
    <message>
        <source>fetch the next roll</source>
        <translation type="unfinished">ਅਗਲਾ ਰੋਲ ਲਿਆਓ</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation type="unfinished">ਘੱਟ</translation>
    </message>
    <message>
        <source>fewer than {count} labels are left</source>
        <translation type="unfinished">{count} ਤੋਂ ਘੱਟ ਲੇਬਲ ਬਚੇ</translation>
    </message>
    <message>
        <source>field {code}</source>
        <translation type="unfinished">ਖਾਨਾ {code}</translation>
    </message>
    <message>
        <source>figures do not convince</source>
        <translation type="unfinished">ਅੰਕ ਯਕੀਨੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>fill a case or close a pallet</source>
        <translation type="unfinished">ਡੱਬਾ ਭਰਨਾ ਜਾਂ ਪੈਲੇਟ ਬੰਦ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>fill a little more, look at NUMBERS</source>
        <translation type="unfinished">ਥੋੜ੍ਹਾ ਹੋਰ ਭਰੋ, ਅੰਕੜੇ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>film or labels</source>
        <translation type="unfinished">ਫਿਲਮ ਜਾਂ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation type="unfinished">ਮੁੱਕ ਰਿਹਾ</translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished">ਪਹਿਲਾ</translation>
    </message>
    <message>
        <source>first label</source>
        <translation type="unfinished">ਪਹਿਲਾ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>first serial</source>
        <translation type="unfinished">ਪਹਿਲਾ ਨੰਬਰ</translation>
    </message>
    <message>
        <source>first-off</source>
        <translation type="unfinished">ਪਹਿਲਾ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished">ਠੀਕ ਬੈਠਦੀ</translation>
    </message>
    <message>
        <source>flag</source>
        <translation type="unfinished">ਫਲੈਗ</translation>
    </message>
    <message>
        <source>flags that contradict</source>
        <translation type="unfinished">ਫਲੈਗ ਆਪਸ ਵਿੱਚ ਟਕਰਾਉਂਦੇ</translation>
    </message>
    <message>
        <source>floor {mass}</source>
        <translation type="unfinished">ਘੱਟੋ-ਘੱਟ {mass}</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">ਹੇਠਲੀ, ਟੀਚਾ, ਉਪਰਲੀ</translation>
    </message>
    <message>
        <source>for every product</source>
        <translation type="unfinished">ਹਰ ਉਤਪਾਦ ਲਈ</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">ਬਾਹਰੀ ਚੀਜ਼</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">ਮਿਲਿਆ</translation>
    </message>
    <message>
        <source>frame cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">{count} ਬਾਈਟ ਮਗਰੋਂ ਅਗਲਾ ਫਰੇਮ</translation>
    </message>
    <message>
        <source>frame of {count} bytes, a weight has {number}</source>
        <translation type="unfinished">{count} ਬਾਈਟ ਦਾ ਫਰੇਮ, ਭਾਰ ਦੇ {number}</translation>
    </message>
    <message>
        <source>frame without an end within {count} bytes</source>
        <translation type="unfinished">{count} ਬਾਈਟ ਵਿੱਚ ਫਰੇਮ ਨਾ ਮੁੱਕਿਆ</translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished">ਖੁੱਲ੍ਹਾ</translation>
    </message>
    <message>
        <source>from {code}</source>
        <translation type="unfinished">{code} ਤੋਂ</translation>
    </message>
    <message>
        <source>from, such as 09:00</source>
        <translation type="unfinished">ਤੋਂ, ਜਿਵੇਂ 09:00</translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished">ਪੂਰਾ</translation>
    </message>
    <message>
        <source>gate</source>
        <translation type="unfinished">ਗੇਟ</translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished">ਵੱਧ ਦਿੱਤਾ</translation>
    </message>
    <message>
        <source>gives away</source>
        <translation type="unfinished">ਵੱਧ ਦਿੰਦਾ</translation>
    </message>
    <message>
        <source>go on after a pause</source>
        <translation type="unfinished">ਵਿਰਾਮ ਬਾਅਦ ਜਾਰੀ ਰੱਖਣਾ</translation>
    </message>
    <message>
        <source>go on after a stop</source>
        <translation type="unfinished">ਰੋਕ ਬਾਅਦ ਜਾਰੀ ਰੱਖਣਾ</translation>
    </message>
    <message>
        <source>gone on after a stop: {why}</source>
        <translation type="unfinished">ਰੁਕਣ ਬਾਅਦ ਜਾਰੀ: {why}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">ਠੀਕ</translation>
    </message>
    <message>
        <source>gross</source>
        <translation type="unfinished">ਕੁੱਲ</translation>
    </message>
    <message>
        <source>gross weight</source>
        <translation type="unfinished">ਕੁੱਲ ਭਾਰ</translation>
    </message>
    <message>
        <source>guards are shut and tools are counted</source>
        <translation type="unfinished">ਗਾਰਡ ਬੰਦ, ਸੰਦ ਗਿਣੇ</translation>
    </message>
    <message>
        <source>hands and tools are washed</source>
        <translation type="unfinished">ਹੱਥ ਤੇ ਸੰਦ ਧੋਤੇ</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation type="unfinished">ਵੱਢਿਆ</translation>
    </message>
    <message>
        <source>heaviest gross {mass} against Max {most}</source>
        <translation type="unfinished">ਸਭ ਤੋਂ ਭਾਰਾ ਕੁੱਲ {mass}, Max {most}</translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished">ਰੋਕਿਆ</translation>
    </message>
    <message>
        <source>held at the line</source>
        <translation type="unfinished">ਲਾਈਨ ਤੇ ਰੋਕਿਆ</translation>
    </message>
    <message>
        <source>held up by</source>
        <translation type="unfinished">ਰੋਕ</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">ਰੋਕਿਆ – QA ਨੂੰ ਬੁਲਾਓ</translation>
    </message>
    <message>
        <source>here: {line}</source>
        <translation type="unfinished">ਇੱਥੇ: {line}</translation>
    </message>
    <message>
        <source>high resolution</source>
        <translation type="unfinished">ਬਰੀਕ ਅੰਕ</translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished">ਰੋਕਣਾ</translation>
    </message>
    <message>
        <source>hold down</source>
        <translation type="unfinished">ਦਬਾ ਕੇ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>hold stays</source>
        <translation type="unfinished">ਰੋਕ ਰਹੇਗੀ</translation>
    </message>
    <message>
        <source>hold the button</source>
        <translation type="unfinished">ਬਟਨ ਦਬਾ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>hold, no record</source>
        <translation type="unfinished">ਰੋਕੋ, ਰਿਕਾਰਡ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>holds</source>
        <translation type="unfinished">ਰੋਕਾਂ</translation>
    </message>
    <message>
        <source>holds from</source>
        <translation type="unfinished">ਲਾਗੂ</translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished">ਘੰਟਾ</translation>
    </message>
    <message>
        <source>id of the label roll</source>
        <translation type="unfinished">ਲੇਬਲ ਰੋਲ ਦੀ id</translation>
    </message>
    <message>
        <source>id of the run</source>
        <translation type="unfinished">ਦੌਰ ਦੀ id</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation type="unfinished">ਸ਼ੱਕ ਹੇਠ</translation>
    </message>
    <message>
        <source>in money</source>
        <translation type="unfinished">ਪੈਸੇ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>in motion</source>
        <translation type="unfinished">ਹਿੱਲਦਾ</translation>
    </message>
    <message>
        <source>in no case</source>
        <translation type="unfinished">ਕਿਸੇ ਡੱਬੇ ਵਿੱਚ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">ਬੈਗ ਵਿੱਚ {mass}</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation type="unfinished">ਗੋਦਾਮ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>in the printer</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>in window</source>
        <translation type="unfinished">ਹੱਦ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>in {number} min</source>
        <translation type="unfinished">{number} min ਵਿੱਚ</translation>
    </message>
    <message>
        <source>in-service error at {gross} gross {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">{gross} ਕੁੱਲ ਤੇ ਗਲਤੀ {mass}, {limit} ਦਾ {share} = {most}</translation>
    </message>
    <message>
        <source>initial zero error</source>
        <translation type="unfinished">ਸ਼ੁਰੂ ਦੀ ਜ਼ੀਰੋ ਗਲਤੀ</translation>
    </message>
    <message>
        <source>input lot</source>
        <translation type="unfinished">ਕੱਚਾ ਲਾਟ</translation>
    </message>
    <message>
        <source>input lot code</source>
        <translation type="unfinished">ਕੱਚੇ ਲਾਟ ਦਾ ਕੋਡ</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished">ਯੰਤਰ</translation>
    </message>
    <message>
        <source>interval {mass}</source>
        <translation type="unfinished">ਵੰਡ {mass}</translation>
    </message>
    <message>
        <source>it came too slowly, or was too short, for a scanner</source>
        <translation type="unfinished">ਸਕੈਨਰ ਲਈ ਬਹੁਤ ਹੌਲੀ ਜਾਂ ਛੋਟਾ</translation>
    </message>
    <message>
        <source>it came too warm, or damaged: QA decides</source>
        <translation type="unfinished">ਬਹੁਤ ਗਰਮ ਜਾਂ ਖਰਾਬ ਆਇਆ: QA ਫੈਸਲਾ ਕਰੇ</translation>
    </message>
    <message>
        <source>it changes: mark it on each line</source>
        <translation type="unfinished">ਬਦਲਦੀ ਹੈ: ਹਰ ਲਾਈਨ ਤੇ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>it comes back without help</source>
        <translation type="unfinished">ਆਪੇ ਮੁੜੇਗਾ</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">ਜਵਾਬ ਨਹੀਂ: ਚਾਲੂ ਹੈ, ਤਾਰ ਲੱਗੀ ਹੈ?</translation>
    </message>
    <message>
        <source>it does not end with Enter</source>
        <translation type="unfinished">ਇਹ Enter ਨਾਲ ਨਹੀਂ ਮੁੱਕਦਾ</translation>
    </message>
    <message>
        <source>it does not suit {products}: use another scale</source>
        <translation type="unfinished">{products} ਲਈ ਠੀਕ ਨਹੀਂ: ਹੋਰ ਕੰਡਾ ਵਰਤੋ</translation>
    </message>
    <message>
        <source>it failed its check with test weights: have it adjusted, then check it again</source>
        <translation type="unfinished">ਵੱਟਿਆਂ ਨਾਲ ਜਾਂਚ ਫੇਲ੍ਹ: ਠੀਕ ਕਰਵਾਓ, ਫਿਰ ਜਾਂਚੋ</translation>
    </message>
    <message>
        <source>it is held until a person releases it</source>
        <translation type="unfinished">ਰੁਕਿਆ ਹੈ ਜਦ ਤੱਕ ਕੋਈ ਨਾ ਛੱਡੇ</translation>
    </message>
    <message>
        <source>it is no serial port</source>
        <translation type="unfinished">ਸੀਰੀਅਲ ਪੋਰਟ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>it is not there: check the plug</source>
        <translation type="unfinished">ਉੱਥੇ ਨਹੀਂ: ਪਲੱਗ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>it is {found}, the {what}'s is {known}: plug that one in again, or stop and start the station to take this one</source>
        <translation type="unfinished">ਇਹ {found} ਹੈ, ਜਾਣਿਆ ਯੰਤਰ ({what}) {known} ਹੈ: ਉਸ ਨੂੰ ਫਿਰ ਲਗਾਓ, ਜਾਂ ਇਸ ਨੂੰ ਲੈਣ ਲਈ ਸਟੇਸ਼ਨ ਬੰਦ ਕਰਕੇ ਚਲਾਓ</translation>
    </message>
    <message>
        <source>it just stays without approval</source>
        <translation type="unfinished">ਬਿਨਾਂ ਮਨਜ਼ੂਰੀ ਰਹਿੰਦਾ</translation>
    </message>
    <message>
        <source>it lacks what the station's scanner types first</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ ਸਕੈਨਰ ਵਾਲਾ ਅਗੇਤਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>it never came out</source>
        <translation type="unfinished">ਨਿਕਲਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>it reached the scale damaged, nothing was done</source>
        <translation type="unfinished">ਕੰਡੇ ਤੱਕ ਖਰਾਬ ਪਹੁੰਚਿਆ, ਕੁਝ ਨਹੀਂ ਹੋਇਆ</translation>
    </message>
    <message>
        <source>it was cancelled</source>
        <translation type="unfinished">ਰੱਦ ਕੀਤਾ ਗਿਆ</translation>
    </message>
    <message>
        <source>it was cancelled before printing</source>
        <translation type="unfinished">ਛਪਣ ਤੋਂ ਪਹਿਲਾਂ ਰੱਦ ਕੀਤਾ ਗਿਆ</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s</source>
        <translation type="unfinished">{seconds} s ਬਾਅਦ ਵੀ ਨਹੀਂ ਨਿਕਲਿਆ</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s ({why})</source>
        <translation type="unfinished">{seconds} s ਬਾਅਦ ਵੀ ਨਹੀਂ ਨਿਕਲਿਆ ({why})</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">{seconds} s ਬਾਅਦ ਵੀ ਨਹੀਂ ਨਿਕਲਿਆ: ਦੇਖੋ ਨਿਕਲਦਾ ਹੈ ਕਿ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>its bag goes out</source>
        <translation type="unfinished">ਇਸ ਦਾ ਬੈਗ ਬਾਹਰ</translation>
    </message>
    <message>
        <source>its marks overlap or leave the line</source>
        <translation type="unfinished">ਨਿਸ਼ਾਨ ਟਕਰਾਉਂਦੇ ਜਾਂ ਬਾਹਰ ਹਨ</translation>
    </message>
    <message>
        <source>its run ended before the printer said that it came out</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਦੇ ਦੱਸਣ ਤੋਂ ਪਹਿਲਾਂ ਦੌਰ ਖਤਮ ਹੋ ਗਿਆ</translation>
    </message>
    <message>
        <source>its use-by {day} is past: end the run</source>
        <translation type="unfinished">ਇਸਦੀ ਮਿਆਦ {day} ਲੰਘ ਗਈ: ਦੌਰ ਖਤਮ ਕਰੋ</translation>
    </message>
    <message>
        <source>jammed in the printer</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਵਿੱਚ ਫਸਿਆ</translation>
    </message>
    <message>
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">ਰਿਕਾਰਡ ਰੱਖਣਾ, ਬਹਾਲ ਜਾਂ ਸਾਫ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>kept as {file} and named in station.toml</source>
        <translation type="unfinished">{file} ਵਜੋਂ ਰੱਖਿਆ, station.toml ਵਿੱਚ ਲਿਖਿਆ</translation>
    </message>
    <message>
        <source>knee</source>
        <translation type="unfinished">ਮੋੜ</translation>
    </message>
    <message>
        <source>label</source>
        <translation type="unfinished">ਲੇਬਲ</translation>
    </message>
    <message>
        <source>label destroyed</source>
        <translation type="unfinished">ਲੇਬਲ ਨਸ਼ਟ</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">ਲੇਬਲ ਰੱਦ ਹੈ</translation>
    </message>
    <message>
        <source>label never printed</source>
        <translation type="unfinished">ਲੇਬਲ ਛਪਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>label of another run taken out</source>
        <translation type="unfinished">ਹੋਰ ਦੌਰ ਦਾ ਲੇਬਲ ਕੱਢਿਆ</translation>
    </message>
    <message>
        <source>label of the roll</source>
        <translation type="unfinished">ਰੋਲ ਦਾ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>label on bag</source>
        <translation type="unfinished">ਬੈਗ 'ਤੇ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>label roll</source>
        <translation type="unfinished">ਲੇਬਲ ਰੋਲ</translation>
    </message>
    <message>
        <source>label scan</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ</translation>
    </message>
    <message>
        <source>label spoiled</source>
        <translation type="unfinished">ਲੇਬਲ ਖਰਾਬ</translation>
    </message>
    <message>
        <source>label {code}</source>
        <translation type="unfinished">ਲੇਬਲ {code}</translation>
    </message>
    <message>
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਬਾਰੇ ਸ਼ੱਕ ਹੈ: {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਨਹੀਂ ਨਿਕਲਿਆ: ਪ੍ਰਿੰਟਰ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>label {serial} is printed again, marked {mark}</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਮੁੜ ਛਪਦਾ ਹੈ, ਨਿਸ਼ਾਨ {mark}</translation>
    </message>
    <message>
        <source>label {serial} may still come out: cancel it at the printer, or wait</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਹਾਲੇ ਨਿਕਲ ਸਕਦਾ ਹੈ: ਪ੍ਰਿੰਟਰ 'ਤੇ ਰੱਦ ਕਰੋ ਜਾਂ ਉਡੀਕੋ</translation>
    </message>
    <message>
        <source>labels are jammed: clear them</source>
        <translation type="unfinished">ਲੇਬਲ ਫਸੇ ਹਨ: ਕੱਢੋ</translation>
    </message>
    <message>
        <source>labels are not taken away: take them away</source>
        <translation type="unfinished">ਲੇਬਲ ਚੁੱਕੇ ਨਹੀਂ ਗਏ: ਚੁੱਕੋ</translation>
    </message>
    <message>
        <source>labels on it {count}</source>
        <translation type="unfinished">ਇਸ ਤੇ ਲੇਬਲ {count}</translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished">ਆਖਰੀ</translation>
    </message>
    <message>
        <source>last 7 days</source>
        <translation type="unfinished">ਪਿਛਲੇ 7 ਦਿਨ</translation>
    </message>
    <message>
        <source>last day</source>
        <translation type="unfinished">ਆਖਰੀ ਦਿਨ</translation>
    </message>
    <message>
        <source>last day {day}</source>
        <translation type="unfinished">ਆਖਰੀ ਦਿਨ {day}</translation>
    </message>
    <message>
        <source>last label</source>
        <translation type="unfinished">ਪਿਛਲਾ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>last of it</source>
        <translation type="unfinished">ਆਖਰੀ ਹਿੱਸਾ</translation>
    </message>
    <message>
        <source>last serial</source>
        <translation type="unfinished">ਆਖਰੀ ਨੰਬਰ</translation>
    </message>
    <message>
        <source>last {what}</source>
        <translation type="unfinished">ਪਿਛਲਾ {what}</translation>
    </message>
    <message>
        <source>lead</source>
        <translation type="unfinished">ਲੀਡ</translation>
    </message>
    <message>
        <source>lead {code}</source>
        <translation type="unfinished">ਲੀਡ {code}</translation>
    </message>
    <message>
        <source>lead, on the scale</source>
        <translation type="unfinished">ਲੀਡ, ਕੰਡੇ 'ਤੇ</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">ਪੂਰੀ ਸਕ੍ਰੀਨ ਛੱਡਣਾ</translation>
    </message>
    <message>
        <source>less the stops</source>
        <translation type="unfinished">ਰੁਕਣ ਤੋਂ ਬਿਨਾਂ</translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished">ਹਲਕਾ</translation>
    </message>
    <message>
        <source>line cleared</source>
        <translation type="unfinished">ਲਾਈਨ ਸਾਫ਼</translation>
    </message>
    <message>
        <source>line cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">{count} ਬਾਈਟ ਮਗਰੋਂ ਅਗਲੀ ਲਾਈਨ</translation>
    </message>
    <message>
        <source>line error</source>
        <translation type="unfinished">ਤਾਰ ਗਲਤੀ</translation>
    </message>
    <message>
        <source>line that does not fit the pattern of its description</source>
        <translation type="unfinished">ਲਾਈਨ ਵੇਰਵੇ ਨਾਲ ਨਹੀਂ ਮਿਲਦੀ</translation>
    </message>
    <message>
        <source>line without an end within {count} bytes</source>
        <translation type="unfinished">{count} ਬਾਈਟ ਵਿੱਚ ਲਾਈਨ ਨਾ ਮੁੱਕੀ</translation>
    </message>
    <message>
        <source>line {code}</source>
        <translation type="unfinished">ਲਾਈਨ {code}</translation>
    </message>
    <message>
        <source>line {number}</source>
        <translation type="unfinished">ਲਾਈਨ {number}</translation>
    </message>
    <message>
        <source>lines</source>
        <translation type="unfinished">ਲਾਈਨਾਂ</translation>
    </message>
    <message>
        <source>loaded</source>
        <translation type="unfinished">ਲਗਾਇਆ</translation>
    </message>
    <message>
        <source>look at date and time, then sign</source>
        <translation type="unfinished">ਤਾਰੀਖ ਤੇ ਸਮਾਂ ਦੇਖੋ, ਫਿਰ ਦਸਤਖਤ</translation>
    </message>
    <message>
        <source>look at the bag and its label, then GO ON</source>
        <translation type="unfinished">ਬੈਗ ਤੇ ਲੇਬਲ ਦੇਖੋ, ਫਿਰ ਜਾਰੀ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>look at the printer</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>look at the scale's cable and power</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਤਾਰ ਤੇ ਬਿਜਲੀ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>look whether a label came out</source>
        <translation type="unfinished">ਦੇਖੋ ਲੇਬਲ ਨਿਕਲਿਆ ਕਿ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>look whether it comes out</source>
        <translation type="unfinished">ਦੇਖੋ ਕਿ ਨਿਕਲਦਾ ਹੈ ਜਾਂ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>look whether the label is whole</source>
        <translation type="unfinished">ਦੇਖੋ ਲੇਬਲ ਪੂਰਾ ਹੈ</translation>
    </message>
    <message>
        <source>looked at another clock: right now</source>
        <translation type="unfinished">ਹੋਰ ਘੜੀ ਦੇਖੀ: ਹੁਣ ਠੀਕ</translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished">ਲਾਟ</translation>
    </message>
    <message>
        <source>lot code {code} cannot be printed: allowed are 1 to 20 of the characters A-Z 0-9 . / - (no blanks, no small letters)</source>
        <translation type="unfinished">ਲਾਟ ਕੋਡ {code} ਛਪ ਨਹੀਂ ਸਕਦਾ: 1 ਤੋਂ 20 ਅੱਖਰ A-Z 0-9 . / - (ਖਾਲੀ ਥਾਂ ਤੇ ਛੋਟੇ ਅੱਖਰ ਨਹੀਂ)</translation>
    </message>
    <message>
        <source>lot {code}</source>
        <translation type="unfinished">ਲਾਟ {code}</translation>
    </message>
    <message>
        <source>lot {lot} had its last day on {day}: it must not be used</source>
        <translation type="unfinished">ਲਾਟ {lot} ਦਾ ਆਖਰੀ ਦਿਨ {day} ਸੀ: ਨਾ ਵਰਤੋ</translation>
    </message>
    <message>
        <source>lot {lot} is already in the record as another delivery ({component} from {supplier}, received {day}): leave the code empty to get a new one</source>
        <translation type="unfinished">ਲਾਟ {lot} ਪਹਿਲਾਂ ਹੀ ਹੋਰ ਡਿਲਿਵਰੀ ਵਜੋਂ ਦਰਜ ਹੈ ({component}, {supplier}, {day}): ਨਵੇਂ ਕੋਡ ਲਈ ਖਾਲੀ ਛੱਡੋ</translation>
    </message>
    <message>
        <source>lot {lot} is held</source>
        <translation type="unfinished">ਲਾਟ {lot} ਰੋਕਿਆ</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">ਲਾਟ {lot} ਰੋਕਿਆ: ਹਟਾਓ ਤੇ ਹੋਰ ਲਗਾਓ: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is nearly empty</source>
        <translation type="unfinished">ਲਾਟ {lot} ਲਗਭਗ ਖਾਲੀ</translation>
    </message>
    <message>
        <source>lot {lot} is not in the record: receive it before the run</source>
        <translation type="unfinished">ਲਾਟ {lot} ਦਰਜ ਨਹੀਂ: ਦੌਰ ਤੋਂ ਪਹਿਲਾਂ ਲਓ</translation>
    </message>
    <message>
        <source>lot {lot} is not known: check the code</source>
        <translation type="unfinished">ਲਾਟ {lot} ਅਣਜਾਣ: ਕੋਡ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">ਲਾਟ {lot} ਪਤਾ ਨਹੀਂ: ਪਹਿਲਾਂ ਪ੍ਰਾਪਤ ਕਰੋ</translation>
    </message>
    <message>
        <source>lot {lot} is not on the line: on it are {lots}</source>
        <translation type="unfinished">ਲਾਟ {lot} ਲਾਈਨ ਤੇ ਨਹੀਂ: ਉੱਥੇ {lots}</translation>
    </message>
    <message>
        <source>lot {lot} is on the line and on no label: take it off: {where}</source>
        <translation type="unfinished">ਲਾਟ {lot} ਲਾਈਨ 'ਤੇ ਹੈ ਪਰ ਲੇਬਲ 'ਤੇ ਨਹੀਂ: ਹਟਾਓ: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is {component}, which {product} does not contain: allowed are {allowed}</source>
        <translation type="unfinished">ਲਾਟ {lot} {component} ਹੈ, ਜੋ {product} ਵਿੱਚ ਨਹੀਂ: ਮਨਜ਼ੂਰ {allowed}</translation>
    </message>
    <message>
        <source>lot {lot} is {status}: it must not be used, call QA</source>
        <translation type="unfinished">ਲਾਟ {lot} {status}: ਨਾ ਵਰਤੋ, QA ਨੂੰ ਬੁਲਾਓ</translation>
    </message>
    <message>
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">ਲਾਟ {lot}: {why}</translation>
    </message>
    <message>
        <source>lot {lot} of {supplier} was received already on {day}: load it, do not receive it again</source>
        <translation type="unfinished">{supplier} ਦਾ ਲਾਟ {lot} {day} ਨੂੰ ਲਿਆ ਜਾ ਚੁੱਕਾ: ਲਗਾਓ, ਮੁੜ ਨਾ ਲਓ</translation>
    </message>
    <message>
        <source>lot {lot}: harvested {harvested} after it was received {received}</source>
        <translation type="unfinished">ਲਾਟ {lot}: ਲੈਣ ({received}) ਤੋਂ ਬਾਅਦ {harvested} ਨੂੰ ਵੱਢਿਆ</translation>
    </message>
    <message>
        <source>lot {lot}: no person holds it; lots.toml says what it is</source>
        <translation type="unfinished">ਲਾਟ {lot}: ਕਿਸੇ ਬੰਦੇ ਨੇ ਨਹੀਂ ਰੋਕਿਆ; lots.toml ਦੱਸਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>lot {lot}: packed {packed} after it was received {received}</source>
        <translation type="unfinished">ਲਾਟ {lot}: ਲੈਣ ({received}) ਤੋਂ ਬਾਅਦ {packed} ਨੂੰ ਪੈਕ</translation>
    </message>
    <message>
        <source>lot {lot}: waste needs its mass: weigh it</source>
        <translation type="unfinished">ਲਾਟ {lot}: ਕੂੜੇ ਦਾ ਭਾਰ ਚਾਹੀਦਾ: ਤੋਲੋ</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} came: give more than nothing, or no mass</source>
        <translation type="unfinished">ਲਾਟ {lot}: {mass} ਆਇਆ: ਸਿਫ਼ਰ ਤੋਂ ਵੱਧ ਦਿਓ, ਜਾਂ ਕੋਈ ਭਾਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} is below nothing</source>
        <translation type="unfinished">ਲਾਟ {lot}: {mass} ਸਿਫ਼ਰ ਤੋਂ ਘੱਟ</translation>
    </message>
    <message>
        <source>lot {lot}: {warmth} °C on arrival: allowed are {least} to {most} °C</source>
        <translation type="unfinished">ਲਾਟ {lot}: ਪਹੁੰਚਣ ਵੇਲੇ {warmth} °C: ਇਜਾਜ਼ਤ {least} ਤੋਂ {most} °C</translation>
    </message>
    <message>
        <source>lots</source>
        <translation type="unfinished">ਲਾਟ</translation>
    </message>
    <message>
        <source>lots changed while a bag was on the pan: lift it before the next change</source>
        <translation type="unfinished">ਬੈਗ ਪੱਲੇ ਤੇ ਸੀ ਜਦ ਲਾਟ ਬਦਲੇ: ਅਗਲੀ ਬਦਲੀ ਤੋਂ ਪਹਿਲਾਂ ਚੁੱਕੋ</translation>
    </message>
    <message>
        <source>lots {lots}</source>
        <translation type="unfinished">ਲਾਟ {lots}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">ਮਸ਼ੀਨ</translation>
    </message>
    <message>
        <source>made by machine, not reviewed: {said}</source>
        <translation type="unfinished">ਮਸ਼ੀਨੀ, ਦੇਖੇ ਨਹੀਂ ਗਏ: {said}</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation type="unfinished">ਮੁਰੰਮਤ</translation>
    </message>
    <message>
        <source>make the check</source>
        <translation type="unfinished">ਜਾਂਚ ਕਰੋ</translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished">ਮੈਨੇਜਰ</translation>
    </message>
    <message>
        <source>many frames arrive damaged: check plug and cable, keep it away from motors, and see that no other program reads this port</source>
        <translation type="unfinished">ਕਈ ਫਰੇਮ ਖਰਾਬ ਆਉਂਦੇ ਹਨ: ਪਲੱਗ ਤੇ ਤਾਰ ਦੇਖੋ, ਮੋਟਰਾਂ ਤੋਂ ਦੂਰ ਰੱਖੋ, ਤੇ ਹੋਰ ਪ੍ਰੋਗਰਾਮ ਇਹ ਪੋਰਟ ਨਾ ਪੜ੍ਹੇ</translation>
    </message>
    <message>
        <source>mark no control characters, and nothing after the end</source>
        <translation type="unfinished">ਕੰਟਰੋਲ ਅੱਖਰ ਤੇ ਅੰਤ ਮਗਰੋਂ ਕੁਝ ਨਾ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>mark the same fields on each line, in the same order</source>
        <translation type="unfinished">ਹਰ ਲਾਈਨ ਤੇ ਉਹੀ ਖਾਨੇ, ਉਸੇ ਤਰਤੀਬ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>mark the value on each line</source>
        <translation type="unfinished">ਹਰ ਲਾਈਨ ਤੇ ਮੁੱਲ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>mark two or more, with different weights on the pan</source>
        <translation type="unfinished">ਵੱਖਰੇ ਭਾਰਾਂ ਨਾਲ ਦੋ ਜਾਂ ਵੱਧ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>may be run</source>
        <translation type="unfinished">ਚਲਾਇਆ ਜਾ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>may not be run</source>
        <translation type="unfinished">ਨਹੀਂ ਚਲਾ ਸਕਦੇ</translation>
    </message>
    <message>
        <source>mean + {factor} s ≥ {nominal}: {holds} so far</source>
        <translation type="unfinished">ਔਸਤ + {factor} s ≥ {nominal}: ਹੁਣ ਤੱਕ {holds}</translation>
    </message>
    <message>
        <source>mean in the official sample</source>
        <translation type="unfinished">ਸਰਕਾਰੀ ਨਮੂਨੇ ਦੀ ਔਸਤ</translation>
    </message>
    <message>
        <source>mean net</source>
        <translation type="unfinished">ਔਸਤ ਸ਼ੁੱਧ</translation>
    </message>
    <message>
        <source>mean of the whole batch</source>
        <translation type="unfinished">ਪੂਰੇ ਬੈਚ ਦੀ ਔਸਤ</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}</source>
        <translation type="unfinished">ਔਸਤ {mean}, s {spread}</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">ਔਸਤ {mean}, s {spread}, {count} ਬੈਗ</translation>
    </message>
    <message>
        <source>mean {number}</source>
        <translation type="unfinished">ਔਸਤ {number}</translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished">ਪੂਰੀ ਹੈ</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">ਧਾਤ ਡਿਟੈਕਟਰ</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished">ਮਿੰਟ</translation>
    </message>
    <message>
        <source>missed {pieces}</source>
        <translation type="unfinished">ਨਹੀਂ ਮਿਲੇ {pieces}</translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished">ਵੱਧ</translation>
    </message>
    <message>
        <source>more bytes arrive than a scale sends: is this the scale's line?</source>
        <translation type="unfinished">ਕੰਡੇ ਤੋਂ ਵੱਧ ਬਾਈਟ ਆਉਂਦੇ: ਕੀ ਇਹ ਕੰਡੇ ਦੀ ਤਾਰ ਹੈ?</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">ਲਾਈਨ 'ਤੇ ਲਾਟ ਬਦਲਣਾ</translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished">ਨਾਂ</translation>
    </message>
    <message>
        <source>name of the format</source>
        <translation type="unfinished">ਫਾਰਮੈਟ ਦਾ ਨਾਂ</translation>
    </message>
    <message>
        <source>name of the inspector</source>
        <translation type="unfinished">ਇੰਸਪੈਕਟਰ ਦਾ ਨਾਂ</translation>
    </message>
    <message>
        <source>name the inspector: scan or type who tests</source>
        <translation type="unfinished">ਇੰਸਪੈਕਟਰ ਦਾ ਨਾਂ: ਸਕੈਨ ਜਾਂ ਟਾਈਪ ਕਰੋ</translation>
    </message>
    <message>
        <source>name the wash record: tank and number, as the wash step names it</source>
        <translation type="unfinished">ਧੁਆਈ ਰਿਕਾਰਡ ਦੱਸੋ: ਟੈਂਕ ਤੇ ਨੰਬਰ, ਜਿਵੇਂ ਧੁਆਈ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>near Max</source>
        <translation type="unfinished">ਵੱਧ ਤੋਂ ਵੱਧ ਨੇੜੇ</translation>
    </message>
    <message>
        <source>near the tare</source>
        <translation type="unfinished">ਟੇਅਰ ਦੇ ਨੇੜੇ</translation>
    </message>
    <message>
        <source>net</source>
        <translation type="unfinished">ਸ਼ੁੱਧ</translation>
    </message>
    <message>
        <source>net below {mass}</source>
        <translation type="unfinished">{mass} ਤੋਂ ਘੱਟ ਸ਼ੁੱਧ</translation>
    </message>
    <message>
        <source>net below {mass}; {count} below T2</source>
        <translation type="unfinished">{mass} ਤੋਂ ਘੱਟ ਸ਼ੁੱਧ; T2 ਤੋਂ ਹੇਠਾਂ {count}</translation>
    </message>
    <message>
        <source>net fill</source>
        <translation type="unfinished">ਸ਼ੁੱਧ ਭਰਾਈ</translation>
    </message>
    <message>
        <source>net {mass}: {verdict}</source>
        <translation type="unfinished">ਸ਼ੁੱਧ {mass}: {verdict}</translation>
    </message>
    <message>
        <source>never came out</source>
        <translation type="unfinished">ਨਿਕਲਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>never printed</source>
        <translation type="unfinished">ਛਪਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>new bag {serial}</source>
        <translation type="unfinished">ਨਵਾਂ ਬੈਗ {serial}</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">ਹਾਲੇ PIN ਜਾਂ ਬੈਜ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no USB device</source>
        <translation type="unfinished">ਕੋਈ USB ਯੰਤਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no bag</source>
        <translation type="unfinished">ਕੋਈ ਬੈਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no bag is expected any more</source>
        <translation type="unfinished">ਹੋਰ ਬੈਗ ਦੀ ਉਮੀਦ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no bag is on record yet</source>
        <translation type="unfinished">ਅਜੇ ਕੋਈ ਬੈਗ ਦਰਜ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no bag is taken: {why}</source>
        <translation type="unfinished">ਕੋਈ ਬੈਗ ਨਹੀਂ ਲਿਆ ਜਾਂਦਾ: {why}</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">ਇਹ ਬੈਗ ਉਤਪਾਦ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no bag of this run is labelled yet: pack one, then scan its label</source>
        <translation type="unfinished">ਇਸ ਦੌਰ ਦੇ ਕਿਸੇ ਬੈਗ ਤੇ ਲੇਬਲ ਨਹੀਂ: ਇੱਕ ਪੈਕ ਕਰੋ, ਫਿਰ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>no bag of {scope} {name} is in the record: nothing is held</source>
        <translation type="unfinished">{scope} {name} ਦਾ ਕੋਈ ਬੈਗ ਦਰਜ ਨਹੀਂ: ਕੁਝ ਨਹੀਂ ਰੋਕਿਆ</translation>
    </message>
    <message>
        <source>no checksum known here agrees on all lines: mark another field, or none</source>
        <translation type="unfinished">ਕੋਈ ਜੋੜ ਨਹੀਂ ਮਿਲਦਾ: ਹੋਰ ਖਾਨਾ ਚੁਣੋ, ਜਾਂ ਕੋਈ ਨਾ</translation>
    </message>
    <message>
        <source>no copy</source>
        <translation type="unfinished">ਕੋਈ ਕਾਪੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no day given</source>
        <translation type="unfinished">ਕੋਈ ਦਿਨ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no error at any load</source>
        <translation type="unfinished">ਕਿਸੇ ਭਾਰ ਤੇ ਗਲਤੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">ਕੋਈ ਅੰਕ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no good bag yet</source>
        <translation type="unfinished">ਹਾਲੇ ਕੋਈ ਚੰਗਾ ਬੈਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no good check of {what} after the last bag</source>
        <translation type="unfinished">ਆਖਰੀ ਬੈਗ ਬਾਅਦ {what} ਦੀ ਠੀਕ ਜਾਂਚ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no good check of {what} in the run</source>
        <translation type="unfinished">ਦੌਰ ਵਿੱਚ {what} ਦੀ ਠੀਕ ਜਾਂਚ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">ਲੇਬਲ ਰੋਲ ਨਹੀਂ: ਸਕੈਨ ਕਰੋ {where}</translation>
    </message>
    <message>
        <source>no labelled bag of the last run is loose</source>
        <translation type="unfinished">ਆਖਰੀ ਦੌਰ ਦਾ ਕੋਈ ਲੇਬਲ ਵਾਲਾ ਬੈਗ ਖੁੱਲ੍ਹਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">ਲੇਬਲ ਮੁੱਕ ਗਏ: ਰੋਲ ਪਾਓ</translation>
    </message>
    <message>
        <source>no lot of {component} may be used on {day}</source>
        <translation type="unfinished">{day} ਨੂੰ {component} ਦਾ ਕੋਈ ਲਾਟ ਨਹੀਂ ਵਰਤ ਸਕਦੇ</translation>
    </message>
    <message>
        <source>no old product on line, pan or floor</source>
        <translation type="unfinished">ਲਾਈਨ, ਪੱਲੇ, ਫਰਸ਼ ਤੇ ਪੁਰਾਣਾ ਮਾਲ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished">ਕੀਮਤ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">ਉਤਪਾਦ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no product has it</source>
        <translation type="unfinished">ਕਿਸੇ ਉਤਪਾਦ ਦੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no proposal worked out yet</source>
        <translation type="unfinished">ਹਾਲੇ ਸੁਝਾਅ ਨਹੀਂ ਕੱਢਿਆ</translation>
    </message>
    <message>
        <source>no rate yet</source>
        <translation type="unfinished">ਹਾਲੇ ਰਫ਼ਤਾਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished">ਰੀਡਿੰਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no reading with a bag on the pan</source>
        <translation type="unfinished">ਪੱਲੇ 'ਤੇ ਬੈਗ ਪਰ ਰੀਡਿੰਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no roll is in</source>
        <translation type="unfinished">ਕੋਈ ਰੋਲ ਨਹੀਂ ਲੱਗਾ</translation>
    </message>
    <message>
        <source>no run is open</source>
        <translation type="unfinished">ਕੋਈ ਦੌਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">ਕੋਈ ਦੌਰ ਨਹੀਂ: ਲੀਡ ਸ਼ੁਰੂ ਕਰੇਗਾ</translation>
    </message>
    <message>
        <source>no run yet</source>
        <translation type="unfinished">ਹਾਲੇ ਕੋਈ ਦੌਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no scale yet</source>
        <translation type="unfinished">ਅਜੇ ਕੰਡਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no scan differed: there is nothing to clear</source>
        <translation type="unfinished">ਕੋਈ ਸਕੈਨ ਵੱਖਰਾ ਨਹੀਂ ਸੀ: ਕੁਝ ਠੀਕ ਨਹੀਂ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>no single test weight of {mass}: use 1, 2 or 5 times a power of ten from 1 g to 20 kg</source>
        <translation type="unfinished">{mass} ਦਾ ਇੱਕ ਵੱਟਾ ਨਹੀਂ: 1 g ਤੋਂ 20 kg, ਦਸ ਦੀ ਘਾਤ ਦਾ 1, 2 ਜਾਂ 5 ਗੁਣਾ</translation>
    </message>
    <message>
        <source>no target meets every clause: the fills scatter too much</source>
        <translation type="unfinished">ਕੋਈ ਟੀਚਾ ਸਭ ਪੂਰਾ ਨਹੀਂ ਕਰਦਾ: ਭਰਾਈ ਬਹੁਤ ਵੱਖਰੀ</translation>
    </message>
    <message>
        <source>no time service has kept the clock right for {time}</source>
        <translation type="unfinished">{time} ਤੋਂ ਕਿਸੇ ਸਮਾਂ ਸੇਵਾ ਨੇ ਘੜੀ ਠੀਕ ਨਹੀਂ ਰੱਖੀ</translation>
    </message>
    <message>
        <source>no weight</source>
        <translation type="unfinished">ਭਾਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>nobody may ship them</source>
        <translation type="unfinished">ਕੋਈ ਨਹੀਂ ਭੇਜ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>nobody signed</source>
        <translation type="unfinished">ਕਿਸੇ ਨੇ ਦਸਤਖਤ ਨਹੀਂ ਕੀਤੇ</translation>
    </message>
    <message>
        <source>nobody who may sign has a PIN or badge: station people pin</source>
        <translation type="unfinished">ਦਸਤਖਤ ਕਰਨ ਵਾਲੇ ਕਿਸੇ ਕੋਲ PIN ਜਾਂ ਬੈਜ ਨਹੀਂ: station people pin</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation type="unfinished">ਨਾਮਾਤਰ</translation>
    </message>
    <message>
        <source>nominal {mass}</source>
        <translation type="unfinished">ਨਾਮਾਤਰ {mass}</translation>
    </message>
    <message>
        <source>nominal {mass} against Min {least}</source>
        <translation type="unfinished">ਨਾਮਜ਼ਦ {mass}, Min {least}</translation>
    </message>
    <message>
        <source>nominal {mass} against {count} intervals of {interval}</source>
        <translation type="unfinished">ਨਾਮਜ਼ਦ {mass}, {interval} ਦੀਆਂ {count} ਵੰਡਾਂ</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">ਨਹੀਂ</translation>
    </message>
    <message>
        <source>none left on line</source>
        <translation type="unfinished">ਲਾਈਨ ਤੇ ਕੁਝ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>none of what was heard is a weight by this description</source>
        <translation type="unfinished">ਇਸ ਵੇਰਵੇ ਨਾਲ ਸੁਣਿਆ ਕੁਝ ਵੀ ਭਾਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>none was taken into use on record yet</source>
        <translation type="unfinished">ਅਜੇ ਕੋਈ ਵਰਤੋਂ ਵਿੱਚ ਦਰਜ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">ਹਾਲੇ ਕੋਈ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>not a multiple of {number}</source>
        <translation type="unfinished">{number} ਦਾ ਗੁਣਜ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>not clear yet: {point}</source>
        <translation type="unfinished">ਹਾਲੇ ਸਾਫ਼ ਨਹੀਂ: {point}</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation type="unfinished">ਹਾਲੇ ਗਿਣਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>not due</source>
        <translation type="unfinished">ਹਾਲੇ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>not fit to sell</source>
        <translation type="unfinished">ਵੇਚਣ ਯੋਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>not found: QA decides</source>
        <translation type="unfinished">ਨਹੀਂ ਮਿਲਿਆ: QA ਫੈਸਲਾ ਕਰੇ</translation>
    </message>
    <message>
        <source>not judged: {why}</source>
        <translation type="unfinished">ਪਰਖਿਆ ਨਹੀਂ: {why}</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">ਲੇਬਲ ਨਹੀਂ ਲੱਗਾ: {reason}</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">ਹੁਣ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">ਨਹੀਂ ਛਪਿਆ</translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished">ਨਹੀਂ ਦੱਸਿਆ</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation type="unfinished">ਤੋਲਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>not weighed in</source>
        <translation type="unfinished">ਆਉਣ ਵੇਲੇ ਤੋਲਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">ਹਾਲੇ ਜਾਂਚਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>not yet: {what}</source>
        <translation type="unfinished">ਹਾਲੇ ਨਹੀਂ: {what}</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">ਨੋਟ</translation>
    </message>
    <message>
        <source>nothing about the clock is open</source>
        <translation type="unfinished">ਘੜੀ ਬਾਰੇ ਕੁਝ ਬਾਕੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>nothing on the pan</source>
        <translation type="unfinished">ਪੱਲੇ ਤੇ ਕੁਝ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished">ਹੁਣ</translation>
    </message>
    <message>
        <source>now {number}</source>
        <translation type="unfinished">ਹੁਣ {number}</translation>
    </message>
    <message>
        <source>odd parity</source>
        <translation type="unfinished">ਟਾਂਕ ਪੈਰਿਟੀ</translation>
    </message>
    <message>
        <source>of everything the version says</source>
        <translation type="unfinished">ਵਰਜਨ ਦੀ ਹਰ ਗੱਲ ਦਾ</translation>
    </message>
    <message>
        <source>of the last bag</source>
        <translation type="unfinished">ਆਖਰੀ ਬੈਗ ਦਾ</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">{count} ਬੈਗਾਂ ਵਿੱਚੋਂ</translation>
    </message>
    <message>
        <source>old labels and film are off the line</source>
        <translation type="unfinished">ਪੁਰਾਣੇ ਲੇਬਲ ਤੇ ਫਿਲਮ ਹਟਾਏ</translation>
    </message>
    <message>
        <source>old lots are closed or returned</source>
        <translation type="unfinished">ਪੁਰਾਣੇ ਲਾਟ ਬੰਦ ਜਾਂ ਮੋੜੇ</translation>
    </message>
    <message>
        <source>on another pallet</source>
        <translation type="unfinished">ਹੋਰ ਪੈਲੇਟ ਤੇ</translation>
    </message>
    <message>
        <source>on no label</source>
        <translation type="unfinished">ਕਿਸੇ ਲੇਬਲ ਤੇ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>on the line</source>
        <translation type="unfinished">ਲਾਈਨ ਤੇ</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">ਕੰਡੇ 'ਤੇ: {who}</translation>
    </message>
    <message>
        <source>on the {count} bags to come</source>
        <translation type="unfinished">ਆਉਂਦੇ {count} ਬੈਗਾਂ ਤੇ</translation>
    </message>
    <message>
        <source>on the {count} bags to come, any above the floor will do</source>
        <translation type="unfinished">ਆਉਂਦੇ {count} ਬੈਗਾਂ ਤੇ, ਹੇਠਲੀ ਹੱਦ ਤੋਂ ਵੱਧ ਕੋਈ ਵੀ</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">{code} ਉੱਤੇ ਸਿਰਫ਼ ਸਟੇਸ਼ਨ ਦਾ ਭੇਜਿਆ ਹੀ ਮੁੜਦਾ ਹੈ: ਕੰਡਾ ਚਾਲੂ ਹੈ? ਤਾਰ ਤੇ ਸੈਟਿੰਗ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">{code} ਉੱਤੇ ਸਿਰਫ਼ ਸਟੇਸ਼ਨ ਦਾ ਭੇਜਿਆ ਹੀ ਮੁੜਦਾ ਹੈ: ਕੰਡਾ ਚਾਲੂ ਹੈ? ਤਾਰ ਤੇ ਸੈਟਿੰਗ ਦੇਖੋ ({here})</translation>
    </message>
    <message>
        <source>one line comes again and again and is no weight ({why}): see what the scale shows, such as an error, another unit or another mode, and set it back</source>
        <translation type="unfinished">ਇੱਕੋ ਲਾਈਨ ਵਾਰ ਵਾਰ ਆਉਂਦੀ ਹੈ ਤੇ ਭਾਰ ਨਹੀਂ ({why}): ਦੇਖੋ ਕੰਡਾ ਕੀ ਦਿਖਾਉਂਦਾ ਹੈ, ਜਿਵੇਂ ਗਲਤੀ, ਹੋਰ ਇਕਾਈ ਜਾਂ ਹੋਰ ਢੰਗ, ਤੇ ਪਹਿਲਾਂ ਵਾਂਗ ਕਰੋ</translation>
    </message>
    <message>
        <source>one new bag stands for one reject: touch one alone</source>
        <translation type="unfinished">ਇੱਕ ਨਵਾਂ ਬੈਗ ਇੱਕ ਰੱਦ ਲਈ: ਇੱਕੋ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>one of {count} bags</source>
        <translation type="unfinished">{count} ਵਿੱਚੋਂ ਇੱਕ ਬੈਗ</translation>
    </message>
    <message>
        <source>only a lead goes on after a mismatch</source>
        <translation type="unfinished">ਫ਼ਰਕ ਤੋਂ ਬਾਅਦ ਸਿਰਫ਼ ਲੀਡ ਜਾਰੀ ਕਰੇ</translation>
    </message>
    <message>
        <source>only just suits</source>
        <translation type="unfinished">ਮਸਾਂ ਠੀਕ</translation>
    </message>
    <message>
        <source>only where in doubt</source>
        <translation type="unfinished">ਸਿਰਫ਼ ਸ਼ੱਕ ਵਾਲਾ</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">ਬਾਕੀ</translation>
    </message>
    <message>
        <source>open order</source>
        <translation type="unfinished">ਖੁੱਲ੍ਹਾ ਆਰਡਰ</translation>
    </message>
    <message>
        <source>or scan a badge</source>
        <translation type="unfinished">ਜਾਂ ਬੈਜ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>or the day</source>
        <translation type="unfinished">ਜਾਂ ਦਿਨ</translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished">ਹੋਰ ਕਾਰਨ</translation>
    </message>
    <message>
        <source>other unit {found}, the line runs in {unit}: set the scale back</source>
        <translation type="unfinished">ਹੋਰ ਇਕਾਈ {found}, ਲਾਈਨ {unit} ਵਿੱਚ ਹੈ: ਕੰਡਾ ਠੀਕ ਕਰੋ</translation>
    </message>
    <message>
        <source>out of bags</source>
        <translation type="unfinished">ਬੈਗਾਂ ਵਿੱਚੋਂ</translation>
    </message>
    <message>
        <source>over capacity</source>
        <translation type="unfinished">ਹੱਦ ਤੋਂ ਵੱਧ</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">ਹੱਦ ਤੋਂ ਵੱਧ ਭਾਰ: ਭਾਰ ਚੁੱਕੋ</translation>
    </message>
    <message>
        <source>over capacity: take the load off the pan</source>
        <translation type="unfinished">ਹੱਦ ਤੋਂ ਵੱਧ ਭਾਰ: ਪੱਲੇ ਤੋਂ ਭਾਰ ਚੁੱਕੋ</translation>
    </message>
    <message>
        <source>packed</source>
        <translation type="unfinished">ਪੈਕ ਹੋਇਆ</translation>
    </message>
    <message>
        <source>packed {day}</source>
        <translation type="unfinished">ਪੈਕ {day}</translation>
    </message>
    <message>
        <source>packed {time} by {who}, production day {day}</source>
        <translation type="unfinished">{time} ਪੈਕ, {who}, ਉਤਪਾਦਨ ਦਿਨ {day}</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">ਪੈਕਰ</translation>
    </message>
    <message>
        <source>pallet</source>
        <translation type="unfinished">ਪੈਲੇਟ</translation>
    </message>
    <message>
        <source>pallet broken up</source>
        <translation type="unfinished">ਪੈਲੇਟ ਖੋਲ੍ਹਿਆ</translation>
    </message>
    <message>
        <source>pallet {code}</source>
        <translation type="unfinished">ਪੈਲੇਟ {code}</translation>
    </message>
    <message>
        <source>pan, chute and tools are clean and dry</source>
        <translation type="unfinished">ਪੱਲਾ, ਚੂਟ ਤੇ ਸੰਦ ਸਾਫ਼ ਤੇ ਸੁੱਕੇ</translation>
    </message>
    <message>
        <source>paper: delivery note 12</source>
        <translation type="unfinished">ਕਾਗਜ਼: ਡਿਲਿਵਰੀ ਨੋਟ 12</translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished">ਪਾਸ</translation>
    </message>
    <message>
        <source>pause</source>
        <translation type="unfinished">ਰੋਕ</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">ਜਾਂਚ ਦੀ ਤਿਆਰੀ ਕਰੋ</translation>
    </message>
    <message>
        <source>plate {code}</source>
        <translation type="unfinished">ਪਲੇਟ {code}</translation>
    </message>
    <message>
        <source>plus or minus</source>
        <translation type="unfinished">ਜੋੜ ਜਾਂ ਘਟਾਓ</translation>
    </message>
    <message>
        <source>poor print</source>
        <translation type="unfinished">ਮਾੜੀ ਛਪਾਈ</translation>
    </message>
    <message>
        <source>port {code}</source>
        <translation type="unfinished">ਪੋਰਟ {code}</translation>
    </message>
    <message>
        <source>position</source>
        <translation type="unfinished">ਥਾਂ</translation>
    </message>
    <message>
        <source>present are</source>
        <translation type="unfinished">ਮੌਜੂਦ ਹਨ</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">ਲੇਬਲ ਦੁਬਾਰਾ ਛਾਪਣਾ</translation>
    </message>
    <message>
        <source>print unreadable</source>
        <translation type="unfinished">ਛਪਾਈ ਪੜ੍ਹੀ ਨਹੀਂ ਜਾਂਦੀ</translation>
    </message>
    <message>
        <source>product</source>
        <translation type="unfinished">ਉਤਪਾਦ</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">ਉਤਪਾਦ ਦਾ ਤਾਪਮਾਨ</translation>
    </message>
    <message>
        <source>product {product} cannot run on this scale: {why}</source>
        <translation type="unfinished">ਉਤਪਾਦ {product} ਇਸ ਕੰਡੇ ਤੇ ਨਹੀਂ ਚੱਲ ਸਕਦਾ: {why}</translation>
    </message>
    <message>
        <source>product {product} is at version {version} now, not {other}: choose it again</source>
        <translation type="unfinished">ਉਤਪਾਦ {product} ਹੁਣ ਰੂਪ {version} ਹੈ, {other} ਨਹੀਂ: ਮੁੜ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>product {product} is not known: choose one of {allowed}</source>
        <translation type="unfinished">ਉਤਪਾਦ {product} ਅਣਜਾਣ: ਇਹਨਾਂ ਵਿੱਚੋਂ ਚੁਣੋ {allowed}</translation>
    </message>
    <message>
        <source>product {product} version {version}, as it is set</source>
        <translation type="unfinished">ਉਤਪਾਦ {product} ਰੂਪ {version}, ਜਿਵੇਂ ਸੈੱਟ</translation>
    </message>
    <message>
        <source>production day</source>
        <translation type="unfinished">ਉਤਪਾਦਨ ਦਿਨ</translation>
    </message>
    <message>
        <source>propose a target</source>
        <translation type="unfinished">ਟੀਚਾ ਸੁਝਾਉਣਾ</translation>
    </message>
    <message>
        <source>proposed</source>
        <translation type="unfinished">ਸੁਝਾਇਆ</translation>
    </message>
    <message>
        <source>purge old runs</source>
        <translation type="unfinished">ਪੁਰਾਣੇ ਦੌਰ ਮਿਟਾਉਣਾ</translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished">ਲਗਾਇਆ</translation>
    </message>
    <message>
        <source>put it right, then check again</source>
        <translation type="unfinished">ਠੀਕ ਕਰੋ, ਫਿਰ ਜਾਂਚੋ</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>qa check</source>
        <translation type="unfinished">QA ਜਾਂਚ</translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished">ਰਫ਼ਤਾਰ</translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished">ਪੜ੍ਹਿਆ</translation>
    </message>
    <message>
        <source>reason</source>
        <translation type="unfinished">ਕਾਰਨ</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">ਮਾਲ ਪ੍ਰਾਪਤ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>received {day}</source>
        <translation type="unfinished">ਲਿਆ {day}</translation>
    </message>
    <message>
        <source>record a check of quality</source>
        <translation type="unfinished">ਗੁਣਵੱਤਾ ਜਾਂਚ ਦਰਜ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>record a good check of the scale</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਸਹੀ ਜਾਂਚ ਦਰਜ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>record a study of empty bags</source>
        <translation type="unfinished">ਖਾਲੀ ਬੈਗਾਂ ਦੀ ਜਾਂਚ ਦਰਜ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>record an empty bag that fits</source>
        <translation type="unfinished">ਠੀਕ ਖਾਲੀ ਬੈਗ ਦਰਜ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>record that a check failed</source>
        <translation type="unfinished">ਫੇਲ੍ਹ ਜਾਂਚ ਦਰਜ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation type="unfinished">ਦਰਜ</translation>
    </message>
    <message>
        <source>recounted, stays open</source>
        <translation type="unfinished">ਮੁੜ ਗਿਣੇ, ਬਾਕੀ ਰਹੇ</translation>
    </message>
    <message>
        <source>reference</source>
        <translation type="unfinished">ਹਵਾਲਾ</translation>
    </message>
    <message>
        <source>refuse a label</source>
        <translation type="unfinished">ਲੇਬਲ ਨਾਮਨਜ਼ੂਰ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>refused</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ</translation>
    </message>
    <message>
        <source>refused: {why}</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ: {why}</translation>
    </message>
    <message>
        <source>reject</source>
        <translation type="unfinished">ਰੱਦ</translation>
    </message>
    <message>
        <source>reject ticket</source>
        <translation type="unfinished">ਰੱਦ ਪਰਚੀ</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">ਰੋਕੀ ਚੀਜ਼ ਛੱਡਣਾ</translation>
    </message>
    <message>
        <source>released</source>
        <translation type="unfinished">ਛੱਡਿਆ</translation>
    </message>
    <message>
        <source>released at the line by QA</source>
        <translation type="unfinished">QA ਨੇ ਲਾਈਨ ਤੇ ਛੱਡਿਆ</translation>
    </message>
    <message>
        <source>released before the step</source>
        <translation type="unfinished">ਛਾਲ ਤੋਂ ਪਹਿਲੇ ਛੱਡੇ</translation>
    </message>
    <message>
        <source>remark on what is open</source>
        <translation type="unfinished">ਬਾਕੀ ਬਾਰੇ ਨੋਟ</translation>
    </message>
    <message>
        <source>repacked</source>
        <translation type="unfinished">ਮੁੜ ਪੈਕ</translation>
    </message>
    <message>
        <source>rest N2</source>
        <translation type="unfinished">ਬਾਕੀ N2</translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished">ਨਤੀਜਾ</translation>
    </message>
    <message>
        <source>returned</source>
        <translation type="unfinished">ਮੋੜਿਆ</translation>
    </message>
    <message>
        <source>returned {count}</source>
        <translation type="unfinished">ਮੋੜੇ {count}</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">ਦਿਨ ਦੇਖਣਾ ਤੇ ਦਸਤਖਤ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>reviewed</source>
        <translation type="unfinished">ਦੇਖਿਆ</translation>
    </message>
    <message>
        <source>reviewed with exceptions</source>
        <translation type="unfinished">ਛੋਟਾਂ ਨਾਲ ਦੇਖਿਆ</translation>
    </message>
    <message>
        <source>rework</source>
        <translation type="unfinished">ਮੁੜ ਕੰਮ</translation>
    </message>
    <message>
        <source>rework of {lot} was packed {time} ago: it may go back on the line for {most}</source>
        <translation type="unfinished">{lot} ਦਾ ਮੁੜ ਕੰਮ {time} ਪਹਿਲਾਂ ਪੈਕ ਹੋਇਆ: {most} ਤੱਕ ਲਾਈਨ ਤੇ ਮੁੜ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>reworked</source>
        <translation type="unfinished">ਮੁੜ ਕੰਮ</translation>
    </message>
    <message>
        <source>ribbon or ink is missing: put it in</source>
        <translation type="unfinished">ਰਿਬਨ ਜਾਂ ਸਿਆਹੀ ਨਹੀਂ: ਪਾਓ</translation>
    </message>
    <message>
        <source>ribbon or ink is used up: change it</source>
        <translation type="unfinished">ਰਿਬਨ ਜਾਂ ਸਿਆਹੀ ਮੁੱਕੀ: ਬਦਲੋ</translation>
    </message>
    <message>
        <source>roll {code}</source>
        <translation type="unfinished">ਰੋਲ {code}</translation>
    </message>
    <message>
        <source>roll {roll} is in: take it out first</source>
        <translation type="unfinished">ਰੋਲ {roll} ਲੱਗਾ ਹੈ: ਪਹਿਲਾਂ ਕੱਢੋ</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation type="unfinished">ਕਮਰੇ ਦਾ ਤਾਪਮਾਨ</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">ਨਿਯਮ</translation>
    </message>
    <message>
        <source>run</source>
        <translation type="unfinished">ਦੌਰ</translation>
    </message>
    <message>
        <source>run of {product} ended</source>
        <translation type="unfinished">{product} ਦਾ ਦੌਰ ਖਤਮ</translation>
    </message>
    <message>
        <source>run of {product} open, blend lot {lot}</source>
        <translation type="unfinished">{product} ਦਾ ਦੌਰ ਸ਼ੁਰੂ, ਮਿਸ਼ਰਣ ਲਾਟ {lot}</translation>
    </message>
    <message>
        <source>run reconciled</source>
        <translation type="unfinished">ਦੌਰ ਮਿਲਾਇਆ</translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished">ਨਮੂਨਾ</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation type="unfinished">ਨਮੂਨਾ</translation>
    </message>
    <message>
        <source>samples {count}</source>
        <translation type="unfinished">ਨਮੂਨੇ {count}</translation>
    </message>
    <message>
        <source>say that an alarm is seen</source>
        <translation type="unfinished">ਅਲਾਰਮ ਦੇਖਿਆ ਦੱਸਣਾ</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">ਲੇਬਲ ਦਾ ਕੀ ਹੋਇਆ ਦੱਸਣਾ</translation>
    </message>
    <message>
        <source>say which lot is empty</source>
        <translation type="unfinished">ਦੱਸੋ ਕਿਹੜਾ ਲਾਟ ਖਾਲੀ</translation>
    </message>
    <message>
        <source>say which lot is on the line</source>
        <translation type="unfinished">ਦੱਸੋ ਲਾਈਨ 'ਤੇ ਕਿਹੜਾ ਲਾਟ ਹੈ</translation>
    </message>
    <message>
        <source>say who is on the scale</source>
        <translation type="unfinished">ਦੱਸੋ ਕੰਡੇ 'ਤੇ ਕੌਣ ਹੈ</translation>
    </message>
    <message>
        <source>say who leads</source>
        <translation type="unfinished">ਦੱਸੋ ਲੀਡ ਕੌਣ ਹੈ</translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished">ਕੰਡਾ</translation>
    </message>
    <message>
        <source>scale check</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਜਾਂਚ</translation>
    </message>
    <message>
        <source>scale check at the end of the run</source>
        <translation type="unfinished">ਦੌਰ ਦੇ ਅੰਤ 'ਤੇ ਕੰਡੇ ਦੀ ਜਾਂਚ</translation>
    </message>
    <message>
        <source>scale interval {mass} against at most {most} for {nominal}</source>
        <translation type="unfinished">ਵੰਡ {mass}, {nominal} ਲਈ ਵੱਧ ਤੋਂ ਵੱਧ {most}</translation>
    </message>
    <message>
        <source>scale interval {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">ਵੰਡ {mass}, {limit} ਦਾ {share} = {most}</translation>
    </message>
    <message>
        <source>scale line</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਤਾਰ</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">ਕੰਡਾ {mass} ਦੱਸਦਾ ਹੈ, ਕੰਡੇ ਦੀ ਰੀਡਿੰਗ ਹੀ ਮੰਨੀ ਜਾਵੇਗੀ</translation>
    </message>
    <message>
        <source>scale's port {code} cannot be opened</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਪੋਰਟ {code} ਨਹੀਂ ਖੁੱਲ੍ਹਦੀ</translation>
    </message>
    <message>
        <source>scan a case or pallet</source>
        <translation type="unfinished">ਡੱਬਾ ਜਾਂ ਪੈਲੇਟ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>scan a label or lot</source>
        <translation type="unfinished">ਲੇਬਲ ਜਾਂ ਲਾਟ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan a lot</source>
        <translation type="unfinished">ਲਾਟ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan a lot, or touch one</source>
        <translation type="unfinished">ਲਾਟ ਸਕੈਨ ਕਰੋ, ਜਾਂ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>scan a picked bag</source>
        <translation type="unfinished">ਚੁਣਿਆ ਬੈਗ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan a ticket or label</source>
        <translation type="unfinished">ਪਰਚੀ ਜਾਂ ਲੇਬਲ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan back</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ</translation>
    </message>
    <message>
        <source>scan of a label</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ</translation>
    </message>
    <message>
        <source>scan or type a lot code, then Enter</source>
        <translation type="unfinished">ਲਾਟ ਕੋਡ ਸਕੈਨ ਜਾਂ ਟਾਈਪ ਕਰੋ, ਫਿਰ Enter</translation>
    </message>
    <message>
        <source>scan or type the film lot</source>
        <translation type="unfinished">ਫਿਲਮ ਲਾਟ ਸਕੈਨ ਜਾਂ ਟਾਈਪ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan pallets and cases</source>
        <translation type="unfinished">ਪੈਲੇਟ ਤੇ ਡੱਬੇ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the bags</source>
        <translation type="unfinished">ਬੈਗ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the bags of the case first</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਡੱਬੇ ਦੇ ਬੈਗ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the case label</source>
        <translation type="unfinished">ਡੱਬੇ ਦਾ ਲੇਬਲ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the cases</source>
        <translation type="unfinished">ਡੱਬੇ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the cases of the pallet first</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਪੈਲੇਟ ਦੇ ਡੱਬੇ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the label</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the label of the new bag</source>
        <translation type="unfinished">ਨਵੇਂ ਬੈਗ ਦਾ ਲੇਬਲ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the label, or type its serial</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ ਕਰੋ, ਜਾਂ ਨੰਬਰ ਲਿਖੋ</translation>
    </message>
    <message>
        <source>scan the last label</source>
        <translation type="unfinished">ਆਖਰੀ ਲੇਬਲ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the pallets and cases that leave</source>
        <translation type="unfinished">ਜਾਣ ਵਾਲੇ ਪੈਲੇਟ ਤੇ ਡੱਬੇ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>scan the roll, then Enter</source>
        <translation type="unfinished">ਰੋਲ ਸਕੈਨ ਕਰੋ, ਫਿਰ Enter</translation>
    </message>
    <message>
        <source>scan the {what}: {where}</source>
        <translation type="unfinished">{what} ਸਕੈਨ ਕਰੋ: {where}</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">ਸੀਲ</translation>
    </message>
    <message>
        <source>seal in doubt</source>
        <translation type="unfinished">ਸੀਲ ਤੇ ਸ਼ੱਕ</translation>
    </message>
    <message>
        <source>seal open</source>
        <translation type="unfinished">ਸੀਲ ਖੁੱਲ੍ਹੀ</translation>
    </message>
    <message>
        <source>seen on its bag</source>
        <translation type="unfinished">ਬੈਗ ਤੇ ਦੇਖਿਆ</translation>
    </message>
    <message>
        <source>sent to the laboratory</source>
        <translation type="unfinished">ਲੈਬ ਨੂੰ ਭੇਜਿਆ</translation>
    </message>
    <message>
        <source>sent to the scale</source>
        <translation type="unfinished">ਕੰਡੇ ਨੂੰ ਭੇਜਿਆ</translation>
    </message>
    <message>
        <source>serial</source>
        <translation type="unfinished">ਨੰਬਰ</translation>
    </message>
    <message>
        <source>serial number on its plate</source>
        <translation type="unfinished">ਪਲੇਟ ਤੇ ਸੀਰੀਅਲ ਨੰਬਰ</translation>
    </message>
    <message>
        <source>serial number {shown}: give the 1 to 40 characters of the plate</source>
        <translation type="unfinished">ਸੀਰੀਅਲ {shown}: ਪਲੇਟ ਦੇ 1 ਤੋਂ 40 ਅੱਖਰ ਲਿਖੋ</translation>
    </message>
    <message>
        <source>serial {code}</source>
        <translation type="unfinished">ਸੀਰੀਅਲ {code}</translation>
    </message>
    <message>
        <source>serials</source>
        <translation type="unfinished">ਨੰਬਰ</translation>
    </message>
    <message>
        <source>service</source>
        <translation type="unfinished">ਸੇਵਾ</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">ਵੱਖ ਰੱਖਿਆ</translation>
    </message>
    <message>
        <source>set aside: {reason}</source>
        <translation type="unfinished">ਵੱਖ ਰੱਖਿਆ: {reason}</translation>
    </message>
    <message>
        <source>set on purpose</source>
        <translation type="unfinished">ਜਾਣ ਬੁੱਝ ਕੇ ਬਦਲੀ</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">ਲੋਕ, PIN ਤੇ ਬੈਜ ਤੈਅ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>set to {mass} in the settings</source>
        <translation type="unfinished">ਸੈਟਿੰਗ ਵਿੱਚ {mass}</translation>
    </message>
    <message>
        <source>set unit, interval and capacity under [scale] of station.toml first</source>
        <translation type="unfinished">ਪਹਿਲਾਂ station.toml ਦੇ [scale] ਵਿੱਚ ਇਕਾਈ, ਵੰਡ ਤੇ ਹੱਦ ਲਿਖੋ</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">ਵੱਖ ਰੱਖ ਰਹੇ ਹਾਂ: {reason}</translation>
    </message>
    <message>
        <source>setting bag {serial} aside needs a reason: choose one</source>
        <translation type="unfinished">ਬੈਗ {serial} ਵੱਖ ਰੱਖਣ ਲਈ ਕਾਰਨ ਚਾਹੀਦਾ: ਚੁਣੋ</translation>
    </message>
    <message>
        <source>shelve an alarm</source>
        <translation type="unfinished">ਅਲਾਰਮ ਟਾਲਣਾ</translation>
    </message>
    <message>
        <source>shelved until {time}</source>
        <translation type="unfinished">{time} ਤੱਕ ਟਾਲਿਆ</translation>
    </message>
    <message>
        <source>shift</source>
        <translation type="unfinished">ਸ਼ਿਫਟ</translation>
    </message>
    <message>
        <source>shift {shift}</source>
        <translation type="unfinished">ਸ਼ਿਫਟ {shift}</translation>
    </message>
    <message>
        <source>ship</source>
        <translation type="unfinished">ਰਵਾਨਾ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>shipment</source>
        <translation type="unfinished">ਰਵਾਨਗੀ</translation>
    </message>
    <message>
        <source>shipment came back</source>
        <translation type="unfinished">ਰਵਾਨਗੀ ਵਾਪਸ ਆਈ</translation>
    </message>
    <message>
        <source>shipment withdrawn</source>
        <translation type="unfinished">ਰਵਾਨਗੀ ਵਾਪਸ ਲਈ</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">ਦੌਰ ਬਦਲੀ 'ਤੇ ਦਸਤਖਤ</translation>
    </message>
    <message>
        <source>signed with a difference</source>
        <translation type="unfinished">ਫ਼ਰਕ ਨਾਲ ਦਸਤਖਤ</translation>
    </message>
    <message>
        <source>since</source>
        <translation type="unfinished">ਤੋਂ</translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation type="unfinished">{time} ਤੋਂ</translation>
    </message>
    <message>
        <source>since {time}, seen by {who}</source>
        <translation type="unfinished">{time} ਤੋਂ, {who} ਨੇ ਦੇਖਿਆ</translation>
    </message>
    <message>
        <source>software</source>
        <translation type="unfinished">ਸਾਫਟਵੇਅਰ</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing</source>
        <translation type="unfinished">ਪੂਰੀ: ਪਹਿਲੇ ਬੈਗ ਤੋਂ {error}, ਟੁੱਟਵੀਂ: ਵਧਦੀ</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing, step: as dated</source>
        <translation type="unfinished">ਪੂਰੀ: ਪਹਿਲੇ ਬੈਗ ਤੋਂ {error}, ਟੁੱਟਵੀਂ: ਵਧਦੀ, ਛਾਲ: ਸਮੇਂ ਵਾਲੀ</translation>
    </message>
    <message>
        <source>spoiled ones not counted</source>
        <translation type="unfinished">ਖਰਾਬ ਗਿਣੇ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>spoiled {count}</source>
        <translation type="unfinished">ਖਰਾਬ {count}</translation>
    </message>
    <message>
        <source>spooled</source>
        <translation type="unfinished">ਕਤਾਰ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>spread of the fills</source>
        <translation type="unfinished">ਭਰਾਈ ਦਾ ਫੈਲਾਅ</translation>
    </message>
    <message>
        <source>spread {spread}: a mean of {mean} or more, by the {what} rule</source>
        <translation type="unfinished">ਫੈਲਾਅ {spread}: ਔਸਤ {mean} ਜਾਂ ਵੱਧ, ਨਿਯਮ {what}</translation>
    </message>
    <message>
        <source>start a run</source>
        <translation type="unfinished">ਦੌਰ ਸ਼ੁਰੂ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>state</source>
        <translation type="unfinished">ਹਾਲ</translation>
    </message>
    <message>
        <source>status {code} with the weight {shown}, it needs ten dashes</source>
        <translation type="unfinished">ਸਥਿਤੀ {code} ਨਾਲ ਭਾਰ {shown}: ਦਸ ਡੈਸ਼ ਚਾਹੀਦੇ</translation>
    </message>
    <message>
        <source>stood</source>
        <translation type="unfinished">ਖੜ੍ਹੀ</translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished">ਰੋਕ</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">ਲਾਈਨ ਰੋਕਣਾ</translation>
    </message>
    <message>
        <source>stops</source>
        <translation type="unfinished">ਰੁਕਾਵਟਾਂ</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">ਰੱਖੇ ਬੈਗ</translation>
    </message>
    <message>
        <source>stuck on askew</source>
        <translation type="unfinished">ਟੇਢਾ ਲੱਗਾ</translation>
    </message>
    <message>
        <source>study of its film lot: {study}</source>
        <translation type="unfinished">ਇਸ ਦੇ ਫਿਲਮ ਲਾਟ ਦੀ ਜਾਂਚ: {study}</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation type="unfinished">ਭੇਜਿਆ</translation>
    </message>
    <message>
        <source>suits</source>
        <translation type="unfinished">ਠੀਕ</translation>
    </message>
    <message>
        <source>suspect</source>
        <translation type="unfinished">ਸ਼ੱਕੀ</translation>
    </message>
    <message>
        <source>suspect window</source>
        <translation type="unfinished">ਸ਼ੱਕੀ ਸਮਾਂ</translation>
    </message>
    <message>
        <source>suspect window of {what}</source>
        <translation type="unfinished">{what} ਦਾ ਸ਼ੱਕੀ ਸਮਾਂ</translation>
    </message>
    <message>
        <source>take it off the line</source>
        <translation type="unfinished">ਲਾਈਨ ਤੋਂ ਹਟਾਓ</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">ਹਟਾਓ: {where}</translation>
    </message>
    <message>
        <source>take old files off the disk</source>
        <translation type="unfinished">ਡਿਸਕ ਤੋਂ ਪੁਰਾਣੀਆਂ ਫਾਈਲਾਂ ਹਟਾਓ</translation>
    </message>
    <message>
        <source>take over changed settings</source>
        <translation type="unfinished">ਬਦਲੀਆਂ ਸੈਟਿੰਗਾਂ ਮੰਨਣਾ</translation>
    </message>
    <message>
        <source>take the lot off and load another</source>
        <translation type="unfinished">ਲਾਟ ਹਟਾਓ ਤੇ ਹੋਰ ਲਗਾਓ</translation>
    </message>
    <message>
        <source>take the old lot off and load the next in one step, or end the run</source>
        <translation type="unfinished">ਪੁਰਾਣਾ ਲਾਟ ਹਟਾਓ ਤੇ ਅਗਲਾ ਨਾਲ ਹੀ ਲਗਾਓ, ਜਾਂ ਦੌਰ ਮੁਕਾਓ</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation type="unfinished">ਖੋਲ੍ਹੇ ਗਏ</translation>
    </message>
    <message>
        <source>taken by QA</source>
        <translation type="unfinished">QA ਨੇ ਲਏ</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation type="unfinished">ਕੱਢਿਆ</translation>
    </message>
    <message>
        <source>tare</source>
        <translation type="unfinished">ਟੇਅਰ</translation>
    </message>
    <message>
        <source>tare error</source>
        <translation type="unfinished">ਟੇਅਰ ਗਲਤੀ</translation>
    </message>
    <message>
        <source>tare {mass}</source>
        <translation type="unfinished">ਟੇਅਰ {mass}</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">ਟੀਚਾ</translation>
    </message>
    <message>
        <source>target of {product}</source>
        <translation type="unfinished">{product} ਦਾ ਟੀਚਾ</translation>
    </message>
    <message>
        <source>target {mass} now</source>
        <translation type="unfinished">ਟੀਚਾ {mass} ਹੁਣ</translation>
    </message>
    <message>
        <source>target {mass} proposed</source>
        <translation type="unfinished">ਟੀਚਾ {mass} ਸੁਝਾਇਆ</translation>
    </message>
    <message>
        <source>teach a scale of your own</source>
        <translation type="unfinished">ਆਪਣਾ ਕੰਡਾ ਸਿਖਾਓ</translation>
    </message>
    <message>
        <source>tell maintenance</source>
        <translation type="unfinished">ਮੁਰੰਮਤ ਵਾਲਿਆਂ ਨੂੰ ਦੱਸੋ</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation type="unfinished">ਦਸਵੇਂ</translation>
    </message>
    <message>
        <source>test weights of class {code} for {mass} may be wrong by {own}, more than a third of the {allowed} the scale may be: use a finer class</source>
        <translation type="unfinished">{mass} ਲਈ ਸ਼੍ਰੇਣੀ {code} ਦੇ ਵੱਟੇ {own} ਗਲਤ ਹੋ ਸਕਦੇ, ਕੰਡੇ ਦੇ {allowed} ਦੇ ਤੀਜੇ ਹਿੱਸੇ ਤੋਂ ਵੱਧ: ਚੰਗੀ ਸ਼੍ਰੇਣੀ ਵਰਤੋ</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity ({here})</source>
        <translation type="unfinished">ਲਿਖਤ ਆਉਂਦੀ ਪਰ ਇਸ ਪ੍ਰੋਟੋਕੋਲ ਦਾ ਭਾਰ ਨਹੀਂ: ਇਸ ਪੋਰਟ ਉੱਤੇ ਹੋਰ ਯੰਤਰ, ਜਾਂ ਕੰਡੇ ਉੱਤੇ ਹੋਰ ਰੂਪ? ਨਹੀਂ ਤਾਂ ਬੌਡ ਤੇ ਪੈਰਿਟੀ ਦੇਖੋ ({here})</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity of the converter</source>
        <translation type="unfinished">ਲਿਖਤ ਆਉਂਦੀ ਪਰ ਇਸ ਪ੍ਰੋਟੋਕੋਲ ਦਾ ਭਾਰ ਨਹੀਂ: ਇਸ ਪੋਰਟ ਉੱਤੇ ਹੋਰ ਯੰਤਰ, ਜਾਂ ਕੰਡੇ ਉੱਤੇ ਹੋਰ ਰੂਪ? ਨਹੀਂ ਤਾਂ ਕਨਵਰਟਰ ਦਾ ਬੌਡ ਤੇ ਪੈਰਿਟੀ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>the bag on the pan may hold lot {lot}, which is held: set it aside and lift it, then change the lot</source>
        <translation type="unfinished">ਪੱਲੇ ਵਾਲੇ ਬੈਗ ਵਿੱਚ ਰੋਕਿਆ ਲਾਟ {lot} ਹੋ ਸਕਦਾ: ਵੱਖ ਰੱਖੋ ਤੇ ਚੁੱਕੋ, ਫਿਰ ਲਾਟ ਬਦਲੋ</translation>
    </message>
    <message>
        <source>the bags scatter too much for a mean tare ({study}): use other bags</source>
        <translation type="unfinished">ਔਸਤ ਟੇਅਰ ਲਈ ਬੈਗ ਬਹੁਤ ਵੱਖਰੇ ({study}): ਹੋਰ ਬੈਗ ਵਰਤੋ</translation>
    </message>
    <message>
        <source>the centre is not reached</source>
        <translation type="unfinished">ਕੇਂਦਰ ਨਾਲ ਸੰਪਰਕ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>the centre stops {what} {code} ({reason}): {end}</source>
        <translation type="unfinished">ਕੇਂਦਰ ਨੇ ਰੋਕਿਆ {what} {code} ({reason}): {end}</translation>
    </message>
    <message>
        <source>the check of the scale is overdue: {where}</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਜਾਂਚ ਵਿੱਚ ਦੇਰੀ: {where}</translation>
    </message>
    <message>
        <source>the check of {what} is overdue: {where}</source>
        <translation type="unfinished">{what} ਦੀ ਜਾਂਚ ਵਿੱਚ ਦੇਰੀ: {where}</translation>
    </message>
    <message>
        <source>the clock is {time} behind the newest entry of the record</source>
        <translation type="unfinished">ਘੜੀ ਆਖਰੀ ਦਰਜ ਤੋਂ {time} ਪਿੱਛੇ ਹੈ</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}</source>
        <translation type="unfinished">ਘੜੀ {time} {way} ਗਈ</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}, to another day</source>
        <translation type="unfinished">ਘੜੀ {time} {way} ਗਈ, ਹੋਰ ਦਿਨ ਤੇ</translation>
    </message>
    <message>
        <source>the clock was set between the checks: the bags have no sure order in time</source>
        <translation type="unfinished">ਜਾਂਚਾਂ ਵਿਚਕਾਰ ਘੜੀ ਬਦਲੀ: ਬੈਗਾਂ ਦਾ ਕ੍ਰਮ ਪੱਕਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>the code holds a character that no code of ours has</source>
        <translation type="unfinished">ਕੋਡ ਵਿੱਚ ਅਜਿਹਾ ਅੱਖਰ ਹੈ ਜੋ ਸਾਡੇ ਕਿਸੇ ਕੋਡ ਵਿੱਚ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>the code presses keys that are no text</source>
        <translation type="unfinished">ਕੋਡ ਅਜਿਹੀਆਂ ਕੁੰਜੀਆਂ ਦੱਬਦਾ ਹੈ ਜੋ ਲਿਖਤ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>the computer slept or was held up: what the scale sent is too old</source>
        <translation type="unfinished">ਕੰਪਿਊਟਰ ਸੁੱਤਾ ਜਾਂ ਰੁਕਿਆ ਸੀ: ਕੰਡੇ ਦਾ ਭੇਜਿਆ ਬਹੁਤ ਪੁਰਾਣਾ ਹੈ</translation>
    </message>
    <message>
        <source>the demo's settings stay as they are</source>
        <translation type="unfinished">ਡੈਮੋ ਦੀ ਸੈਟਿੰਗ ਨਹੀਂ ਬਦਲਦੀ</translation>
    </message>
    <message>
        <source>the device is gone, or another program reads the same port</source>
        <translation type="unfinished">ਯੰਤਰ ਨਹੀਂ ਹੈ, ਜਾਂ ਹੋਰ ਪ੍ਰੋਗਰਾਮ ਉਹੀ ਪੋਰਟ ਪੜ੍ਹਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>the disk cannot be asked: {why}</source>
        <translation type="unfinished">ਡਿਸਕ ਪੁੱਛੀ ਨਹੀਂ ਜਾ ਸਕਦੀ: {why}</translation>
    </message>
    <message>
        <source>the disk fills up</source>
        <translation type="unfinished">ਡਿਸਕ ਭਰ ਰਹੀ ਹੈ</translation>
    </message>
    <message>
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">ਡਿਸਕ ਭਰੀ ਹੈ: ਥਾਂ ਬਣਾਓ, ਫਿਰ ਛਾਪੋ</translation>
    </message>
    <message>
        <source>the disk is nearly full: free {more} on it, then packing goes on by itself</source>
        <translation type="unfinished">ਡਿਸਕ ਲਗਭਗ ਭਰੀ: {more} ਖਾਲੀ ਕਰੋ, ਫਿਰ ਪੈਕਿੰਗ ਆਪੇ ਚੱਲੇਗੀ</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: take old files off it, or call maintenance</source>
        <translation type="unfinished">ਡਿਸਕ {percent} % ਭਰੀ, {free} ਖਾਲੀ: ਪੁਰਾਣੀਆਂ ਫਾਈਲਾਂ ਹਟਾਓ, ਜਾਂ ਮੁਰੰਮਤ ਵਾਲੇ ਬੁਲਾਓ</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: {why}</source>
        <translation type="unfinished">ਡਿਸਕ {percent} % ਭਰੀ, {free} ਖਾਲੀ: {why}</translation>
    </message>
    <message>
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">{mass} ਦਾ ਖਾਲੀ ਬੈਗ {what} ਨਾਲ ਨਹੀਂ ਮਿਲਦਾ: ਹੋਰ ਤੋਲੋ: {where}</translation>
    </message>
    <message>
        <source>the empty pan does not show zero</source>
        <translation type="unfinished">ਖਾਲੀ ਪੱਲਾ ਜ਼ੀਰੋ ਨਹੀਂ ਦੱਸਦਾ</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">ਖਾਲੀ ਪੱਲਾ {mass} ਦੱਸਦਾ ਹੈ: ਪੂੰਝੋ, ਫਿਰ ਜ਼ੀਰੋ ਕਰੋ</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation type="unfinished">ਹੇਠਲੀ ਹੱਦ</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">ਲੇਬਲਾਂ ਦਾ ਫੋਲਡਰ ਨਹੀਂ: {folder} ਮੁੜ ਬਣਾਓ</translation>
    </message>
    <message>
        <source>the known fault of older versions is mended in this one</source>
        <translation type="unfinished">ਪੁਰਾਣੇ ਵਰਜਨਾਂ ਦਾ ਨੁਕਸ ਇਸ ਵਿੱਚ ਠੀਕ ਹੈ</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}, so it was printed: destroy it first</source>
        <translation type="unfinished">ਬੈਗ {serial} ਦਾ ਲੇਬਲ {state}, ਭਾਵ ਛਪਿਆ: ਪਹਿਲਾਂ ਨਸ਼ਟ ਕਰੋ</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: nothing to answer</source>
        <translation type="unfinished">ਬੈਗ {serial} ਦਾ ਲੇਬਲ {state}: ਜਵਾਬ ਦੀ ਲੋੜ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: only one that is {states} is printed again</source>
        <translation type="unfinished">ਬੈਗ {serial} ਦਾ ਲੇਬਲ {state}: ਸਿਰਫ਼ {states} ਮੁੜ ਛਪਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: {fate}</source>
        <translation type="unfinished">ਬੈਗ {serial} ਦਾ ਲੇਬਲ {state}: {fate}</translation>
    </message>
    <message>
        <source>the label roll ends soon</source>
        <translation type="unfinished">ਲੇਬਲ ਰੋਲ ਜਲਦੀ ਮੁੱਕੇਗਾ</translation>
    </message>
    <message>
        <source>the label was refused ({why}): end the run, or approve it at {where}</source>
        <translation type="unfinished">ਲੇਬਲ ਨਾਮਨਜ਼ੂਰ ({why}): ਦੌਰ ਖਤਮ ਕਰੋ ਜਾਂ ਮਨਜ਼ੂਰੀ {where}</translation>
    </message>
    <message>
        <source>the line does not stand</source>
        <translation type="unfinished">ਲਾਈਨ ਖੜ੍ਹੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">ਲਾਈਨ ਖੜ੍ਹੀ ਹੈ, {reason}: ਜਾਰੀ ਰੱਖਣ ਲਈ ਦੌਰ, ਫਿਰ ਬਦਲੀ (F8)</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">ਲਾਈਨ ਰੁਕੀ</translation>
    </message>
    <message>
        <source>the machine slept for {time}</source>
        <translation type="unfinished">ਮਸ਼ੀਨ {time} ਸੁੱਤੀ ਰਹੀ</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">ਔਸਤ ਨਾਮਾਤਰ ਤੋਂ ਘੱਟ</translation>
    </message>
    <message>
        <source>the new bag has a serial of its own: scan its label</source>
        <translation type="unfinished">ਨਵੇਂ ਬੈਗ ਦਾ ਆਪਣਾ ਨੰਬਰ ਹੈ: ਲੇਬਲ ਸਕੈਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>the new film or roll is the right one</source>
        <translation type="unfinished">ਨਵੀਂ ਫਿਲਮ ਜਾਂ ਰੋਲ ਸਹੀ ਹੈ</translation>
    </message>
    <message>
        <source>the newest entry of the record is {time} old</source>
        <translation type="unfinished">ਆਖਰੀ ਦਰਜ {time} ਪੁਰਾਣੀ ਹੈ</translation>
    </message>
    <message>
        <source>the offset from UTC changed by {time}, as daylight saving does</source>
        <translation type="unfinished">UTC ਤੋਂ ਫ਼ਰਕ {time} ਬਦਲਿਆ, ਜਿਵੇਂ ਗਰਮੀ ਸਮਾਂ</translation>
    </message>
    <message>
        <source>the oldest entry has waited for more than 30 minutes</source>
        <translation type="unfinished">ਸਭ ਤੋਂ ਪੁਰਾਣੀ ਦਰਜ 30 ਮਿੰਟ ਤੋਂ ਉਡੀਕ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>the pan is clean, dry and at zero</source>
        <translation type="unfinished">ਪੱਲਾ ਸਾਫ਼, ਸੁੱਕਾ ਤੇ ਜ਼ੀਰੋ ਤੇ</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">ਅਗਲੇ ਬੈਗ ਤੋਂ ਪਹਿਲਾਂ ਪੱਲਾ ਖਾਲੀ ਹੋਵੇ</translation>
    </message>
    <message>
        <source>the plan takes {count} packs, the batch will have only {lot}</source>
        <translation type="unfinished">ਯੋਜਨਾ {count} ਬੈਗ ਲੈਂਦੀ ਹੈ, ਬੈਚ ਵਿੱਚ ਸਿਰਫ਼ {lot}</translation>
    </message>
    <message>
        <source>the port is not open yet</source>
        <translation type="unfinished">ਪੋਰਟ ਹਾਲੇ ਨਹੀਂ ਖੁੱਲ੍ਹਾ</translation>
    </message>
    <message>
        <source>the port is open, no weight was read yet</source>
        <translation type="unfinished">ਪੋਰਟ ਖੁੱਲ੍ਹਾ, ਹਾਲੇ ਕੋਈ ਭਾਰ ਨਹੀਂ ਪੜ੍ਹਿਆ</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਨੇ ਛੱਡ ਦਿੱਤਾ</translation>
    </message>
    <message>
        <source>the printer gives no known job state</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਕੰਮ ਦਾ ਹਾਲ ਨਹੀਂ ਦੱਸਦਾ</translation>
    </message>
    <message>
        <source>the printer has stopped: see its panel</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਰੁਕ ਗਿਆ: ਉਸਦਾ ਪੈਨਲ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>the printer is offline: switch it on, check its cable</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਆਫਲਾਈਨ: ਚਾਲੂ ਕਰੋ, ਤਾਰ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>the printer is paused: press its button to go on</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਰੁਕਿਆ ਹੈ: ਉਸਦਾ ਬਟਨ ਦਬਾਓ</translation>
    </message>
    <message>
        <source>the printer is switched off</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਬੰਦ ਹੈ</translation>
    </message>
    <message>
        <source>the printer needs somebody</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਨੂੰ ਕਿਸੇ ਦੀ ਲੋੜ ਹੈ</translation>
    </message>
    <message>
        <source>the printer says that it is out, but its reply to the page was lost</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਕਹਿੰਦਾ ਹੈ ਕਿ ਨਿਕਲ ਗਿਆ, ਪਰ ਪੰਨੇ ਦਾ ਜਵਾਬ ਗੁਆਚ ਗਿਆ</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ: {why}</translation>
    </message>
    <message>
        <source>the proposal is for version {number}</source>
        <translation type="unfinished">ਸੁਝਾਅ ਵਰਜਨ {number} ਲਈ ਹੈ</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਤੱਕ ਨਹੀਂ ਪਹੁੰਚਦਾ: ਚਾਲੂ ਕਰੋ, ਤਾਰ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>the record's log takes {size}: another program has been reading the record for long, close it</source>
        <translation type="unfinished">ਰਿਕਾਰਡ ਦਾ ਲੌਗ {size} ਲੈਂਦਾ ਹੈ: ਹੋਰ ਪ੍ਰੋਗਰਾਮ ਚਿਰ ਤੋਂ ਪੜ੍ਹ ਰਿਹਾ, ਬੰਦ ਕਰੋ</translation>
    </message>
    <message>
        <source>the run begins with a check of the scale: {where}</source>
        <translation type="unfinished">ਦੌਰ ਕੰਡੇ ਦੀ ਜਾਂਚ ਨਾਲ ਸ਼ੁਰੂ ਹੁੰਦਾ ਹੈ: {where}</translation>
    </message>
    <message>
        <source>the run begins with a check of {what}: {where}</source>
        <translation type="unfinished">ਦੌਰ {what} ਦੀ ਜਾਂਚ ਨਾਲ ਸ਼ੁਰੂ ਹੁੰਦਾ ਹੈ: {where}</translation>
    </message>
    <message>
        <source>the run begins with a first-off</source>
        <translation type="unfinished">ਦੌਰ ਪਹਿਲੇ ਲੇਬਲ ਨਾਲ ਸ਼ੁਰੂ ਹੁੰਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>the run is open</source>
        <translation type="unfinished">ਦੌਰ ਖੁੱਲ੍ਹਾ ਹੈ</translation>
    </message>
    <message>
        <source>the scale</source>
        <translation type="unfinished">ਕੰਡਾ</translation>
    </message>
    <message>
        <source>the scale came back at zero and a load lay on the pan before: take everything off, then press the pan once with a hand</source>
        <translation type="unfinished">ਕੰਡਾ ਜ਼ੀਰੋ ਉੱਤੇ ਮੁੜਿਆ ਤੇ ਪਹਿਲਾਂ ਪੱਲੇ ਉੱਤੇ ਭਾਰ ਸੀ: ਸਭ ਕੁਝ ਚੁੱਕੋ, ਫਿਰ ਪੱਲੇ ਨੂੰ ਇੱਕ ਵਾਰ ਹੱਥ ਨਾਲ ਦਬਾਓ</translation>
    </message>
    <message>
        <source>the scale does not do that</source>
        <translation type="unfinished">ਕੰਡਾ ਇਹ ਨਹੀਂ ਕਰਦਾ</translation>
    </message>
    <message>
        <source>the scale failed its check</source>
        <translation type="unfinished">ਕੰਡਾ ਜਾਂਚ ਵਿੱਚ ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">ਕੰਡਾ ਜਾਂਚ ਵਿੱਚ ਫੇਲ੍ਹ: ਠੀਕ ਕਰੋ, ਫਿਰ ਜਾਂਚੋ: {where}</translation>
    </message>
    <message>
        <source>the scale found no zero when it was switched on: empty the pan and switch it on again</source>
        <translation type="unfinished">ਚਾਲੂ ਹੋਣ ਵੇਲੇ ਕੰਡੇ ਨੂੰ ਜ਼ੀਰੋ ਨਹੀਂ ਮਿਲਿਆ: ਪੱਲਾ ਖਾਲੀ ਕਰੋ ਤੇ ਫਿਰ ਚਾਲੂ ਕਰੋ</translation>
    </message>
    <message>
        <source>the scale gave no answer, look at its display</source>
        <translation type="unfinished">ਕੰਡੇ ਨੇ ਜਵਾਬ ਨਹੀਂ ਦਿੱਤਾ, ਉਸਦਾ ਡਿਸਪਲੇ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>the scale has just come back: its weights count in a moment</source>
        <translation type="unfinished">ਕੰਡਾ ਹੁਣੇ ਮੁੜਿਆ: ਭਾਰ ਥੋੜ੍ਹੀ ਦੇਰ ਵਿੱਚ ਗਿਣੇ ਜਾਣਗੇ</translation>
    </message>
    <message>
        <source>the scale is a recording: no bag is taken from it</source>
        <translation type="unfinished">ਕੰਡਾ ਰਿਕਾਰਡਿੰਗ ਹੈ: ਉਸ ਤੋਂ ਕੋਈ ਬੈਗ ਨਹੀਂ ਲਿਆ ਜਾਂਦਾ</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">ਕੰਡਾ ਚੁੱਪ ਹੈ: ਤਾਰ ਤੇ ਬਿਜਲੀ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">{code} ਵਾਲੇ ਕੰਡੇ ਨੇ {number} s ਤੋਂ ਕੁਝ ਨਹੀਂ ਭੇਜਿਆ: ਚਾਲੂ ਹੈ? ਤਾਰ ਤੇ ਸੈਟਿੰਗ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">{code} ਵਾਲੇ ਕੰਡੇ ਨੇ {number} s ਤੋਂ ਕੁਝ ਨਹੀਂ ਭੇਜਿਆ: ਚਾਲੂ ਹੈ? ਤਾਰ ਤੇ ਸੈਟਿੰਗ ਦੇਖੋ ({here})</translation>
    </message>
    <message>
        <source>the scale read high at some loads and low at others</source>
        <translation type="unfinished">ਕੰਡੇ ਨੇ ਕੁਝ ਭਾਰ ਵੱਧ ਤੇ ਕੁਝ ਘੱਟ ਪੜ੍ਹੇ</translation>
    </message>
    <message>
        <source>the scale read high: packs may be short</source>
        <translation type="unfinished">ਕੰਡੇ ਨੇ ਵੱਧ ਪੜ੍ਹਿਆ: ਬੈਗ ਘੱਟ ਹੋ ਸਕਦੇ ਹਨ</translation>
    </message>
    <message>
        <source>the scale read low: product was given away</source>
        <translation type="unfinished">ਕੰਡੇ ਨੇ ਘੱਟ ਪੜ੍ਹਿਆ: ਮਾਲ ਵੱਧ ਗਿਆ</translation>
    </message>
    <message>
        <source>the scale refused to set zero: empty the pan</source>
        <translation type="unfinished">ਕੰਡੇ ਨੇ ਜ਼ੀਰੋ ਨਹੀਂ ਕੀਤਾ: ਪੱਲਾ ਖਾਲੀ ਕਰੋ</translation>
    </message>
    <message>
        <source>the scale reports a tare error: empty the pan and clear the tare</source>
        <translation type="unfinished">ਕੰਡਾ ਟੇਅਰ ਦੀ ਗਲਤੀ ਦੱਸਦਾ ਹੈ: ਪੱਲਾ ਖਾਲੀ ਕਰੋ ਤੇ ਟੇਅਰ ਹਟਾਓ</translation>
    </message>
    <message>
        <source>the scale reports a zero error: empty the pan and set it to zero</source>
        <translation type="unfinished">ਕੰਡਾ ਜ਼ੀਰੋ ਦੀ ਗਲਤੀ ਦੱਸਦਾ ਹੈ: ਪੱਲਾ ਖਾਲੀ ਕਰੋ ਤੇ ਜ਼ੀਰੋ ਕਰੋ</translation>
    </message>
    <message>
        <source>the scale says centre of zero and shows {mass}</source>
        <translation type="unfinished">ਕੰਡਾ ਜ਼ੀਰੋ ਦਾ ਵਿਚਕਾਰ ਕਹਿੰਦਾ ਹੈ ਤੇ {mass} ਦੱਸਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set bits 7 and {same} for this port ({here}), or 8N1 on the scale</source>
        <translation type="unfinished">ਕੰਡਾ {parity} ਨਾਲ 7 ਡਾਟਾ ਬਿੱਟ ਭੇਜਦਾ ਹੈ: ਇਸ ਪੋਰਟ ਲਈ ਬਿੱਟ 7 ਤੇ {same} ਕਰੋ ({here}), ਜਾਂ ਕੰਡੇ ਉੱਤੇ 8N1</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set the same on the converter, or 8N1 on the scale</source>
        <translation type="unfinished">ਕੰਡਾ {parity} ਨਾਲ 7 ਡਾਟਾ ਬਿੱਟ ਭੇਜਦਾ ਹੈ: ਕਨਵਰਟਰ ਉੱਤੇ ਵੀ ਇਹੀ ਕਰੋ, ਜਾਂ ਕੰਡੇ ਉੱਤੇ 8N1</translation>
    </message>
    <message>
        <source>the scale sent dashes instead of a weight</source>
        <translation type="unfinished">ਕੰਡੇ ਨੇ ਭਾਰ ਦੀ ਥਾਂ ਡੈਸ਼ ਭੇਜੇ</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">ਕੰਡਾ ਸ਼ੁੱਧ ਭਾਰ ਦੱਸਦਾ ਹੈ: ਉਸਦੀ ਟੇਅਰ ਹਟਾਓ, ਸਟੇਸ਼ਨ ਬੈਗ ਆਪ ਘਟਾਉਂਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>the scale shows less than zero: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">ਕੰਡਾ ਜ਼ੀਰੋ ਤੋਂ ਹੇਠਾਂ ਦੱਸਦਾ ਹੈ: ਦੇਖੋ ਪੱਲਾ ਠੀਕ ਟਿਕਿਆ ਹੈ ਤੇ ਕੁਝ ਚੁੱਕਦਾ ਨਹੀਂ, ਖਾਲੀ ਕਰੋ ਤੇ ਜ਼ੀਰੋ ਕਰੋ</translation>
    </message>
    <message>
        <source>the scale shows no weight</source>
        <translation type="unfinished">ਕੰਡਾ ਕੋਈ ਭਾਰ ਨਹੀਂ ਦੱਸਦਾ</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">ਕੰਡਾ {unit} ਵਿੱਚ ਹੈ, ਦੌਰ {other} ਵਿੱਚ: ਕੰਡਾ ਠੀਕ ਕਰੋ</translation>
    </message>
    <message>
        <source>the scale's line is not open</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਤਾਰ ਖੁੱਲ੍ਹੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ ਵਿੱਚ ਦੇਰੀ: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} did not match</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਦਾ ਸਕੈਨ ਨਹੀਂ ਮਿਲਿਆ</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਦਾ ਸਕੈਨ ਨਹੀਂ ਮਿਲਦਾ: ਲੀਡ ਠੀਕ ਕਰੇ {where}</translation>
    </message>
    <message>
        <source>the settings are in {code}</source>
        <translation type="unfinished">ਸੈਟਿੰਗ {code} ਵਿੱਚ ਹੈ</translation>
    </message>
    <message>
        <source>the settings before are in station.toml.before</source>
        <translation type="unfinished">ਪਹਿਲੀ ਸੈਟਿੰਗ station.toml.before ਵਿੱਚ ਹੈ</translation>
    </message>
    <message>
        <source>the settings say so</source>
        <translation type="unfinished">ਸੈਟਿੰਗ ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>the station ended before the label's fate was recorded</source>
        <translation type="unfinished">ਲੇਬਲ ਦਾ ਹਾਲ ਦਰਜ ਹੋਣ ਤੋਂ ਪਹਿਲਾਂ ਸਟੇਸ਼ਨ ਬੰਦ ਹੋਇਆ</translation>
    </message>
    <message>
        <source>the station fills no cases: customers.toml is missing</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ ਡੱਬੇ ਨਹੀਂ ਭਰਦਾ: customers.toml ਨਹੀਂ</translation>
    </message>
    <message>
        <source>the station has a fault ({what}): call maintenance</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ ਵਿੱਚ ਨੁਕਸ ({what}): ਮੁਰੰਮਤ ਵਾਲੇ ਬੁਲਾਓ</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ ਪਿੱਛੇ ਹੈ: ਬੈਗ ਚੁੱਕੋ ਤੇ ਰੁਕੋ</translation>
    </message>
    <message>
        <source>the station stood for long</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ ਚਿਰ ਤੱਕ ਖੜ੍ਹਾ ਰਿਹਾ</translation>
    </message>
    <message>
        <source>the station writes and checkpoints through one, so it cannot happen here</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ ਇੱਕੋ ਨਾਲ ਲਿਖਦਾ ਹੈ, ਇੱਥੇ ਨਹੀਂ ਹੋ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>the store is closed</source>
        <translation type="unfinished">ਰਿਕਾਰਡ ਬੰਦ ਹੈ</translation>
    </message>
    <message>
        <source>the study has {study}, more than the tare {tare} taken off: raise the tare of {bag}</source>
        <translation type="unfinished">ਜਾਂਚ {study}, ਘਟਾਈ ਟੇਅਰ {tare} ਤੋਂ ਵੱਧ: {bag} ਦੀ ਟੇਅਰ ਵਧਾਓ</translation>
    </message>
    <message>
        <source>the test weights come to {total} for the load {load} of {mass}: at least {percent} of it are needed</source>
        <translation type="unfinished">{load} ਦੇ {mass} ਲਈ ਵੱਟੇ {total}: ਘੱਟੋ-ਘੱਟ {percent} ਚਾਹੀਦੇ</translation>
    </message>
    <message>
        <source>the year {year} is not believed</source>
        <translation type="unfinished">ਸਾਲ {year} ਮੰਨਣ ਯੋਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>then its number, its verification and who answers for it</source>
        <translation type="unfinished">ਫਿਰ ਉਸਦਾ ਨੰਬਰ, ਤਸਦੀਕ ਤੇ ਜ਼ਿੰਮੇਵਾਰ</translation>
    </message>
    <message>
        <source>there is no run before: nothing is to be counted</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਕੋਈ ਦੌਰ ਨਹੀਂ: ਕੁਝ ਗਿਣਨਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>there is nothing to report</source>
        <translation type="unfinished">ਰਿਪੋਰਟ ਲਈ ਕੁਝ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>there is room again: {free} free</source>
        <translation type="unfinished">ਮੁੜ ਥਾਂ ਹੈ: {free} ਖਾਲੀ</translation>
    </message>
    <message>
        <source>these lines are in {units}</source>
        <translation type="unfinished">ਇਹ ਲਾਈਨਾਂ {units} ਵਿੱਚ ਹਨ</translation>
    </message>
    <message>
        <source>they do not all end with the same control characters</source>
        <translation type="unfinished">ਸਭ ਇੱਕੋ ਅੱਖਰਾਂ ਨਾਲ ਨਹੀਂ ਮੁੱਕਦੀਆਂ</translation>
    </message>
    <message>
        <source>this PIN is not right</source>
        <translation type="unfinished">ਇਹ PIN ਸਹੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>this PIN is not right: wait {time}</source>
        <translation type="unfinished">ਇਹ PIN ਸਹੀ ਨਹੀਂ: {time} ਰੁਕੋ</translation>
    </message>
    <message>
        <source>this badge is not right</source>
        <translation type="unfinished">ਇਹ ਬੈਜ ਸਹੀ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>this badge is not right: wait {time}</source>
        <translation type="unfinished">ਇਹ ਬੈਜ ਸਹੀ ਨਹੀਂ: {time} ਰੁਕੋ</translation>
    </message>
    <message>
        <source>this bag in it</source>
        <translation type="unfinished">ਇਹ ਬੈਗ ਇਸ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">ਇਹ ਬੈਗ ਦਰਜ ਨਹੀਂ ਤੇ ਲੇਬਲ ਨਹੀਂ: {why}</translation>
    </message>
    <message>
        <source>this cannot be shelved, {what}: {answer}</source>
        <translation type="unfinished">ਇਹ ਟਲ ਨਹੀਂ ਸਕਦਾ, {what}: {answer}</translation>
    </message>
    <message>
        <source>this hour: all {count} bags</source>
        <translation type="unfinished">ਇਹ ਘੰਟਾ: ਸਾਰੇ {count} ਬੈਗ</translation>
    </message>
    <message>
        <source>this hour: {count} of about {all} bags</source>
        <translation type="unfinished">ਇਹ ਘੰਟਾ: ਲਗਭਗ {all} ਵਿੱਚੋਂ {count} ਬੈਗ</translation>
    </message>
    <message>
        <source>this one is destroyed</source>
        <translation type="unfinished">ਇਹ ਨਸ਼ਟ ਹੈ</translation>
    </message>
    <message>
        <source>this user may not use it: add the user to the group that owns it (on most Linux systems dialout) and sign in again</source>
        <translation type="unfinished">ਇਸ ਵਰਤੋਂਕਾਰ ਨੂੰ ਇਜਾਜ਼ਤ ਨਹੀਂ: ਇਸ ਨੂੰ ਮਾਲਕ ਗਰੁੱਪ ਵਿੱਚ ਪਾਓ (ਬਹੁਤੇ Linux ਵਿੱਚ dialout) ਤੇ ਫਿਰ ਸਾਈਨ ਇਨ ਕਰੋ</translation>
    </message>
    <message>
        <source>this version can damage a file that two connections write at once</source>
        <translation type="unfinished">ਦੋ ਕਨੈਕਸ਼ਨ ਇਕੱਠੇ ਲਿਖਣ ਤਾਂ ਇਹ ਵਰਜਨ ਫਾਈਲ ਖਰਾਬ ਕਰ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished">ਸਮਾਂ</translation>
    </message>
    <message>
        <source>time, with a lot</source>
        <translation type="unfinished">ਸਮਾਂ, ਲਾਟ ਨਾਲ</translation>
    </message>
    <message>
        <source>too many wrong PINs: wait {time}</source>
        <translation type="unfinished">ਬਹੁਤ ਗਲਤ PIN: {time} ਰੁਕੋ</translation>
    </message>
    <message>
        <source>too many wrong badges: wait {time}</source>
        <translation type="unfinished">ਬਹੁਤ ਗਲਤ ਬੈਜ: {time} ਰੁਕੋ</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation type="unfinished">ਬਹੁਤ ਗਰਮ</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation type="unfinished">ਪੂਰਾ ਕੀਤਾ</translation>
    </message>
    <message>
        <source>torn or creased</source>
        <translation type="unfinished">ਪਾਟਿਆ ਜਾਂ ਵੱਟ ਵਾਲਾ</translation>
    </message>
    <message>
        <source>torn up, seen by me</source>
        <translation type="unfinished">ਮੇਰੇ ਸਾਹਮਣੇ ਪਾੜਿਆ</translation>
    </message>
    <message>
        <source>touch an alarm first</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਅਲਾਰਮ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>touch and key in all three counts first</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਤਿੰਨੇ ਗਿਣਤੀਆਂ ਭਰੋ</translation>
    </message>
    <message>
        <source>touch the rejects it is about first</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਰੱਦ ਬੈਗ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>touch to change</source>
        <translation type="unfinished">ਬਦਲਣ ਲਈ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>touch when thrown out</source>
        <translation type="unfinished">ਬਾਹਰ ਸੁੱਟੇ ਤਾਂ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਆਪਣਾ ਨਾਂ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>two lots overlap for long</source>
        <translation type="unfinished">ਦੋ ਲਾਟ ਚਿਰ ਤੋਂ ਇਕੱਠੇ</translation>
    </message>
    <message>
        <source>two people release: the second one is missing</source>
        <translation type="unfinished">ਦੋ ਬੰਦੇ ਛੱਡਣ: ਦੂਜਾ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>two people sign</source>
        <translation type="unfinished">ਦੋ ਬੰਦੇ ਦਸਤਖਤ ਕਰਨ</translation>
    </message>
    <message>
        <source>typed below</source>
        <translation type="unfinished">ਹੇਠਾਂ ਲਿਖੋ</translation>
    </message>
    <message>
        <source>under capacity</source>
        <translation type="unfinished">ਹੱਦ ਤੋਂ ਘੱਟ</translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished">ਇਕਾਈ</translation>
    </message>
    <message>
        <source>unit {shown} is not in the description</source>
        <translation type="unfinished">ਇਕਾਈ {shown} ਵੇਰਵੇ ਵਿੱਚ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>unknown command</source>
        <translation type="unfinished">ਅਣਜਾਣ ਹੁਕਮ</translation>
    </message>
    <message>
        <source>until, such as 09:40</source>
        <translation type="unfinished">ਤੱਕ, ਜਿਵੇਂ 09:40</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">ਉਪਰਲੀ</translation>
    </message>
    <message>
        <source>upper {mass}</source>
        <translation type="unfinished">ਵੱਧ ਤੋਂ ਵੱਧ {mass}</translation>
    </message>
    <message>
        <source>use by</source>
        <translation type="unfinished">ਵਰਤੋਂ ਤੱਕ</translation>
    </message>
    <message>
        <source>use by {day}</source>
        <translation type="unfinished">ਵਰਤੋ {day} ਤੱਕ</translation>
    </message>
    <message>
        <source>used to set the printer up</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਸੈੱਟ ਕਰਨ ਵਿੱਚ ਵਰਤੇ</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation type="unfinished">ਵੈਕਿਊਮ</translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished">ਮੁੱਲ</translation>
    </message>
    <message>
        <source>value is {number}, {why}</source>
        <translation type="unfinished">ਮੁੱਲ {number}: {why}</translation>
    </message>
    <message>
        <source>value is {shown}, not a number as described</source>
        <translation type="unfinished">ਮੁੱਲ {shown}: ਦੱਸਿਆ ਅੰਕ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>verified {code}</source>
        <translation type="unfinished">ਤਸਦੀਕ {code}</translation>
    </message>
    <message>
        <source>verified {day}: give a day from {first} to today, {today}</source>
        <translation type="unfinished">ਤਸਦੀਕ {day}: {first} ਤੋਂ ਅੱਜ {today} ਤੱਕ ਦਾ ਦਿਨ</translation>
    </message>
    <message>
        <source>verified {shown}: give the day as in {day}</source>
        <translation type="unfinished">ਤਸਦੀਕ {shown}: ਦਿਨ {day} ਵਾਂਗ ਲਿਖੋ</translation>
    </message>
    <message>
        <source>verified, as in 2026-03-31</source>
        <translation type="unfinished">ਤਸਦੀਕ, ਜਿਵੇਂ 2026-03-31</translation>
    </message>
    <message>
        <source>version</source>
        <translation type="unfinished">ਵਰਜਨ</translation>
    </message>
    <message>
        <source>voided</source>
        <translation type="unfinished">ਰੱਦ</translation>
    </message>
    <message>
        <source>wait until the scale shows a steady weight</source>
        <translation type="unfinished">ਉਡੀਕੋ ਜਦ ਤੱਕ ਕੰਡਾ ਟਿਕਿਆ ਭਾਰ ਦਿਖਾਵੇ</translation>
    </message>
    <message>
        <source>wait until the scale stands still: it is never set to zero in motion</source>
        <translation type="unfinished">ਕੰਡਾ ਖੜ੍ਹਨ ਦਿਓ: ਹਿੱਲਦੇ ਨੂੰ ਜ਼ੀਰੋ ਨਹੀਂ ਕਰਦੇ</translation>
    </message>
    <message>
        <source>waiting for QA</source>
        <translation type="unfinished">QA ਦੀ ਉਡੀਕ</translation>
    </message>
    <message>
        <source>waiting for the scale's first reading</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਪਹਿਲੀ ਰੀਡਿੰਗ ਦੀ ਉਡੀਕ</translation>
    </message>
    <message>
        <source>warm or damaged</source>
        <translation type="unfinished">ਗਰਮ ਜਾਂ ਖਰਾਬ</translation>
    </message>
    <message>
        <source>was wrong, is set right</source>
        <translation type="unfinished">ਗਲਤ ਸੀ, ਠੀਕ ਕੀਤੀ</translation>
    </message>
    <message>
        <source>wash record</source>
        <translation type="unfinished">ਧੋਣ ਦਾ ਰਿਕਾਰਡ</translation>
    </message>
    <message>
        <source>washed where allergens change</source>
        <translation type="unfinished">ਐਲਰਜਨ ਬਦਲਣ ਤੇ ਧੋਤਾ</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished">ਸੁੱਟਿਆ</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">{count} ਬੈਗਾਂ ਵਿੱਚ ਖਾਲੀ ਬੈਗ ਤੋਲੋ</translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation type="unfinished">ਤੋਲੋ</translation>
    </message>
    <message>
        <source>weigh the rest</source>
        <translation type="unfinished">ਬਾਕੀ ਤੋਲੋ</translation>
    </message>
    <message>
        <source>weighed again</source>
        <translation type="unfinished">ਮੁੜ ਤੋਲੇ</translation>
    </message>
    <message>
        <source>weighed again, good</source>
        <translation type="unfinished">ਮੁੜ ਤੋਲਿਆ, ਠੀਕ</translation>
    </message>
    <message>
        <source>weighed now</source>
        <translation type="unfinished">ਹੁਣ ਤੋਲਿਆ</translation>
    </message>
    <message>
        <source>weight is {shown}, not a number of the standard's form</source>
        <translation type="unfinished">ਭਾਰ {shown}: ਮਿਆਰੀ ਅੰਕ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>weight not displayed</source>
        <translation type="unfinished">ਭਾਰ ਨਹੀਂ ਦਿਖਦਾ</translation>
    </message>
    <message>
        <source>weighted average {mean}</source>
        <translation type="unfinished">ਭਾਰੀ ਔਸਤ {mean}</translation>
    </message>
    <message>
        <source>weights arrive and are used</source>
        <translation type="unfinished">ਭਾਰ ਆਉਂਦੇ ਤੇ ਵਰਤੇ ਜਾਂਦੇ ਹਨ</translation>
    </message>
    <message>
        <source>weights come {number} s apart, and one counts for {most} s: set the scale, or the converter on its line, to send more often and at once</source>
        <translation type="unfinished">ਭਾਰ {number} s ਬਾਅਦ ਆਉਂਦੇ ਹਨ, ਤੇ ਇੱਕ {most} s ਗਿਣਿਆ ਜਾਂਦਾ ਹੈ: ਕੰਡੇ ਜਾਂ ਉਸ ਦੀ ਲਾਈਨ ਦੇ ਕਨਵਰਟਰ ਨੂੰ ਜ਼ਿਆਦਾ ਵਾਰ ਤੇ ਤੁਰੰਤ ਭੇਜਣ ਲਈ ਸੈੱਟ ਕਰੋ</translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished">ਕੀ</translation>
    </message>
    <message>
        <source>what is open</source>
        <translation type="unfinished">ਜੋ ਬਾਕੀ ਹੈ</translation>
    </message>
    <message>
        <source>what the station sends comes back in front of the answers: switch the echo of the converter or of the scale off</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ ਦਾ ਭੇਜਿਆ ਜਵਾਬਾਂ ਤੋਂ ਪਹਿਲਾਂ ਮੁੜ ਆਉਂਦਾ ਹੈ: ਕਨਵਰਟਰ ਜਾਂ ਕੰਡੇ ਦੀ ਗੂੰਜ ਬੰਦ ਕਰੋ</translation>
    </message>
    <message>
        <source>which label?</source>
        <translation type="unfinished">ਕਿਹੜਾ ਲੇਬਲ?</translation>
    </message>
    <message>
        <source>which {what}? Scan or type it first</source>
        <translation type="unfinished">ਕਿਹੜਾ {what}? ਪਹਿਲਾਂ ਸਕੈਨ ਜਾਂ ਟਾਈਪ ਕਰੋ</translation>
    </message>
    <message>
        <source>who decides? Choose a name first</source>
        <translation type="unfinished">ਫੈਸਲਾ ਕੌਣ ਕਰੇ? ਪਹਿਲਾਂ ਨਾਂ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>who says so? Touch WHO and choose your name</source>
        <translation type="unfinished">ਕੌਣ ਕਹਿੰਦਾ? ਕੌਣ ਛੂਹੋ ਤੇ ਨਾਂ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">ਪੂਰੀ</translation>
    </message>
    <message>
        <source>whole error</source>
        <translation type="unfinished">ਪੂਰੀ ਗਲਤੀ</translation>
    </message>
    <message>
        <source>whole run: all {count} bags</source>
        <translation type="unfinished">ਪੂਰਾ ਦੌਰ: ਸਾਰੇ {count} ਬੈਗ</translation>
    </message>
    <message>
        <source>whole run: {count} of about {all} bags</source>
        <translation type="unfinished">ਪੂਰਾ ਦੌਰ: ਲਗਭਗ {all} ਵਿੱਚੋਂ {count} ਬੈਗ</translation>
    </message>
    <message>
        <source>whom does it go to? Choose a customer</source>
        <translation type="unfinished">ਕਿਸ ਨੂੰ ਜਾਂਦਾ? ਗਾਹਕ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished">ਕਿਉਂ</translation>
    </message>
    <message>
        <source>why it differs: scan or type</source>
        <translation type="unfinished">ਫ਼ਰਕ ਕਿਉਂ: ਸਕੈਨ ਜਾਂ ਟਾਈਪ ਕਰੋ</translation>
    </message>
    <message>
        <source>why it may go, or must be dumped</source>
        <translation type="unfinished">ਕਿਉਂ ਛੱਡਣਾ, ਜਾਂ ਸੁੱਟਣਾ</translation>
    </message>
    <message>
        <source>why: scan or type the reason</source>
        <translation type="unfinished">ਕਿਉਂ: ਸਕੈਨ ਜਾਂ ਟਾਈਪ ਕਰੋ</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation type="unfinished">ਪੂੰਝੋ</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">ਪੱਲਾ ਪੂੰਝੋ, ਫਿਰ ਜ਼ੀਰੋ ਕਰੋ</translation>
    </message>
    <message>
        <source>with a witness</source>
        <translation type="unfinished">ਗਵਾਹ ਨਾਲ</translation>
    </message>
    <message>
        <source>with {customer}</source>
        <translation type="unfinished">{customer} ਕੋਲ</translation>
    </message>
    <message>
        <source>within both bounds</source>
        <translation type="unfinished">ਦੋਹਾਂ ਹੱਦਾਂ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>without it</source>
        <translation type="unfinished">ਇਸ ਬਿਨਾਂ</translation>
    </message>
    <message>
        <source>witness {who}</source>
        <translation type="unfinished">ਗਵਾਹ {who}</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">ਇਸ ਸਕ੍ਰੀਨ 'ਤੇ ਕੰਮ</translation>
    </message>
    <message>
        <source>wrong date</source>
        <translation type="unfinished">ਤਾਰੀਖ ਗਲਤ</translation>
    </message>
    <message>
        <source>wrong label</source>
        <translation type="unfinished">ਗਲਤ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>wrong lots</source>
        <translation type="unfinished">ਲਾਟ ਗਲਤ</translation>
    </message>
    <message>
        <source>wrong roll taken out</source>
        <translation type="unfinished">ਗਲਤ ਰੋਲ ਕੱਢਿਆ</translation>
    </message>
    <message>
        <source>wrong text</source>
        <translation type="unfinished">ਲਿਖਤ ਗਲਤ</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">ਗਲਤ ਭਾਰ</translation>
    </message>
    <message>
        <source>you approve</source>
        <translation type="unfinished">ਤੁਸੀਂ ਮਨਜ਼ੂਰ ਕਰੋ</translation>
    </message>
    <message>
        <source>zero error</source>
        <translation type="unfinished">ਜ਼ੀਰੋ ਗਲਤੀ</translation>
    </message>
    <message>
        <source>{begin_code} to {end_code}</source>
        <translation type="unfinished">{begin_code} ਤੋਂ {end_code}</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: FAILS</source>
        <translation type="unfinished">{case}: ਔਸਤ {mean}, T1 ਤੋਂ ਹੇਠਾਂ {count}: ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: passes</source>
        <translation type="unfinished">{case}: ਔਸਤ {mean}, T1 ਤੋਂ ਹੇਠਾਂ {count}: ਪਾਸ</translation>
    </message>
    <message>
        <source>{code} is at {number}</source>
        <translation type="unfinished">{code} {number} ਤੇ ਹੈ</translation>
    </message>
    <message>
        <source>{code} is not known: receive it first</source>
        <translation type="unfinished">{code} ਅਣਜਾਣ: ਪਹਿਲਾਂ ਲਓ</translation>
    </message>
    <message>
        <source>{code} {count} of {whole}</source>
        <translation type="unfinished">{code} {whole} ਵਿੱਚੋਂ {count}</translation>
    </message>
    <message>
        <source>{count} BAGS HELD OR OUT</source>
        <translation type="unfinished">{count} ਬੈਗ ਰੋਕੇ ਜਾਂ ਬਾਹਰ</translation>
    </message>
    <message>
        <source>{count} bag is {what}.</source>
        <translation type="unfinished">{count} ਬੈਗ {what}।</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} ਬੈਗ</translation>
    </message>
    <message>
        <source>{count} bags an hour</source>
        <translation type="unfinished">{count} ਬੈਗ ਪ੍ਰਤੀ ਘੰਟਾ</translation>
    </message>
    <message>
        <source>{count} bags are dumped: they lie in the reject bin. Release the empty hold.</source>
        <translation type="unfinished">{count} ਬੈਗ ਸੁੱਟੇ: ਰੱਦ ਡੱਬੇ ਵਿੱਚ ਹਨ। ਖਾਲੀ ਰੋਕ ਛੱਡੋ।</translation>
    </message>
    <message>
        <source>{count} bags are held</source>
        <translation type="unfinished">{count} ਬੈਗ ਰੋਕੇ</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">ਫੇਲ੍ਹ ਜਾਂਚ ਬਾਅਦ {count} ਬੈਗ ਰੋਕੇ: QA ਫੈਸਲਾ ਕਰੇ: {where}</translation>
    </message>
    <message>
        <source>{count} bags are in the bin, {expected} by the record: say why they differ</source>
        <translation type="unfinished">ਡੱਬੇ ਵਿੱਚ {count} ਬੈਗ, ਰਿਕਾਰਡ ਵਿੱਚ {expected}: ਕਾਰਨ ਦੱਸੋ</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} ਬੈਗ ਪੈਕ ਹੋ ਗਏ: ਲੀਡ ਦੌਰ ਖਤਮ ਕਰੇਗਾ</translation>
    </message>
    <message>
        <source>{count} bags are released.</source>
        <translation type="unfinished">{count} ਬੈਗ ਛੱਡੇ।</translation>
    </message>
    <message>
        <source>{count} bags are {what}.</source>
        <translation type="unfinished">{count} ਬੈਗ {what}।</translation>
    </message>
    <message>
        <source>{count} bags from {begin} to {end} are held: {why}.</source>
        <translation type="unfinished">{begin} ਤੋਂ {end} ਤੱਕ {count} ਬੈਗ ਰੋਕੇ: {why}।</translation>
    </message>
    <message>
        <source>{count} bags held or out</source>
        <translation type="unfinished">{count} ਬੈਗ ਰੋਕੇ ਜਾਂ ਬਾਹਰ</translation>
    </message>
    <message>
        <source>{count} bags held, packed after {begin} until {end}</source>
        <translation type="unfinished">{count} ਬੈਗ ਰੋਕੇ, {begin} ਤੋਂ {end} ਤੱਕ ਪੈਕ</translation>
    </message>
    <message>
        <source>{count} bags in the batch; {plan}</source>
        <translation type="unfinished">ਬੈਚ ਵਿੱਚ {count} ਬੈਗ; {plan}</translation>
    </message>
    <message>
        <source>{count} bags lie in the bin by the record</source>
        <translation type="unfinished">ਰਿਕਾਰਡ ਅਨੁਸਾਰ ਡੱਬੇ ਵਿੱਚ {count} ਬੈਗ</translation>
    </message>
    <message>
        <source>{count} bags of one run</source>
        <translation type="unfinished">ਇੱਕ ਦੌਰ ਦੇ {count} ਬੈਗ</translation>
    </message>
    <message>
        <source>{count} bags weigh less than {mass} in the mean</source>
        <translation type="unfinished">{count} ਬੈਗਾਂ ਦੀ ਔਸਤ {mass} ਤੋਂ ਘੱਟ</translation>
    </message>
    <message>
        <source>{count} bags {more} than recorded: count again, or say why</source>
        <translation type="unfinished">ਦਰਜ ਨਾਲੋਂ {count} ਬੈਗ {more}: ਮੁੜ ਗਿਣੋ, ਜਾਂ ਕਾਰਨ ਦੱਸੋ</translation>
    </message>
    <message>
        <source>{count} case</source>
        <translation type="unfinished">{count} ਡੱਬਾ</translation>
    </message>
    <message>
        <source>{count} cases</source>
        <translation type="unfinished">{count} ਡੱਬੇ</translation>
    </message>
    <message>
        <source>{count} cases and pallets stand here</source>
        <translation type="unfinished">ਇੱਥੇ {count} ਡੱਬੇ ਤੇ ਪੈਲੇਟ</translation>
    </message>
    <message>
        <source>{count} characters, allowed are {least} to {most}</source>
        <translation type="unfinished">{count} ਅੱਖਰ, ਇਜਾਜ਼ਤ {least} ਤੋਂ {most}</translation>
    </message>
    <message>
        <source>{count} characters, at most {most}</source>
        <translation type="unfinished">{count} ਅੱਖਰ, ਵੱਧ ਤੋਂ ਵੱਧ {most}</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation type="unfinished">{count} ਦਿਨ</translation>
    </message>
    <message>
        <source>{count} days ago</source>
        <translation type="unfinished">{count} ਦਿਨ ਪਹਿਲਾਂ</translation>
    </message>
    <message>
        <source>{count} fills are too few for a proposal: weigh {least} or more</source>
        <translation type="unfinished">ਸੁਝਾਅ ਲਈ {count} ਭਰਾਈਆਂ ਘੱਟ: {least} ਜਾਂ ਵੱਧ ਤੋਲੋ</translation>
    </message>
    <message>
        <source>{count} held or set aside</source>
        <translation type="unfinished">{count} ਰੋਕੇ ਜਾਂ ਵੱਖ</translation>
    </message>
    <message>
        <source>{count} issued, {used} used so far</source>
        <translation type="unfinished">{count} ਦਿੱਤੇ, ਹੁਣ ਤੱਕ {used} ਵਰਤੇ</translation>
    </message>
    <message>
        <source>{count} kept.</source>
        <translation type="unfinished">{count} ਰੱਖੀਆਂ।</translation>
    </message>
    <message>
        <source>{count} labels</source>
        <translation type="unfinished">{count} ਲੇਬਲ</translation>
    </message>
    <message>
        <source>{count} labels are in doubt</source>
        <translation type="unfinished">{count} ਲੇਬਲਾਂ ਤੇ ਸ਼ੱਕ</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} ਲੇਬਲਾਂ ਬਾਰੇ ਸ਼ੱਕ, ਪਹਿਲਾ {serial}: ਜਵਾਬ ਦਿਓ {where}</translation>
    </message>
    <message>
        <source>{count} labels to answer for: look at each bag</source>
        <translation type="unfinished">{count} ਲੇਬਲਾਂ ਦਾ ਜਵਾਬ ਦਿਓ: ਹਰ ਬੈਗ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>{count} lines are weights, {number} are not: look at each of them</source>
        <translation type="unfinished">{count} ਲਾਈਨਾਂ ਭਾਰ ਹਨ, {number} ਨਹੀਂ: ਹਰ ਇੱਕ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>{count} minutes</source>
        <translation type="unfinished">{count} ਮਿੰਟ</translation>
    </message>
    <message>
        <source>{count} more windows wait.</source>
        <translation type="unfinished">{count} ਹੋਰ ਸਮੇਂ ਉਡੀਕ ਵਿੱਚ।</translation>
    </message>
    <message>
        <source>{count} of its bags are held</source>
        <translation type="unfinished">ਇਸ ਦੇ {count} ਬੈਗ ਰੋਕੇ</translation>
    </message>
    <message>
        <source>{count} of {draws} rehearsed samples of the stored bags pass (failed: mean {mean}, T1 {t1}, T2 {t2})</source>
        <translation type="unfinished">{draws} ਅਭਿਆਸ ਨਮੂਨਿਆਂ ਵਿੱਚੋਂ {count} ਪਾਸ (ਫੇਲ੍ਹ: ਔਸਤ {mean}, T1 {t1}, T2 {t2})</translation>
    </message>
    <message>
        <source>{count} packs are weighed already, more than the {lot} expected</source>
        <translation type="unfinished">{count} ਬੈਗ ਤੋਲੇ ਜਾ ਚੁੱਕੇ, ਉਮੀਦ {lot} ਤੋਂ ਵੱਧ</translation>
    </message>
    <message>
        <source>{count} rejects are undecided</source>
        <translation type="unfinished">{count} ਰੱਦ ਬੈਗਾਂ ਦਾ ਫੈਸਲਾ ਬਾਕੀ</translation>
    </message>
    <message>
        <source>{count} rejects of {day} wait for a decision</source>
        <translation type="unfinished">{day} ਦੇ {count} ਰੱਦ ਬੈਗ ਫੈਸਲੇ ਦੀ ਉਡੀਕ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>{count} runs were purged on {day}, export {folder}</source>
        <translation type="unfinished">{count} ਦੌਰ {day} ਨੂੰ ਮਿਟਾਏ, ਨਕਲ {folder}</translation>
    </message>
    <message>
        <source>{count} runs were purged, the last on {day}, export {folder}</source>
        <translation type="unfinished">{count} ਦੌਰ ਮਿਟਾਏ, ਆਖਰੀ {day} ਨੂੰ, ਨਕਲ {folder}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} ਵੱਖ ਰੱਖੇ</translation>
    </message>
    <message>
        <source>{count} stops</source>
        <translation type="unfinished">{count} ਵਾਰ ਰੁਕੀ</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} ਸ਼ੱਕੀ ਬੈਗ ਰੋਕੇ: QA ਜਾਂ ਲੀਡ ਫੈਸਲਾ ਕਰੇ: {where}</translation>
    </message>
    <message>
        <source>{count} things are open</source>
        <translation type="unfinished">{count} ਕੰਮ ਬਾਕੀ</translation>
    </message>
    <message>
        <source>{count} things are open, first: {what}. Settle them, or write why the day is signed all the same</source>
        <translation type="unfinished">{count} ਕੰਮ ਬਾਕੀ, ਪਹਿਲਾ: {what}। ਨਿਪਟਾਓ, ਜਾਂ ਲਿਖੋ ਦਿਨ ਤੇ ਫਿਰ ਵੀ ਦਸਤਖਤ ਕਿਉਂ</translation>
    </message>
    <message>
        <source>{count} things happened on {day}</source>
        <translation type="unfinished">{day} ਨੂੰ {count} ਗੱਲਾਂ ਹੋਈਆਂ</translation>
    </message>
    <message>
        <source>{count} things open, not signed</source>
        <translation type="unfinished">{count} ਕੰਮ ਬਾਕੀ, ਦਸਤਖਤ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>{count} unit</source>
        <translation type="unfinished">{count} ਇਕਾਈ</translation>
    </message>
    <message>
        <source>{count} units</source>
        <translation type="unfinished">{count} ਇਕਾਈਆਂ</translation>
    </message>
    <message>
        <source>{count} with customers</source>
        <translation type="unfinished">{count} ਗਾਹਕਾਂ ਕੋਲ</translation>
    </message>
    <message>
        <source>{count} {code} free</source>
        <translation type="unfinished">{count} {code} ਖਾਲੀ</translation>
    </message>
    <message>
        <source>{day} is not reviewed and signed</source>
        <translation type="unfinished">{day} ਦੇਖਿਆ ਤੇ ਦਸਤਖਤ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>{day} is reviewed and signed.</source>
        <translation type="unfinished">{day} ਦੇਖਿਆ ਤੇ ਦਸਤਖਤ ਹੋਏ।</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects, {filter}; {open} open</source>
        <translation type="unfinished">{day}: {all} ਵਿੱਚੋਂ {shown} ਰੱਦ, {filter}; {open} ਬਾਕੀ</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects; {open} open</source>
        <translation type="unfinished">{day}: {all} ਵਿੱਚੋਂ {shown} ਰੱਦ; {open} ਬਾਕੀ</translation>
    </message>
    <message>
        <source>{digits} is no day: give day and month, like 2411 for 24 November</source>
        <translation type="unfinished">{digits} ਕੋਈ ਦਿਨ ਨਹੀਂ: ਦਿਨ ਤੇ ਮਹੀਨਾ ਦਿਓ, ਜਿਵੇਂ 24 ਨਵੰਬਰ ਲਈ 2411</translation>
    </message>
    <message>
        <source>{error}, beyond {limit}</source>
        <translation type="unfinished">{error}, {limit} ਤੋਂ ਪਰੇ</translation>
    </message>
    <message>
        <source>{error}, may be {limit}</source>
        <translation type="unfinished">{error}, ਇਜਾਜ਼ਤ {limit}</translation>
    </message>
    <message>
        <source>{field} is read as {shown}, not {due}</source>
        <translation type="unfinished">{field} {shown} ਪੜ੍ਹਿਆ, {due} ਨਹੀਂ</translation>
    </message>
    <message>
        <source>{field} is {shown}, allowed is {allowed}</source>
        <translation type="unfinished">{field} {shown} ਹੈ, ਚੱਲਦਾ {allowed}</translation>
    </message>
    <message>
        <source>{first} and {count} more</source>
        <translation type="unfinished">{first} ਤੇ {count} ਹੋਰ</translation>
    </message>
    <message>
        <source>{first}, and {count} more</source>
        <translation type="unfinished">{first}, ਤੇ {count} ਹੋਰ</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} ਬੈਗ, T1 ਤੋਂ ਹੇਠਾਂ ਵੱਧ ਤੋਂ ਵੱਧ {most} ({clause})</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, then {second} more, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} ਬੈਗ, ਫਿਰ {second} ਹੋਰ, T1 ਤੋਂ ਹੇਠਾਂ ਵੱਧ ਤੋਂ ਵੱਧ {most} ({clause})</translation>
    </message>
    <message>
        <source>{last} comes before {first}: give the first serial first</source>
        <translation type="unfinished">{last} {first} ਤੋਂ ਪਹਿਲਾਂ ਹੈ: ਪਹਿਲਾ ਨੰਬਰ ਪਹਿਲਾਂ ਦਿਓ</translation>
    </message>
    <message>
        <source>{mass} DOES NOT FIT ({against})</source>
        <translation type="unfinished">{mass} ਨਹੀਂ ਮਿਲਦਾ ({against})</translation>
    </message>
    <message>
        <source>{mass} FITS ({against})</source>
        <translation type="unfinished">{mass} ਮਿਲਦਾ ਹੈ ({against})</translation>
    </message>
    <message>
        <source>{mass} a bag</source>
        <translation type="unfinished">{mass} ਹਰ ਬੈਗ</translation>
    </message>
    <message>
        <source>{mass} g a bag</source>
        <translation type="unfinished">{mass} g ਹਰ ਬੈਗ</translation>
    </message>
    <message>
        <source>{mass} is below what the scale weighs: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">{mass} ਕੰਡੇ ਦੇ ਤੋਲ ਤੋਂ ਹੇਠਾਂ ਹੈ: ਦੇਖੋ ਪੱਲਾ ਠੀਕ ਟਿਕਿਆ ਹੈ ਤੇ ਕੁਝ ਚੁੱਕਦਾ ਨਹੀਂ, ਖਾਲੀ ਕਰੋ ਤੇ ਜ਼ੀਰੋ ਕਰੋ</translation>
    </message>
    <message>
        <source>{mass} is in high resolution, which is not the indication</source>
        <translation type="unfinished">{mass} ਬਰੀਕ ਅੰਕਾਂ ਵਿੱਚ ਹੈ, ਜੋ ਦਿਖਾਇਆ ਭਾਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>{mass} is more than the scale weighs, {most}</source>
        <translation type="unfinished">{mass} ਕੰਡੇ ਦੀ ਹੱਦ {most} ਤੋਂ ਵੱਧ ਹੈ</translation>
    </message>
    <message>
        <source>{mass} is not a multiple of {interval}</source>
        <translation type="unfinished">{mass}, {interval} ਦਾ ਗੁਣਜ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>{mass} is the tare, not the load</source>
        <translation type="unfinished">{mass} ਟੇਅਰ ਹੈ, ਭਾਰ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>{mass} now</source>
        <translation type="unfinished">{mass} ਹੁਣ</translation>
    </message>
    <message>
        <source>{mass} proposed</source>
        <translation type="unfinished">{mass} ਸੁਝਾਇਆ</translation>
    </message>
    <message>
        <source>{mass} this run</source>
        <translation type="unfinished">{mass} ਇਸ ਦੌਰ</translation>
    </message>
    <message>
        <source>{mass} this run, {money} in money</source>
        <translation type="unfinished">{mass} ਇਸ ਦੌਰ, {money} ਪੈਸੇ</translation>
    </message>
    <message>
        <source>{mass}: {count} bags, {percent} %</source>
        <translation type="unfinished">{mass}: {count} ਬੈਗ, {percent} %</translation>
    </message>
    <message>
        <source>{mean} OUTSIDE {least} to {most}</source>
        <translation type="unfinished">{mean} {least} ਤੋਂ {most} ਦੇ ਬਾਹਰ</translation>
    </message>
    <message>
        <source>{mean} within {least} to {most}</source>
        <translation type="unfinished">{mean} {least} ਤੋਂ {most} ਵਿੱਚ</translation>
    </message>
    <message>
        <source>{name} not installed</source>
        <translation type="unfinished">{name} ਨਹੀਂ ਲੱਗਾ</translation>
    </message>
    <message>
        <source>{name} serial {code}</source>
        <translation type="unfinished">{name} ਸੀਰੀਅਲ {code}</translation>
    </message>
    <message>
        <source>{name} stands for {first} and for {second}: look at the case and keep one</source>
        <translation type="unfinished">{name}: {first} ਵੀ ਤੇ {second} ਵੀ: ਡੱਬਾ ਦੇਖੋ ਤੇ ਇੱਕ ਰੱਖੋ</translation>
    </message>
    <message>
        <source>{name} waits: a bag is on the pan</source>
        <translation type="unfinished">{name} ਰੁਕਿਆ: ਪੱਲੇ 'ਤੇ ਬੈਗ ਹੈ</translation>
    </message>
    <message>
        <source>{name} would change what the bags of the open run weigh: end the run</source>
        <translation type="unfinished">{name} ਖੁੱਲ੍ਹੇ ਦੌਰ ਦੇ ਬੈਗਾਂ ਦਾ ਭਾਰ ਬਦਲੇਗਾ: ਦੌਰ ਖਤਮ ਕਰੋ</translation>
    </message>
    <message>
        <source>{name}: mean {mean}, spread {spread}</source>
        <translation type="unfinished">{name}: ਔਸਤ {mean}, ਫੈਲਾਅ {spread}</translation>
    </message>
    <message>
        <source>{name}: {code} from {who}</source>
        <translation type="unfinished">{name}: {code}, {who} ਤੋਂ</translation>
    </message>
    <message>
        <source>{number} % full</source>
        <translation type="unfinished">{number} % ਭਰੀ</translation>
    </message>
    <message>
        <source>{number} % of nominal</source>
        <translation type="unfinished">ਨਾਮਾਤਰ ਦਾ {number} %</translation>
    </message>
    <message>
        <source>{number} April {count}</source>
        <translation type="unfinished">{number} ਅਪ੍ਰੈਲ {count}</translation>
    </message>
    <message>
        <source>{number} August {count}</source>
        <translation type="unfinished">{number} ਅਗਸਤ {count}</translation>
    </message>
    <message>
        <source>{number} December {count}</source>
        <translation type="unfinished">{number} ਦਸੰਬਰ {count}</translation>
    </message>
    <message>
        <source>{number} February {count}</source>
        <translation type="unfinished">{number} ਫ਼ਰਵਰੀ {count}</translation>
    </message>
    <message>
        <source>{number} January {count}</source>
        <translation type="unfinished">{number} ਜਨਵਰੀ {count}</translation>
    </message>
    <message>
        <source>{number} July {count}</source>
        <translation type="unfinished">{number} ਜੁਲਾਈ {count}</translation>
    </message>
    <message>
        <source>{number} June {count}</source>
        <translation type="unfinished">{number} ਜੂਨ {count}</translation>
    </message>
    <message>
        <source>{number} March {count}</source>
        <translation type="unfinished">{number} ਮਾਰਚ {count}</translation>
    </message>
    <message>
        <source>{number} May {count}</source>
        <translation type="unfinished">{number} ਮਈ {count}</translation>
    </message>
    <message>
        <source>{number} November {count}</source>
        <translation type="unfinished">{number} ਨਵੰਬਰ {count}</translation>
    </message>
    <message>
        <source>{number} October {count}</source>
        <translation type="unfinished">{number} ਅਕਤੂਬਰ {count}</translation>
    </message>
    <message>
        <source>{number} September {count}</source>
        <translation type="unfinished">{number} ਸਤੰਬਰ {count}</translation>
    </message>
    <message>
        <source>{number} bags</source>
        <translation type="unfinished">{number} ਬੈਗ</translation>
    </message>
    <message>
        <source>{number} failed</source>
        <translation type="unfinished">{number} ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>{number} held</source>
        <translation type="unfinished">{number} ਤੋਂ ਰੋਕੇ</translation>
    </message>
    <message>
        <source>{number} in money</source>
        <translation type="unfinished">ਪੈਸੇ ਵਿੱਚ {number}</translation>
    </message>
    <message>
        <source>{number} missing</source>
        <translation type="unfinished">{number} ਘੱਟ</translation>
    </message>
    <message>
        <source>{number} of {whole}</source>
        <translation type="unfinished">{whole} ਵਿੱਚੋਂ {number}</translation>
    </message>
    <message>
        <source>{number} of {whole} allowed</source>
        <translation type="unfinished">{whole} ਵਿੱਚੋਂ {number}</translation>
    </message>
    <message>
        <source>{number} of {whole} bags</source>
        <translation type="unfinished">{whole} ਵਿੱਚੋਂ {number} ਬੈਗ</translation>
    </message>
    <message>
        <source>{number} of {whole}: {what}</source>
        <translation type="unfinished">{whole} ਵਿੱਚੋਂ {number}: {what}</translation>
    </message>
    <message>
        <source>{number} to {count} days</source>
        <translation type="unfinished">{number} ਤੋਂ {count} ਦਿਨ</translation>
    </message>
    <message>
        <source>{number} to {whole} {unit}</source>
        <translation type="unfinished">{number} ਤੋਂ {whole} {unit}</translation>
    </message>
    <message>
        <source>{number} too many</source>
        <translation type="unfinished">{number} ਵਾਧੂ</translation>
    </message>
    <message>
        <source>{picked} picked, {count} weighed</source>
        <translation type="unfinished">{picked} ਚੁਣੇ, {count} ਤੋਲੇ</translation>
    </message>
    <message>
        <source>{product}, version {version}</source>
        <translation type="unfinished">{product}, ਰੂਪ {version}</translation>
    </message>
    <message>
        <source>{product}, weighed {time}</source>
        <translation type="unfinished">{product}, ਤੋਲਿਆ {time}</translation>
    </message>
    <message>
        <source>{product}: {mass} kg net</source>
        <translation type="unfinished">{product}: {mass} kg ਸ਼ੁੱਧ</translation>
    </message>
    <message>
        <source>{result} by {code}</source>
        <translation type="unfinished">{result}, {code}</translation>
    </message>
    <message>
        <source>{seconds} s: {frames} weights, {garbage} not understood ({percent} %, 5 % are allowed), {bytes} bytes</source>
        <translation type="unfinished">{seconds} s: {frames} ਭਾਰ, {garbage} ਸਮਝ ਨਹੀਂ ਆਏ ({percent} %, ਇਜਾਜ਼ਤ 5 %), {bytes} ਬਾਈਟ</translation>
    </message>
    <message>
        <source>{serial} must say</source>
        <translation type="unfinished">{serial} ਤੇ ਇਹ ਹੋਵੇ</translation>
    </message>
    <message>
        <source>{serial}: as recorded</source>
        <translation type="unfinished">{serial}: ਜਿਵੇਂ ਦਰਜ</translation>
    </message>
    <message>
        <source>{sscc} had its use-by date on {day}: it must not leave</source>
        <translation type="unfinished">{sscc} ਦੀ ਮਿਆਦ {day} ਨੂੰ ਲੰਘ ਗਈ: ਇਹ ਬਾਹਰ ਨਾ ਜਾਵੇ</translation>
    </message>
    <message>
        <source>{sscc} is a pallet: a pallet holds cases</source>
        <translation type="unfinished">{sscc} ਪੈਲੇਟ ਹੈ: ਪੈਲੇਟ ਤੇ ਡੱਬੇ ਹੁੰਦੇ ਹਨ</translation>
    </message>
    <message>
        <source>{sscc} is gone with {shipment}</source>
        <translation type="unfinished">{sscc} {shipment} ਨਾਲ ਗਿਆ</translation>
    </message>
    <message>
        <source>{sscc} is on pallet {pallet}</source>
        <translation type="unfinished">{sscc} ਪੈਲੇਟ {pallet} ਤੇ ਹੈ</translation>
    </message>
    <message>
        <source>{sscc} is undone</source>
        <translation type="unfinished">{sscc} ਵਾਪਸ ਕੀਤਾ</translation>
    </message>
    <message>
        <source>{sscc} is undone.</source>
        <translation type="unfinished">{sscc} ਵਾਪਸ ਕੀਤਾ।</translation>
    </message>
    <message>
        <source>{text} is no figure: key in digits, such as 3.4</source>
        <translation type="unfinished">{text} ਅੰਕ ਨਹੀਂ: ਅੰਕ ਭਰੋ, ਜਿਵੇਂ 3.4</translation>
    </message>
    <message>
        <source>{text} is no serial of a bag, such as A1-7K-000042</source>
        <translation type="unfinished">{text} ਬੈਗ ਦਾ ਨੰਬਰ ਨਹੀਂ, ਜਿਵੇਂ A1-7K-000042</translation>
    </message>
    <message>
        <source>{text} is no time: write {form}</source>
        <translation type="unfinished">{text} ਸਮਾਂ ਨਹੀਂ: ਲਿਖੋ {form}</translation>
    </message>
    <message>
        <source>{time}: {mass}; mean so far {mean}</source>
        <translation type="unfinished">{time}: {mass}; ਹੁਣ ਤੱਕ ਔਸਤ {mean}</translation>
    </message>
    <message>
        <source>{value} cannot be: allowed is {low} to {high}</source>
        <translation type="unfinished">{value} ਨਹੀਂ ਹੋ ਸਕਦਾ: ਇਜਾਜ਼ਤ {low} ਤੋਂ {high}</translation>
    </message>
    <message>
        <source>{what} by {code}: {why}</source>
        <translation type="unfinished">{what}, {code}: {why}</translation>
    </message>
    <message>
        <source>{what} cannot be released: {why}</source>
        <translation type="unfinished">{what} ਛੱਡਿਆ ਨਹੀਂ ਜਾ ਸਕਦਾ: {why}</translation>
    </message>
    <message>
        <source>{what} failed its check</source>
        <translation type="unfinished">{what} ਜਾਂਚ ਵਿੱਚ ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} ਜਾਂਚ ਵਿੱਚ ਫੇਲ੍ਹ: ਠੀਕ ਕਰੋ, ਫਿਰ ਜਾਂਚੋ: {where}</translation>
    </message>
    <message>
        <source>{what} failed its last check</source>
        <translation type="unfinished">{what} ਆਖਰੀ ਜਾਂਚ ਵਿੱਚ ਫੇਲ੍ਹ</translation>
    </message>
    <message>
        <source>{what} failed: write what is done about it before it is recorded</source>
        <translation type="unfinished">{what} ਫੇਲ੍ਹ: ਦਰਜ ਕਰਨ ਤੋਂ ਪਹਿਲਾਂ ਲਿਖੋ ਕੀ ਕੀਤਾ</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{minutes} ਮਿੰਟ ਵਿੱਚ {what}</translation>
    </message>
    <message>
        <source>{what} is on record.</source>
        <translation type="unfinished">{what} ਦਰਜ।</translation>
    </message>
    <message>
        <source>{what} keeps no bag any more: release the hold</source>
        <translation type="unfinished">{what} ਹੁਣ ਕੋਈ ਬੈਗ ਨਹੀਂ ਰੋਕਦਾ: ਰੋਕ ਛੱਡੋ</translation>
    </message>
    <message>
        <source>{what} lost on {code}</source>
        <translation type="unfinished">{what}: {code} ਉੱਤੇ ਗੁਆਚਿਆ</translation>
    </message>
    <message>
        <source>{what} needs {thing}</source>
        <translation type="unfinished">{what} ਲਈ {thing} ਚਾਹੀਦਾ</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">ਹੁਣ {what}</translation>
    </message>
    <message>
        <source>{what} was released already</source>
        <translation type="unfinished">{what} ਪਹਿਲਾਂ ਹੀ ਛੱਡਿਆ</translation>
    </message>
    <message>
        <source>{what} was scanned already</source>
        <translation type="unfinished">{what} ਪਹਿਲਾਂ ਹੀ ਸਕੈਨ</translation>
    </message>
    <message>
        <source>{what} was {usual}, now {seen}: is this still the same product?</source>
        <translation type="unfinished">{what} {usual} ਸੀ, ਹੁਣ {seen}: ਕੀ ਇਹ ਉਹੀ ਉਤਪਾਦ ਹੈ?</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: ਤਾਰੀਖ ਤੇ ਸਮਾਂ ਦੇਖੋ, ਫਿਰ ਦਸਤਖਤ {where}</translation>
    </message>
    <message>
        <source>{what}: no checks in the settings</source>
        <translation type="unfinished">{what}: ਸੈਟਿੰਗਾਂ ਵਿੱਚ ਕੋਈ ਜਾਂਚ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} ਇਸ 'ਤੇ ਦਸਤਖਤ ਨਹੀਂ ਕਰ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>{who} cannot witness a decision of {other}: choose another person</source>
        <translation type="unfinished">{who} {other} ਦੇ ਫੈਸਲੇ ਦਾ ਗਵਾਹ ਨਹੀਂ ਹੋ ਸਕਦਾ: ਹੋਰ ਬੰਦਾ ਚੁਣੋ</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} ਨੇ ਦਸਤਖਤ ਨਹੀਂ ਕੀਤੇ: {act}, PIN ਜਾਂ ਬੈਜ ਚਾਹੀਦਾ</translation>
    </message>
    <message>
        <source>{who} does not lead: the lead signs first</source>
        <translation type="unfinished">{who} ਲੀਡ ਨਹੀਂ: ਲੀਡ ਪਹਿਲਾਂ ਦਸਤਖਤ ਕਰੇ</translation>
    </message>
    <message>
        <source>{who} has no PIN: the manager sets one, station people pin {id}</source>
        <translation type="unfinished">{who} ਦਾ PIN ਨਹੀਂ: ਮੈਨੇਜਰ ਬਣਾਵੇ, station people pin {id}</translation>
    </message>
    <message>
        <source>{who} is nobody in people.toml</source>
        <translation type="unfinished">{who} people.toml ਵਿੱਚ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} ਇੱਥੇ ਦਸਤਖਤ ਨਹੀਂ ਕਰ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>{who} signs first: another person signs second</source>
        <translation type="unfinished">{who} ਪਹਿਲਾਂ ਦਸਤਖਤ ਕਰੇ: ਦੂਜਾ ਬੰਦਾ ਬਾਅਦ ਵਿੱਚ</translation>
    </message>
    <message>
        <source>{why}, after a page was out</source>
        <translation type="unfinished">{why}, ਇੱਕ ਪੰਨਾ ਨਿਕਲਣ ਤੋਂ ਬਾਅਦ</translation>
    </message>
    <message>
        <source>{why}, after printing may have begun</source>
        <translation type="unfinished">{why}, ਛਪਾਈ ਸ਼ਾਇਦ ਸ਼ੁਰੂ ਹੋ ਚੁੱਕੀ ਸੀ</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: ਦੋ ਜਣੇ ਲੇਬਲ ਮਨਜ਼ੂਰ ਕਰਨ {where}</translation>
    </message>
</context>
</TS>
