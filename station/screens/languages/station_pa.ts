<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pa_IN" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 ਉਤਪਾਦ</translation>
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
        <source>ADD</source>
        <translation type="unfinished">ਪਾਓ</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">ਅਲਾਰਮ</translation>
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
        <source>BEFORE</source>
        <translation type="unfinished">ਪਹਿਲਾਂ</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">ਡੱਬਾ</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">ਇਸ ਤੋਂ ਪਹਿਲਾਂ ਸਭ ਤੋਂ ਵਧੀਆ</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">ਲੀਡ ਬੁਲਾਓ</translation>
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
        <source>CHECKS</source>
        <translation type="unfinished">ਜਾਂਚਾਂ</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">ਮਿਟਾਓ</translation>
    </message>
    <message>
        <source>CO2</source>
        <translation type="unfinished">CO2</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">ਗਿਣਿਆ</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">ਕੱਟਿਆ</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">ਫੈਸਲਾ</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">ਦਸਤਖਤ ਨਹੀਂ</translation>
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
        <source>EMPTY PAN</source>
        <translation type="unfinished">ਪੈਨ ਖਾਲੀ ਕਰੋ</translation>
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
        <source>FILTER</source>
        <translation type="unfinished">ਛਾਂਟੋ</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">ਪਹਿਲਾ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">ਛੱਡੋ</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">ਜਾਰੀ ਰੱਖੋ</translation>
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
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">ਮੈਂ ਦੇਖ ਲਿਆ</translation>
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
        <source>LABELS</source>
        <translation type="unfinished">ਲੇਬਲ</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">ਭਾਸ਼ਾ</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">ਲੀਡ</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">ਬੈਗ ਚੁੱਕੋ</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">ਲਾਈਨ</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">ਦੁਬਾਰਾ ਲੱਦੋ</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">ਲੱਭੋ</translation>
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
        <source>Labels in doubt</source>
        <translation type="unfinished">ਸ਼ੱਕੀ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">ਪੈਕਰ ਦੀ ਸਕ੍ਰੀਨ ਦੀ ਭਾਸ਼ਾ</translation>
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
        <source>MANAGER</source>
        <translation type="unfinished">ਮੈਨੇਜਰ</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">ਹੋਰ</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">ਔਸਤ ਸ਼ੁੱਧ ਭਾਰ {mass}</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">ਨਵੀਂ ਰੋਕ</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">ਰੀਡਿੰਗ ਨਹੀਂ</translation>
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
        <source>No good bag yet</source>
        <translation type="unfinished">ਹਾਲੇ ਕੋਈ ਚੰਗਾ ਬੈਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">ਕੋਈ ਦੌਰ ਨਹੀਂ ਚੱਲ ਰਿਹਾ</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">ਪੈਕਰ ਦੀ</translation>
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
        <source>On the scale</source>
        <translation type="unfinished">ਕੰਡੇ 'ਤੇ</translation>
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
        <source>PAPER</source>
        <translation type="unfinished">ਕਾਗਜ਼</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">ਛਾਪੋ</translation>
    </message>
    <message>
        <source>QA</source>
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">ਗੁਣਵੱਤਾ</translation>
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
        <source>REHEARSE</source>
        <translation type="unfinished">ਅਭਿਆਸ</translation>
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
        <source>ROLL</source>
        <translation type="unfinished">ਰੋਲ</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">ਦੌਰ</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">ਦੌਰ, ਫਿਰ {door} ({key})</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">ਨਾਮਨਜ਼ੂਰ। {why}</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">ਦੌਰ ਚੱਲ ਰਿਹਾ</translation>
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
        <source>SEAL</source>
        <translation type="unfinished">ਸੀਲ ਕਰੋ</translation>
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
        <source>STOP</source>
        <translation type="unfinished">ਰੋਕ</translation>
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
        <source>Start a run</source>
        <translation type="unfinished">ਦੌਰ ਸ਼ੁਰੂ ਕਰੋ</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, ਨਾਮਾਤਰ</translation>
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
        <source>TRACE</source>
        <translation type="unfinished">ਖੋਜ</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">ਸਿਖਲਾਈ</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਆਪਣੀ ਰੀਡਿੰਗ ਹੀ ਮੰਨੀ ਜਾਵੇਗੀ। ਜੇ ਸਕ੍ਰੀਨ ਤੇ ਕੰਡਾ ਵੱਖਰੇ ਹੋਣ ਤਾਂ ਕੰਡਾ ਸਹੀ ਹੈ: ਰੁਕੋ ਤੇ ਲੀਡ ਨੂੰ ਬੁਲਾਓ।</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਆਪਣਾ ਨਾਂ ਛੂਹੋ।</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">ਇਸ ਤੋਂ ਪਹਿਲਾਂ ਵਰਤੋ</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">ਰੁਕੋ</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">ਇੱਕ ਬੈਗ ਤੋਲੋ</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">ਪੈਨ ਪੂੰਝੋ</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">ਹਿਸਾਬ ਲਾਓ</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">ਕਿਉਂ ਵੱਖ ਰੱਖਿਆ?</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">ਪੈਨ 'ਤੇ ਬੈਗ ਹੈ: ਪੂਰਾ ਕਰੋ, ਚੁੱਕੋ, ਫਿਰ ਦੌਰ ਖਤਮ ਕਰੋ</translation>
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
        <source>a cover is open: close it</source>
        <translation type="unfinished">ਢੱਕਣ ਖੁੱਲ੍ਹਾ ਹੈ: ਬੰਦ ਕਰੋ</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">ਦਰਵਾਜ਼ਾ ਖੁੱਲ੍ਹਾ ਹੈ: ਬੰਦ ਕਰੋ</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">ਰੋਕਿਆ ਲਾਟ ਲਾਈਨ 'ਤੇ ਹੈ</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">ਲੇਬਲ ਨਹੀਂ ਮਿਲਦਾ</translation>
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
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">ਨਵਾਂ ਰੋਲ ਪਹਿਲੇ ਲੇਬਲ ਨਾਲ ਸ਼ੁਰੂ ਹੁੰਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">ਵਿਰਾਮ</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">ਦੌਰ ਚੱਲ ਰਿਹਾ ਹੈ: ਅਗਲੇ ਤੋਂ ਪਹਿਲਾਂ ਖਤਮ ਕਰੋ</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">ਰੋਕ ਤੋਂ ਬਾਅਦ</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">ਤੇ {count} ਹੋਰ, ਹੇਠਾਂ</translation>
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
        <source>as people.toml says</source>
        <translation type="unfinished">people.toml ਅਨੁਸਾਰ</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">ਲਾਈਨ ਨੂੰ ਪੁੱਛਿਆ …</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">ਬੇਤਰਤੀਬ</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">ਬੈਗ</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">ਬੈਗ {code}, ਫਿਲਮ ਲਾਟ {lot} ਦੀ ਟੇਅਰ ਜਾਂਚ ਨਹੀਂ: ਕਰੋ: {where}</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">ਬੈਗ</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">ਬਰੇਕ</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">ਸੀਲ ਖੁੱਲ੍ਹੀ</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">ਕਿਸੇ ਨੂੰ ਬੁਲਾਉਣਾ</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">ਲੇਬਲ ਰੋਲ ਬਦਲਣਾ ਜਾਂ ਸਮਝਾਉਣਾ</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">{what} ਦੀ ਜਾਂਚ</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">{what} ਤੋਂ ਬਾਅਦ ਕੰਡਾ ਜਾਂਚੋ: {where}</translation>
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
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">ਲੇਬਲ ਮਿਲਾਓ, ਫਿਰ ਸਕੈਨ ਠੀਕ ਕਰੋ</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">ਤਾਰੀਖ ਤੇ ਸਮਾਂ ਪੱਕਾ ਕਰਨਾ</translation>
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
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">ਪਿਛਲੇ ਦੌਰ ਦੇ ਬੈਗ ਗਿਣੋ: {where}</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">ਤਾਰੀਖ ਜਾਂ ਸਮੇਂ ਬਾਰੇ ਸ਼ੱਕ</translation>
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
        <source>decide about suspect bags</source>
        <translation type="unfinished">ਸ਼ੱਕੀ ਬੈਗਾਂ ਦਾ ਫੈਸਲਾ</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">ਬੈਗ ਦਾ ਕੀ ਕਰਨਾ ਹੈ, ਫੈਸਲਾ</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">ਹੋ ਗਿਆ</translation>
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
        <source>expired – take it off the line</source>
        <translation type="unfinished">ਮਿਆਦ ਪੁੱਗੀ – ਲਾਈਨ ਤੋਂ ਹਟਾਓ</translation>
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
        <source>first label</source>
        <translation type="unfinished">ਪਹਿਲਾ ਲੇਬਲ</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">ਹੇਠਲੀ, ਟੀਚਾ, ਉਪਰਲੀ</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">ਬਾਹਰੀ ਚੀਜ਼</translation>
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
        <source>gross weight</source>
        <translation type="unfinished">ਕੁੱਲ ਭਾਰ</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">ਰੋਕਿਆ – QA ਨੂੰ ਬੁਲਾਓ</translation>
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
        <source>hold, no record</source>
        <translation type="unfinished">ਰੋਕੋ, ਰਿਕਾਰਡ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">ਬੈਗ ਵਿੱਚ {mass}</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">ਜਵਾਬ ਨਹੀਂ: ਚਾਲੂ ਹੈ, ਤਾਰ ਲੱਗੀ ਹੈ?</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">{seconds} s ਬਾਅਦ ਵੀ ਨਹੀਂ ਨਿਕਲਿਆ: ਦੇਖੋ ਨਿਕਲਦਾ ਹੈ ਕਿ ਨਹੀਂ</translation>
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
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">ਰਿਕਾਰਡ ਰੱਖਣਾ, ਬਹਾਲ ਜਾਂ ਸਾਫ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">ਲੇਬਲ ਰੱਦ ਹੈ</translation>
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
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਬਾਰੇ ਸ਼ੱਕ ਹੈ: {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਨਹੀਂ ਨਿਕਲਿਆ: ਪ੍ਰਿੰਟਰ ਦੇਖੋ</translation>
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
        <source>last label</source>
        <translation type="unfinished">ਪਿਛਲਾ ਲੇਬਲ</translation>
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
        <source>lead, on the scale</source>
        <translation type="unfinished">ਲੀਡ, ਕੰਡੇ 'ਤੇ</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">ਪੂਰੀ ਸਕ੍ਰੀਨ ਛੱਡਣਾ</translation>
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
        <source>look whether the label is whole</source>
        <translation type="unfinished">ਦੇਖੋ ਲੇਬਲ ਪੂਰਾ ਹੈ</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">ਲਾਟ {lot} ਰੋਕਿਆ: ਹਟਾਓ ਤੇ ਹੋਰ ਲਗਾਓ: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">ਲਾਟ {lot} ਪਤਾ ਨਹੀਂ: ਪਹਿਲਾਂ ਪ੍ਰਾਪਤ ਕਰੋ</translation>
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
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">ਲਾਟ {lot}: {why}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">ਮਸ਼ੀਨ</translation>
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
        <source>metal detector</source>
        <translation type="unfinished">ਧਾਤ ਡਿਟੈਕਟਰ</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">ਲਾਈਨ 'ਤੇ ਲਾਟ ਬਦਲਣਾ</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">ਹਾਲੇ PIN ਜਾਂ ਬੈਜ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">ਇਹ ਬੈਗ ਉਤਪਾਦ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">ਲੇਬਲ ਰੋਲ ਨਹੀਂ: ਸਕੈਨ ਕਰੋ {where}</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">ਲੇਬਲ ਮੁੱਕ ਗਏ: ਰੋਲ ਪਾਓ</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">ਉਤਪਾਦ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished">ਰੀਡਿੰਗ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>no reading with a bag on the pan</source>
        <translation type="unfinished">ਪੈਨ 'ਤੇ ਬੈਗ ਪਰ ਰੀਡਿੰਗ ਨਹੀਂ</translation>
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
        <source>nobody signed</source>
        <translation type="unfinished">ਕਿਸੇ ਨੇ ਦਸਤਖਤ ਨਹੀਂ ਕੀਤੇ</translation>
    </message>
    <message>
        <source>nobody who may sign has a PIN or badge: station people pin</source>
        <translation type="unfinished">ਦਸਤਖਤ ਕਰਨ ਵਾਲੇ ਕਿਸੇ ਕੋਲ PIN ਜਾਂ ਬੈਜ ਨਹੀਂ: station people pin</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">ਲੇਬਲ ਨਹੀਂ ਲੱਗਾ: {reason}</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">ਹਾਲੇ ਜਾਂਚਿਆ ਨਹੀਂ</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">{count} ਬੈਗਾਂ ਵਿੱਚੋਂ</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">ਕੰਡੇ 'ਤੇ: {who}</translation>
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
        <source>over capacity: take the load off</source>
        <translation type="unfinished">ਹੱਦ ਤੋਂ ਵੱਧ ਭਾਰ: ਭਾਰ ਚੁੱਕੋ</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">ਪੈਕਰ</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">ਜਾਂਚ ਦੀ ਤਿਆਰੀ ਕਰੋ</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">ਲੇਬਲ ਦੁਬਾਰਾ ਛਾਪਣਾ</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">ਉਤਪਾਦ ਦਾ ਤਾਪਮਾਨ</translation>
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
        <source>put it right, then check again</source>
        <translation type="unfinished">ਠੀਕ ਕਰੋ, ਫਿਰ ਜਾਂਚੋ</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">ਮਾਲ ਪ੍ਰਾਪਤ ਕਰਨਾ</translation>
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
        <source>refuse a label</source>
        <translation type="unfinished">ਲੇਬਲ ਨਾਮਨਜ਼ੂਰ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">ਰੋਕੀ ਚੀਜ਼ ਛੱਡਣਾ</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">ਦਿਨ ਦੇਖਣਾ ਤੇ ਦਸਤਖਤ ਕਰਨਾ</translation>
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
        <source>room temperature</source>
        <translation type="unfinished">ਕਮਰੇ ਦਾ ਤਾਪਮਾਨ</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">ਨਿਯਮ</translation>
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
        <source>say that an alarm is seen</source>
        <translation type="unfinished">ਅਲਾਰਮ ਦੇਖਿਆ ਦੱਸਣਾ</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">ਲੇਬਲ ਦਾ ਕੀ ਹੋਇਆ ਦੱਸਣਾ</translation>
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
        <source>scale line</source>
        <translation type="unfinished">ਕੰਡੇ ਦੀ ਤਾਰ</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">ਕੰਡਾ {mass} ਦੱਸਦਾ ਹੈ, ਕੰਡੇ ਦੀ ਰੀਡਿੰਗ ਹੀ ਮੰਨੀ ਜਾਵੇਗੀ</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ ਕਰਨਾ</translation>
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
        <source>scan the last label</source>
        <translation type="unfinished">ਆਖਰੀ ਲੇਬਲ ਸਕੈਨ ਕਰੋ</translation>
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
        <source>service</source>
        <translation type="unfinished">ਸੇਵਾ</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">ਵੱਖ ਰੱਖਿਆ</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">ਲੋਕ, PIN ਤੇ ਬੈਜ ਤੈਅ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">ਵੱਖ ਰੱਖ ਰਹੇ ਹਾਂ: {reason}</translation>
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
        <source>ship</source>
        <translation type="unfinished">ਰਵਾਨਾ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">ਦੌਰ ਬਦਲੀ 'ਤੇ ਦਸਤਖਤ</translation>
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
        <source>start a run</source>
        <translation type="unfinished">ਦੌਰ ਸ਼ੁਰੂ ਕਰਨਾ</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">ਲਾਈਨ ਰੋਕਣਾ</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">ਰੱਖੇ ਬੈਗ</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">ਹਟਾਓ: {where}</translation>
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
        <source>tare</source>
        <translation type="unfinished">ਟੇਅਰ</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">ਟੀਚਾ</translation>
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
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">ਡਿਸਕ ਭਰੀ ਹੈ: ਥਾਂ ਬਣਾਓ, ਫਿਰ ਛਾਪੋ</translation>
    </message>
    <message>
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">{mass} ਦਾ ਖਾਲੀ ਬੈਗ {what} ਨਾਲ ਨਹੀਂ ਮਿਲਦਾ: ਹੋਰ ਤੋਲੋ: {where}</translation>
    </message>
    <message>
        <source>the empty pan does not show zero</source>
        <translation type="unfinished">ਖਾਲੀ ਪੈਨ ਜ਼ੀਰੋ ਨਹੀਂ ਦੱਸਦਾ</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">ਖਾਲੀ ਪੈਨ {mass} ਦੱਸਦਾ ਹੈ: ਪੂੰਝੋ, ਫਿਰ ਜ਼ੀਰੋ ਕਰੋ</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">ਲੇਬਲਾਂ ਦਾ ਫੋਲਡਰ ਨਹੀਂ: {folder} ਮੁੜ ਬਣਾਓ</translation>
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
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">ਲਾਈਨ ਖੜ੍ਹੀ ਹੈ, {reason}: ਜਾਰੀ ਰੱਖਣ ਲਈ ਦੌਰ, ਫਿਰ ਬਦਲੀ (F8)</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">ਲਾਈਨ ਰੁਕੀ</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">ਔਸਤ ਨਾਮਾਤਰ ਤੋਂ ਘੱਟ</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">ਅਗਲੇ ਬੈਗ ਤੋਂ ਪਹਿਲਾਂ ਪੈਨ ਖਾਲੀ ਹੋਵੇ</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਨੇ ਛੱਡ ਦਿੱਤਾ</translation>
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
        <source>the printer: {why}</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ: {why}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">ਪ੍ਰਿੰਟਰ ਤੱਕ ਨਹੀਂ ਪਹੁੰਚਦਾ: ਚਾਲੂ ਕਰੋ, ਤਾਰ ਦੇਖੋ</translation>
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
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">ਕੰਡਾ ਜਾਂਚ ਵਿੱਚ ਫੇਲ੍ਹ: ਠੀਕ ਕਰੋ, ਫਿਰ ਜਾਂਚੋ: {where}</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">ਕੰਡਾ ਚੁੱਪ ਹੈ: ਤਾਰ ਤੇ ਬਿਜਲੀ ਦੇਖੋ</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">ਕੰਡਾ ਸ਼ੁੱਧ ਭਾਰ ਦੱਸਦਾ ਹੈ: ਉਸਦੀ ਟੇਅਰ ਹਟਾਓ, ਸਟੇਸ਼ਨ ਬੈਗ ਆਪ ਘਟਾਉਂਦਾ ਹੈ</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">ਕੰਡਾ {unit} ਵਿੱਚ ਹੈ, ਦੌਰ {other} ਵਿੱਚ: ਕੰਡਾ ਠੀਕ ਕਰੋ</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">ਲੇਬਲ ਸਕੈਨ ਵਿੱਚ ਦੇਰੀ: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">ਲੇਬਲ {serial} ਦਾ ਸਕੈਨ ਨਹੀਂ ਮਿਲਦਾ: ਲੀਡ ਠੀਕ ਕਰੇ {where}</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">ਸਟੇਸ਼ਨ ਪਿੱਛੇ ਹੈ: ਬੈਗ ਚੁੱਕੋ ਤੇ ਰੁਕੋ</translation>
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
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">ਇਹ ਬੈਗ ਦਰਜ ਨਹੀਂ ਤੇ ਲੇਬਲ ਨਹੀਂ: {why}</translation>
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
        <source>touch an alarm first</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਅਲਾਰਮ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">ਪਹਿਲਾਂ ਆਪਣਾ ਨਾਂ ਛੂਹੋ</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">ਉਪਰਲੀ</translation>
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
        <source>wash record</source>
        <translation type="unfinished">ਧੋਣ ਦਾ ਰਿਕਾਰਡ</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">{count} ਬੈਗਾਂ ਵਿੱਚ ਖਾਲੀ ਬੈਗ ਤੋਲੋ</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">ਪੈਨ ਪੂੰਝੋ, ਫਿਰ ਜ਼ੀਰੋ ਕਰੋ</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">ਇਸ ਸਕ੍ਰੀਨ 'ਤੇ ਕੰਮ</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">ਗਲਤ ਭਾਰ</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} ਬੈਗ</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">ਫੇਲ੍ਹ ਜਾਂਚ ਬਾਅਦ {count} ਬੈਗ ਰੋਕੇ: QA ਫੈਸਲਾ ਕਰੇ: {where}</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} ਬੈਗ ਪੈਕ ਹੋ ਗਏ: ਲੀਡ ਦੌਰ ਖਤਮ ਕਰੇਗਾ</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} ਲੇਬਲਾਂ ਬਾਰੇ ਸ਼ੱਕ, ਪਹਿਲਾ {serial}: ਜਵਾਬ ਦਿਓ {where}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} ਵੱਖ ਰੱਖੇ</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} ਸ਼ੱਕੀ ਬੈਗ ਰੋਕੇ: QA ਜਾਂ ਲੀਡ ਫੈਸਲਾ ਕਰੇ: {where}</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} ਜਾਂਚ ਵਿੱਚ ਫੇਲ੍ਹ: ਠੀਕ ਕਰੋ, ਫਿਰ ਜਾਂਚੋ: {where}</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{minutes} ਮਿੰਟ ਵਿੱਚ {what}</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">ਹੁਣ {what}</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: ਤਾਰੀਖ ਤੇ ਸਮਾਂ ਦੇਖੋ, ਫਿਰ ਦਸਤਖਤ {where}</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} ਇਸ 'ਤੇ ਦਸਤਖਤ ਨਹੀਂ ਕਰ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} ਨੇ ਦਸਤਖਤ ਨਹੀਂ ਕੀਤੇ: {act}, PIN ਜਾਂ ਬੈਜ ਚਾਹੀਦਾ</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} ਇੱਥੇ ਦਸਤਖਤ ਨਹੀਂ ਕਰ ਸਕਦਾ</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: ਦੋ ਜਣੇ ਲੇਬਲ ਮਨਜ਼ੂਰ ਕਰਨ {where}</translation>
    </message>
</context>
</TS>
