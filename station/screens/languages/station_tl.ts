<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="tl_PH" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 PRODUKTO</translation>
    </message>
    <message>
        <source>2 LOTS</source>
        <translation type="unfinished">2 MGA LOT</translation>
    </message>
    <message>
        <source>3 CREW</source>
        <translation type="unfinished">3 TAUHAN</translation>
    </message>
    <message>
        <source>A code was scanned, but no field waits for one: open the page it is for</source>
        <translation type="unfinished">May na-scan na code pero walang naghihintay na field: buksan ang tamang pahina</translation>
    </message>
    <message>
        <source>ADD</source>
        <translation type="unfinished">DAGDAG</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">MGA ALARM</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation type="unfinished">BUMALIK</translation>
    </message>
    <message>
        <source>BAG AGAIN</source>
        <translation type="unfinished">ULITIN BAG</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">ILAGAY BAG</translation>
    </message>
    <message>
        <source>BEFORE</source>
        <translation type="unfinished">BAGO</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">BIN</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">Pinakamainam bago</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">TAWAG LEAD</translation>
    </message>
    <message>
        <source>CHANGE</source>
        <translation type="unfinished">PAGPAPALIT</translation>
    </message>
    <message>
        <source>CHANGE, CLOCK</source>
        <translation type="unfinished">PAGPAPALIT, ORASAN</translation>
    </message>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished">MGA TSEK</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">BURAHIN</translation>
    </message>
    <message>
        <source>CO2</source>
        <translation type="unfinished">CO2</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">NABILANG</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">HINIWA NOONG</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">MAGPASYA</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">HUWAG PUMIRMA</translation>
    </message>
    <message>
        <source>DRAW</source>
        <translation type="unfinished">BUMUNOT</translation>
    </message>
    <message>
        <source>DUMP</source>
        <translation type="unfinished">ITAPON</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">ALISIN LAHAT</translation>
    </message>
    <message>
        <source>END</source>
        <translation type="unfinished">TAPUSIN</translation>
    </message>
    <message>
        <source>END RUN</source>
        <translation type="unfinished">TAPUSIN RUN</translation>
    </message>
    <message>
        <source>ENTER</source>
        <translation type="unfinished">IPASOK</translation>
    </message>
    <message>
        <source>FILTER</source>
        <translation type="unfinished">SALAIN</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">UNANG LABEL</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">ITIGIL</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">ITULOY</translation>
    </message>
    <message>
        <source>Good bags: {count} of {order}, set aside: {aside}</source>
        <translation type="unfinished">Mabubuting bag: {count} sa {order}, inihiwalay: {aside}</translation>
    </message>
    <message>
        <source>Good bags: {count}, set aside: {aside}</source>
        <translation type="unfinished">Mabubuting bag: {count}, inihiwalay: {aside}</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation type="unfinished">I-HOLD</translation>
    </message>
    <message>
        <source>HOLD IT</source>
        <translation type="unfinished">I-HOLD ITO</translation>
    </message>
    <message>
        <source>HOLD STAYS</source>
        <translation type="unfinished">HOLD PA RIN</translation>
    </message>
    <message>
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">NAKITA KO NA</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation type="unfinished">ITAGO</translation>
    </message>
    <message>
        <source>KEEP CHART</source>
        <translation type="unfinished">ITAGO ANG CHART</translation>
    </message>
    <message>
        <source>LABELS</source>
        <translation type="unfinished">MGA LABEL</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">WIKA</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">LEAD</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">ALISIN BAG</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">LINYA</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">ULITIN KARGA</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">HANAPIN</translation>
    </message>
    <message>
        <source>LOT</source>
        <translation type="unfinished">LOT</translation>
    </message>
    <message>
        <source>LOTS</source>
        <translation type="unfinished">MGA LOT</translation>
    </message>
    <message>
        <source>Labels in doubt</source>
        <translation type="unfinished">Mga label na hindi tiyak</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">Wika ng screen ng packer</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished">Lead</translation>
    </message>
    <message>
        <source>Lead is wanted at this line</source>
        <translation type="unfinished">Kailangan ang lead sa linyang ito</translation>
    </message>
    <message>
        <source>Lead {who}, on the scale {person}</source>
        <translation type="unfinished">Lead {who}, nasa timbangan {person}</translation>
    </message>
    <message>
        <source>MANAGER</source>
        <translation type="unfinished">MANAGER</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">IBA PA</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Average na net {mass}</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">BAGONG HOLD</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">WALANG BASA</translation>
    </message>
    <message>
        <source>NUMBERS</source>
        <translation type="unfinished">MGA NUMERO</translation>
    </message>
    <message>
        <source>Next: {what}</source>
        <translation type="unfinished">Susunod: {what}</translation>
    </message>
    <message>
        <source>No alarm stands. What needs nobody is kept as an event.</source>
        <translation type="unfinished">Walang alarm. Ang hindi kailangang asikasuhin ay itinatala bilang pangyayari.</translation>
    </message>
    <message>
        <source>No good bag yet</source>
        <translation type="unfinished">Wala pang mabuting bag</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">Walang bukas na run</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">SA PACKER</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation type="unfinished">BUKSAN</translation>
    </message>
    <message>
        <source>OPEN ONLY</source>
        <translation type="unfinished">BUKAS LANG</translation>
    </message>
    <message>
        <source>ORDER DONE</source>
        <translation type="unfinished">TAPOS NA</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished">Nasa timbangan</translation>
    </message>
    <message>
        <source>Order: open</source>
        <translation type="unfinished">Order: bukas</translation>
    </message>
    <message>
        <source>Order: {count} bags</source>
        <translation type="unfinished">Order: {count} bag</translation>
    </message>
    <message>
        <source>PACKED ON</source>
        <translation type="unfinished">INIMPAKE NOONG</translation>
    </message>
    <message>
        <source>PACKER</source>
        <translation type="unfinished">PACKER</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation type="unfinished">PAPEL</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">I-PRINT</translation>
    </message>
    <message>
        <source>QA</source>
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">KALIDAD</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">TANGGAPIN</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">ITALA</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">ITALA ANG MUNGKAHI</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">MAG-ENSAYO</translation>
    </message>
    <message>
        <source>RELEASE</source>
        <translation type="unfinished">I-RELEASE</translation>
    </message>
    <message>
        <source>RELEASE ALL</source>
        <translation type="unfinished">I-RELEASE LAHAT</translation>
    </message>
    <message>
        <source>RELEASE BEFORE STEP</source>
        <translation type="unfinished">I-RELEASE ANG NAUNA</translation>
    </message>
    <message>
        <source>ROLL</source>
        <translation type="unfinished">ROLYO</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">RUN</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">RUN, tapos {door} ({key})</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Tinanggihan. {why}</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Bukas ang run</translation>
    </message>
    <message>
        <source>SCALE</source>
        <translation type="unfinished">TIMBANGAN</translation>
    </message>
    <message>
        <source>SCAN</source>
        <translation type="unfinished">SCAN</translation>
    </message>
    <message>
        <source>SEAL</source>
        <translation type="unfinished">I-SEAL</translation>
    </message>
    <message>
        <source>SERVICE</source>
        <translation type="unfinished">SERBISYO</translation>
    </message>
    <message>
        <source>SET ASIDE</source>
        <translation type="unfinished">IHIWALAY</translation>
    </message>
    <message>
        <source>SHELVE</source>
        <translation type="unfinished">IPAGPALIBAN</translation>
    </message>
    <message>
        <source>SHIPPING</source>
        <translation type="unfinished">PAGPAPADALA</translation>
    </message>
    <message>
        <source>SIGN</source>
        <translation type="unfinished">PIRMA</translation>
    </message>
    <message>
        <source>SIGN DAY</source>
        <translation type="unfinished">PIRMAHAN ANG ARAW</translation>
    </message>
    <message>
        <source>START CHECK</source>
        <translation type="unfinished">SIMULAN ANG TSEK</translation>
    </message>
    <message>
        <source>START OVER</source>
        <translation type="unfinished">MAGSIMULA MULI</translation>
    </message>
    <message>
        <source>START RUN</source>
        <translation type="unfinished">BUKSAN RUN</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished">HINTO</translation>
    </message>
    <message>
        <source>Sign as the second person to {act}</source>
        <translation type="unfinished">Pumirma bilang pangalawa para {act}</translation>
    </message>
    <message>
        <source>Sign to {act}</source>
        <translation type="unfinished">Pumirma para {act}</translation>
    </message>
    <message>
        <source>Start a run</source>
        <translation type="unfinished">Magbukas ng run</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, nominal</translation>
    </message>
    <message>
        <source>TAKE OUT</source>
        <translation type="unfinished">BAWAS</translation>
    </message>
    <message>
        <source>TAKE READING</source>
        <translation type="unfinished">KUNIN ANG BASA</translation>
    </message>
    <message>
        <source>TARE</source>
        <translation type="unfinished">TARA</translation>
    </message>
    <message>
        <source>TRACE</source>
        <translation type="unfinished">TRACE</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">PAGSASANAY</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">Ang basa mismo ng timbangan ang masusunod. Kung magkaiba ang screen at timbangan, timbangan ang tama: huminto at tawagin ang lead.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Pindutin muna ang pangalan mo.</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">Gamitin bago</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">HINTAY</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">TIMBANGIN ANG ISA</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">PUNASAN</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">KALKULAHIN</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">Bakit inihiwalay?</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">may bag sa pan: tapusin at alisin, saka tapusin ang run</translation>
    </message>
    <message>
        <source>a check failed</source>
        <translation type="unfinished">may bumagsak na tsek</translation>
    </message>
    <message>
        <source>a check goes on at the scale: put no bag on it</source>
        <translation type="unfinished">sinusuri ang timbangan: huwag maglagay ng bag</translation>
    </message>
    <message>
        <source>a check is due soon</source>
        <translation type="unfinished">malapit na ang tsek</translation>
    </message>
    <message>
        <source>a check is overdue</source>
        <translation type="unfinished">huli na ang tsek</translation>
    </message>
    <message>
        <source>a cover is open: close it</source>
        <translation type="unfinished">bukas ang takip: isara</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">bukas ang pinto: isara</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">may naka-hold na lot sa linya</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">hindi tugma ang label</translation>
    </message>
    <message>
        <source>a lot ends soon</source>
        <translation type="unfinished">malapit nang maubos ang lot</translation>
    </message>
    <message>
        <source>a lot should be empty</source>
        <translation type="unfinished">dapat ubos na ang lot</translation>
    </message>
    <message>
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">nagsisimula ang bagong rolyo sa unang label</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">pahinga</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">may bukas na run: tapusin bago magbukas ng iba</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">matapos huminto</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">at {count} pa sa ibaba</translation>
    </message>
    <message>
        <source>approve a label</source>
        <translation type="unfinished">aprubahan ang label</translation>
    </message>
    <message>
        <source>approve a product version</source>
        <translation type="unfinished">aprubahan ang bersyon ng produkto</translation>
    </message>
    <message>
        <source>approve or refuse a target</source>
        <translation type="unfinished">aprubahan o tanggihan ang target</translation>
    </message>
    <message>
        <source>as people.toml says</source>
        <translation type="unfinished">ayon sa people.toml</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">tinanong ang linya …</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">random</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">bag</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">walang tare study ang bag {code}, film lot {lot}: gumawa: {where}</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">bag</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">break</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">bukas ang seal</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">tumawag ng tao</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">palitan o ipaliwanag ang rolyo</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">tsek ng {what}</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">suriin ang timbangan pagkatapos ng {what}: {where}</translation>
    </message>
    <message>
        <source>checking …</source>
        <translation type="unfinished">sinusuri …</translation>
    </message>
    <message>
        <source>checks made</source>
        <translation type="unfinished">mga nagawang tsek</translation>
    </message>
    <message>
        <source>choose a lot of {component}</source>
        <translation type="unfinished">pumili ng lot ng {component}</translation>
    </message>
    <message>
        <source>choose a product</source>
        <translation type="unfinished">pumili ng produkto</translation>
    </message>
    <message>
        <source>choose the product first, then its lots</source>
        <translation type="unfinished">piliin muna ang produkto, saka ang mga lot</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation type="unfinished">paglilinis</translation>
    </message>
    <message>
        <source>clear a scan that differed</source>
        <translation type="unfinished">ayusin ang hindi tugmang scan</translation>
    </message>
    <message>
        <source>clear the line and sign for it: {where}</source>
        <translation type="unfinished">linisin ang linya at pumirma: {where}</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">sarado</translation>
    </message>
    <message>
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">ihambing ang label, saka ayusin ang scan</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">kumpirmahin ang petsa at oras</translation>
    </message>
    <message>
        <source>cooler temperature</source>
        <translation type="unfinished">temperatura ng cooler</translation>
    </message>
    <message>
        <source>correct what was recorded</source>
        <translation type="unfinished">itama ang naitala</translation>
    </message>
    <message>
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">bilangin ang mga bag ng nakaraang run: {where}</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">hindi tiyak ang petsa o oras</translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished">araw</translation>
    </message>
    <message>
        <source>day after</source>
        <translation type="unfinished">kasunod na araw</translation>
    </message>
    <message>
        <source>day before</source>
        <translation type="unfinished">naunang araw</translation>
    </message>
    <message>
        <source>decide about suspect bags</source>
        <translation type="unfinished">magpasya sa kahina-hinalang bag</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">magpasya para sa isang bag</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">tapos</translation>
    </message>
    <message>
        <source>end a run</source>
        <translation type="unfinished">tapusin ang run</translation>
    </message>
    <message>
        <source>end the run</source>
        <translation type="unfinished">tapusin ang run</translation>
    </message>
    <message>
        <source>enter this</source>
        <translation type="unfinished">ipasok ito</translation>
    </message>
    <message>
        <source>expired – take it off the line</source>
        <translation type="unfinished">expired – alisin sa linya</translation>
    </message>
    <message>
        <source>fetch the next lot</source>
        <translation type="unfinished">kunin ang susunod na lot</translation>
    </message>
    <message>
        <source>fetch the next roll</source>
        <translation type="unfinished">kunin ang susunod na rolyo</translation>
    </message>
    <message>
        <source>fill a case or close a pallet</source>
        <translation type="unfinished">punuin ang kahon o isara ang pallet</translation>
    </message>
    <message>
        <source>fill a little more, look at NUMBERS</source>
        <translation type="unfinished">dagdagan nang kaunti, tingnan ang MGA NUMERO</translation>
    </message>
    <message>
        <source>film or labels</source>
        <translation type="unfinished">film o label</translation>
    </message>
    <message>
        <source>first label</source>
        <translation type="unfinished">unang label</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">baba, target, taas</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">banyagang bagay</translation>
    </message>
    <message>
        <source>go on after a pause</source>
        <translation type="unfinished">ituloy matapos ang pahinga</translation>
    </message>
    <message>
        <source>go on after a stop</source>
        <translation type="unfinished">ituloy matapos huminto</translation>
    </message>
    <message>
        <source>gross weight</source>
        <translation type="unfinished">gross na timbang</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">naka-hold – tawagin ang QA</translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished">i-hold</translation>
    </message>
    <message>
        <source>hold down</source>
        <translation type="unfinished">idiin</translation>
    </message>
    <message>
        <source>hold, no record</source>
        <translation type="unfinished">hold, walang tala</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">nasa bag {mass}</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">walang sagot: naka-on ba, nakakabit ba ang kable?</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">hindi lumabas sa loob ng {seconds} s: tingnan kung lalabas</translation>
    </message>
    <message>
        <source>its run ended before the printer said that it came out</source>
        <translation type="unfinished">nagsara ang run bago sinabi ng printer na lumabas ito</translation>
    </message>
    <message>
        <source>its use-by {day} is past: end the run</source>
        <translation type="unfinished">lampas na ang use-by {day}: tapusin ang run</translation>
    </message>
    <message>
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">itago, ibalik o linisin ang tala</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">walang bisa ang label</translation>
    </message>
    <message>
        <source>label of the roll</source>
        <translation type="unfinished">label ng rolyo</translation>
    </message>
    <message>
        <source>label on bag</source>
        <translation type="unfinished">label sa bag</translation>
    </message>
    <message>
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">hindi tiyak ang label {serial}: {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">hindi pa lumalabas ang label {serial}: tingnan ang printer</translation>
    </message>
    <message>
        <source>label {serial} may still come out: cancel it at the printer, or wait</source>
        <translation type="unfinished">maaaring lumabas pa ang label {serial}: kanselahin sa printer o maghintay</translation>
    </message>
    <message>
        <source>labels are jammed: clear them</source>
        <translation type="unfinished">naipit ang mga label: alisin</translation>
    </message>
    <message>
        <source>labels are not taken away: take them away</source>
        <translation type="unfinished">hindi kinuha ang mga label: kunin</translation>
    </message>
    <message>
        <source>last label</source>
        <translation type="unfinished">huling label</translation>
    </message>
    <message>
        <source>last {what}</source>
        <translation type="unfinished">huli {what}</translation>
    </message>
    <message>
        <source>lead</source>
        <translation type="unfinished">lead</translation>
    </message>
    <message>
        <source>lead, on the scale</source>
        <translation type="unfinished">lead, nasa timbangan</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">umalis sa full screen</translation>
    </message>
    <message>
        <source>look at date and time, then sign</source>
        <translation type="unfinished">tingnan ang petsa at oras, saka pumirma</translation>
    </message>
    <message>
        <source>look at the bag and its label, then GO ON</source>
        <translation type="unfinished">tingnan ang bag at label, saka ITULOY</translation>
    </message>
    <message>
        <source>look at the printer</source>
        <translation type="unfinished">tingnan ang printer</translation>
    </message>
    <message>
        <source>look at the scale's cable and power</source>
        <translation type="unfinished">tingnan ang kable at kuryente ng timbangan</translation>
    </message>
    <message>
        <source>look whether a label came out</source>
        <translation type="unfinished">tingnan kung may lumabas na label</translation>
    </message>
    <message>
        <source>look whether the label is whole</source>
        <translation type="unfinished">tingnan kung buo ang label</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">naka-hold ang lot {lot}: alisin at palitan: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">hindi kilala ang lot {lot}: tanggapin muna</translation>
    </message>
    <message>
        <source>lot {lot} is on the line and on no label: take it off: {where}</source>
        <translation type="unfinished">nasa linya ang lot {lot} pero wala sa label: alisin: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is {component}, which {product} does not contain: allowed are {allowed}</source>
        <translation type="unfinished">ang lot {lot} ay {component}, wala sa {product}: pinapayagan ang {allowed}</translation>
    </message>
    <message>
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lot {lot}: {why}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">makina</translation>
    </message>
    <message>
        <source>make the check</source>
        <translation type="unfinished">gawin ang tsek</translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished">manager</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">metal detector</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">ilipat ang lot sa linya</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">wala pang PIN o badge</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">hindi produkto ang mga bag na ito</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">walang rolyo ng label: mag-scan ng isa sa {where}</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">ubos na ang label: magkarga ng rolyo</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">walang produkto</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished">walang basa</translation>
    </message>
    <message>
        <source>no reading with a bag on the pan</source>
        <translation type="unfinished">walang basa habang may bag sa pan</translation>
    </message>
    <message>
        <source>no run is open</source>
        <translation type="unfinished">walang bukas na run</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">walang bukas na run: ang lead ang magbubukas</translation>
    </message>
    <message>
        <source>nobody signed</source>
        <translation type="unfinished">walang pumirma</translation>
    </message>
    <message>
        <source>nobody who may sign has a PIN or badge: station people pin</source>
        <translation type="unfinished">walang PIN o badge ang sinumang puwedeng pumirma: station people pin</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">walang label: {reason}</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">hindi pa nasuri</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">sa {count} bag</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">nasa timbangan: {who}</translation>
    </message>
    <message>
        <source>open order</source>
        <translation type="unfinished">bukas na order</translation>
    </message>
    <message>
        <source>or scan a badge</source>
        <translation type="unfinished">o mag-scan ng badge</translation>
    </message>
    <message>
        <source>or the day</source>
        <translation type="unfinished">o ang araw</translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished">iba pa</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">sobra sa kapasidad: alisin ang karga</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">packer</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">iplano ang tsek</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">i-print muli ang label</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">temperatura ng produkto</translation>
    </message>
    <message>
        <source>production day</source>
        <translation type="unfinished">araw ng produksyon</translation>
    </message>
    <message>
        <source>propose a target</source>
        <translation type="unfinished">magmungkahi ng target</translation>
    </message>
    <message>
        <source>put it right, then check again</source>
        <translation type="unfinished">ayusin, saka suriin muli</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">tumanggap ng delivery</translation>
    </message>
    <message>
        <source>record a check of quality</source>
        <translation type="unfinished">itala ang tsek ng kalidad</translation>
    </message>
    <message>
        <source>record a good check of the scale</source>
        <translation type="unfinished">itala ang pasadong tsek ng timbangan</translation>
    </message>
    <message>
        <source>record a study of empty bags</source>
        <translation type="unfinished">itala ang pag-aaral ng walang lamang bag</translation>
    </message>
    <message>
        <source>record an empty bag that fits</source>
        <translation type="unfinished">itala ang tugmang walang lamang bag</translation>
    </message>
    <message>
        <source>record that a check failed</source>
        <translation type="unfinished">itala ang bumagsak na tsek</translation>
    </message>
    <message>
        <source>refuse a label</source>
        <translation type="unfinished">tanggihan ang label</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">i-release ang naka-hold</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">suriin at pirmahan ang araw</translation>
    </message>
    <message>
        <source>ribbon or ink is missing: put it in</source>
        <translation type="unfinished">walang ribbon o tinta: ilagay</translation>
    </message>
    <message>
        <source>ribbon or ink is used up: change it</source>
        <translation type="unfinished">ubos na ang ribbon o tinta: palitan</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation type="unfinished">temperatura ng silid</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">mga patakaran</translation>
    </message>
    <message>
        <source>run of {product} ended</source>
        <translation type="unfinished">tapos na ang run ng {product}</translation>
    </message>
    <message>
        <source>run of {product} open, blend lot {lot}</source>
        <translation type="unfinished">bukas na ang run ng {product}, blend lot {lot}</translation>
    </message>
    <message>
        <source>say that an alarm is seen</source>
        <translation type="unfinished">sabihing nakita ang alarma</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">sabihin ang nangyari sa label</translation>
    </message>
    <message>
        <source>say which lot is on the line</source>
        <translation type="unfinished">sabihin kung anong lot ang nasa linya</translation>
    </message>
    <message>
        <source>say who is on the scale</source>
        <translation type="unfinished">sabihin kung sino ang nasa timbangan</translation>
    </message>
    <message>
        <source>say who leads</source>
        <translation type="unfinished">sabihin kung sino ang lead</translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished">timbangan</translation>
    </message>
    <message>
        <source>scale check</source>
        <translation type="unfinished">tsek ng timbangan</translation>
    </message>
    <message>
        <source>scale check at the end of the run</source>
        <translation type="unfinished">tsek ng timbangan sa dulo ng run</translation>
    </message>
    <message>
        <source>scale line</source>
        <translation type="unfinished">linya ng timbangan</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">timbangan: {mass}, ang basa ng timbangan ang masusunod</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">mag-scan ng label</translation>
    </message>
    <message>
        <source>scan of a label</source>
        <translation type="unfinished">scan ng label</translation>
    </message>
    <message>
        <source>scan or type a lot code, then Enter</source>
        <translation type="unfinished">i-scan o i-type ang lot code, saka Enter</translation>
    </message>
    <message>
        <source>scan the last label</source>
        <translation type="unfinished">i-scan ang huling label</translation>
    </message>
    <message>
        <source>scan the {what}: {where}</source>
        <translation type="unfinished">i-scan ang {what}: {where}</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">seal</translation>
    </message>
    <message>
        <source>service</source>
        <translation type="unfinished">serbisyo</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">inihiwalay</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">itakda ang tao, PIN at badge</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">inihihiwalay: {reason}</translation>
    </message>
    <message>
        <source>shelve an alarm</source>
        <translation type="unfinished">ipagpaliban ang alarma</translation>
    </message>
    <message>
        <source>shelved until {time}</source>
        <translation type="unfinished">ipinagpaliban hanggang {time}</translation>
    </message>
    <message>
        <source>ship</source>
        <translation type="unfinished">magpadala</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">pirmahan ang palit ng run</translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation type="unfinished">mula {time}</translation>
    </message>
    <message>
        <source>since {time}, seen by {who}</source>
        <translation type="unfinished">mula {time}, nakita ni {who}</translation>
    </message>
    <message>
        <source>software</source>
        <translation type="unfinished">software</translation>
    </message>
    <message>
        <source>start a run</source>
        <translation type="unfinished">magbukas ng run</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">ihinto ang linya</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">nakaimbak na bag</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">alisin: {where}</translation>
    </message>
    <message>
        <source>take over changed settings</source>
        <translation type="unfinished">tanggapin ang binagong settings</translation>
    </message>
    <message>
        <source>take the lot off and load another</source>
        <translation type="unfinished">alisin ang lot at palitan</translation>
    </message>
    <message>
        <source>tare</source>
        <translation type="unfinished">tara</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">target</translation>
    </message>
    <message>
        <source>tell maintenance</source>
        <translation type="unfinished">sabihan ang maintenance</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation type="unfinished">ikasampu</translation>
    </message>
    <message>
        <source>the centre is not reached</source>
        <translation type="unfinished">hindi maabot ang sentro</translation>
    </message>
    <message>
        <source>the centre stops {what} {code} ({reason}): {end}</source>
        <translation type="unfinished">pinahinto ng sentro ang {what} {code} ({reason}): {end}</translation>
    </message>
    <message>
        <source>the check of the scale is overdue: {where}</source>
        <translation type="unfinished">huli na ang tsek ng timbangan: {where}</translation>
    </message>
    <message>
        <source>the check of {what} is overdue: {where}</source>
        <translation type="unfinished">huli na ang tsek ng {what}: {where}</translation>
    </message>
    <message>
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">puno ang disk: magbakante, saka mag-print muli</translation>
    </message>
    <message>
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">hindi tugma ang walang lamang bag na {mass} sa {what}: magtimbang ng iba: {where}</translation>
    </message>
    <message>
        <source>the empty pan does not show zero</source>
        <translation type="unfinished">hindi zero ang walang lamang pan</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">{mass} ang basa ng walang lamang pan: punasan, tapos i-zero</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">nawala ang folder ng label: gawin muli ang {folder}</translation>
    </message>
    <message>
        <source>the label roll ends soon</source>
        <translation type="unfinished">malapit nang maubos ang rolyo</translation>
    </message>
    <message>
        <source>the label was refused ({why}): end the run, or approve it at {where}</source>
        <translation type="unfinished">tinanggihan ang label ({why}): tapusin ang run o aprubahan sa {where}</translation>
    </message>
    <message>
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">nakahinto ang linya, {reason}: RUN, tapos PAGPAPALIT (F8) para ituloy</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">huminto ang linya</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">mas mababa sa nominal ang average</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">dapat walang laman ang pan bago ang susunod na bag</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">sumuko ang printer</translation>
    </message>
    <message>
        <source>the printer has stopped: see its panel</source>
        <translation type="unfinished">huminto ang printer: tingnan ang panel nito</translation>
    </message>
    <message>
        <source>the printer is offline: switch it on, check its cable</source>
        <translation type="unfinished">offline ang printer: buksan, tingnan ang kable</translation>
    </message>
    <message>
        <source>the printer is paused: press its button to go on</source>
        <translation type="unfinished">naka-pause ang printer: pindutin ang button nito</translation>
    </message>
    <message>
        <source>the printer is switched off</source>
        <translation type="unfinished">naka-off ang printer</translation>
    </message>
    <message>
        <source>the printer needs somebody</source>
        <translation type="unfinished">kailangan ng tao sa printer</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">ang printer: {why}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">hindi maabot ang printer: buksan, tingnan ang kable</translation>
    </message>
    <message>
        <source>the run begins with a check of the scale: {where}</source>
        <translation type="unfinished">nagsisimula ang run sa tsek ng timbangan: {where}</translation>
    </message>
    <message>
        <source>the run begins with a check of {what}: {where}</source>
        <translation type="unfinished">nagsisimula ang run sa tsek ng {what}: {where}</translation>
    </message>
    <message>
        <source>the run begins with a first-off</source>
        <translation type="unfinished">nagsisimula ang run sa unang label</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">bagsak ang timbangan sa tsek: ayusin, tapos suriin muli: {where}</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">walang sagot ang timbangan: tingnan ang kable at kuryente</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">net ang basa ng timbangan: alisin ang tara nito, ang station ang nagbabawas ng bag</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">naka-{unit} ang timbangan, {other} ang run: ibalik ang timbangan</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">huli na ang scan ng label: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">hindi tugma ang scan ng label {serial}: aayusin ng lead sa {where}</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">naiiwan ang station sa timbangan: alisin ang bag at maghintay</translation>
    </message>
    <message>
        <source>this PIN is not right</source>
        <translation type="unfinished">mali ang PIN</translation>
    </message>
    <message>
        <source>this PIN is not right: wait {time}</source>
        <translation type="unfinished">mali ang PIN: maghintay ng {time}</translation>
    </message>
    <message>
        <source>this badge is not right</source>
        <translation type="unfinished">mali ang badge</translation>
    </message>
    <message>
        <source>this badge is not right: wait {time}</source>
        <translation type="unfinished">mali ang badge: maghintay ng {time}</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">hindi naitala at walang label ang bag na ito: {why}</translation>
    </message>
    <message>
        <source>too many wrong PINs: wait {time}</source>
        <translation type="unfinished">sobrang daming maling PIN: maghintay ng {time}</translation>
    </message>
    <message>
        <source>too many wrong badges: wait {time}</source>
        <translation type="unfinished">sobrang daming maling badge: maghintay ng {time}</translation>
    </message>
    <message>
        <source>touch an alarm first</source>
        <translation type="unfinished">pindutin muna ang alarm</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">pindutin muna kung sino ka</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">taas</translation>
    </message>
    <message>
        <source>waiting for QA</source>
        <translation type="unfinished">naghihintay sa QA</translation>
    </message>
    <message>
        <source>waiting for the scale's first reading</source>
        <translation type="unfinished">hinihintay ang unang basa ng timbangan</translation>
    </message>
    <message>
        <source>warm or damaged</source>
        <translation type="unfinished">mainit o sira</translation>
    </message>
    <message>
        <source>wash record</source>
        <translation type="unfinished">tala ng paghuhugas</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">magtimbang ng walang lamang bag sa loob ng {count} bag</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">punasan ang pan, saka i-zero</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">gamitin ang screen na ito</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">maling timbang</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} bag</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} bag ang naka-hold matapos bumagsak sa tsek: QA ang magpapasya: {where}</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} bag na ang tapos: ang lead ang magsasara ng run</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} label ang hindi tiyak, una {serial}: sagutin sa {where}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} inihiwalay</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} kahina-hinalang bag ang naka-hold: QA o lead ang magpapasya: {where}</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">bagsak sa tsek ang {what}: ayusin, tapos suriin muli: {where}</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} sa loob ng {minutes} min</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} ngayon na</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: tingnan ang petsa at oras, tapos pumirma sa {where}</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">hindi puwedeng pirmahan ni {who}</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">hindi pumirma si {who}: para {act}, kailangan ng PIN o badge</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">hindi puwedeng pumirma rito si {who}</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: dalawang tao ang mag-aapruba ng label sa {where}</translation>
    </message>
</context>
</TS>
