<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="tl_PH" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>% of nominal</source>
        <translation type="unfinished">% ng nominal</translation>
    </message>
    <message>
        <source>% of the lot in bags</source>
        <translation type="unfinished">% ng lot sa bag</translation>
    </message>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 PRODUKTO</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation type="unfinished">1 bag</translation>
    </message>
    <message>
        <source>1 run was purged on {day}, export {folder}</source>
        <translation type="unfinished">1 run ang binura noong {day}, kopya {folder}</translation>
    </message>
    <message>
        <source>100 % together</source>
        <translation type="unfinished">100 % lahat</translation>
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
        <source>A copy of {sscc} comes.</source>
        <translation type="unfinished">May lalabas na kopya ng {sscc}.</translation>
    </message>
    <message>
        <source>A manager approves a proposal as a new version of the product.</source>
        <translation type="unfinished">Inaaprubahan ng manager ang mungkahi bilang bagong bersyon ng produkto.</translation>
    </message>
    <message>
        <source>A new scale: connect it, touch LOOK, then check it with the test weights.</source>
        <translation type="unfinished">Bagong timbangan: ikabit, pindutin ang TINGNAN, tapos suriin gamit ang mga test weight.</translation>
    </message>
    <message>
        <source>A scale that is to be asked needs its request above.</source>
        <translation type="unfinished">Kailangan ng timbangang tinatanong ang tanong sa itaas.</translation>
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
        <source>ALL</source>
        <translation type="unfinished">LAHAT</translation>
    </message>
    <message>
        <source>ALL DAYS</source>
        <translation type="unfinished">LAHAT NG ARAW</translation>
    </message>
    <message>
        <source>ALL WEIGHED</source>
        <translation type="unfinished">NATIMBANG LAHAT</translation>
    </message>
    <message>
        <source>APPLIED</source>
        <translation type="unfinished">NAKADIKIT</translation>
    </message>
    <message>
        <source>APPROVE</source>
        <translation type="unfinished">APRUBAHAN</translation>
    </message>
    <message>
        <source>ASKED</source>
        <translation type="unfinished">TINANONG</translation>
    </message>
    <message>
        <source>AT REST</source>
        <translation type="unfinished">NAKAHINTO</translation>
    </message>
    <message>
        <source>ATTEND</source>
        <translation type="unfinished">PANSININ</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation type="unfinished">Nagsusuma …</translation>
    </message>
    <message>
        <source>An open run keeps the dates it was opened with.</source>
        <translation type="unfinished">Pinapanatili ng bukas na run ang mga petsa nito.</translation>
    </message>
    <message>
        <source>Arrived at</source>
        <translation type="unfinished">Dumating sa</translation>
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
        <source>BAGS</source>
        <translation type="unfinished">MGA BAG</translation>
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
        <source>BLEND LOT</source>
        <translation type="unfinished">BLEND LOT</translation>
    </message>
    <message>
        <source>BLENDS</source>
        <translation type="unfinished">MGA BLEND</translation>
    </message>
    <message>
        <source>BLOCKED {count}</source>
        <translation type="unfinished">NAHARANG {count}</translation>
    </message>
    <message>
        <source>BY DAY</source>
        <translation type="unfinished">AYON SA ARAW</translation>
    </message>
    <message>
        <source>BY HOUR</source>
        <translation type="unfinished">AYON SA ORAS</translation>
    </message>
    <message>
        <source>BY POSITION</source>
        <translation type="unfinished">AYON SA PUWESTO</translation>
    </message>
    <message>
        <source>BY PRODUCT</source>
        <translation type="unfinished">AYON SA PRODUKTO</translation>
    </message>
    <message>
        <source>Bag {serial} and {count} around it</source>
        <translation type="unfinished">Bag {serial} at {count} sa paligid</translation>
    </message>
    <message>
        <source>Bag {serial} was not set aside: LOOK UP shows it.</source>
        <translation type="unfinished">Hindi inihiwalay ang bag {serial}: nasa HANAPIN ito.</translation>
    </message>
    <message>
        <source>Bags since the last good check of the scale before are covered by no check of it any more: QA decides about them.</source>
        <translation type="unfinished">Ang mga bag mula sa huling mabuting tsek ng dating timbangan ay wala nang saklaw: QA ang magpapasya.</translation>
    </message>
    <message>
        <source>Below T1</source>
        <translation type="unfinished">Mababa sa T1</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">Pinakamainam bago</translation>
    </message>
    <message>
        <source>Best before {day}</source>
        <translation type="unfinished">Pinakamainam bago {day}</translation>
    </message>
    <message>
        <source>By {what}</source>
        <translation type="unfinished">Ayon sa {what}</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">TAWAGIN LEAD</translation>
    </message>
    <message>
        <source>CAME BACK</source>
        <translation type="unfinished">BUMALIK</translation>
    </message>
    <message>
        <source>CASE</source>
        <translation type="unfinished">KAHON</translation>
    </message>
    <message>
        <source>CASES</source>
        <translation type="unfinished">MGA KAHON</translation>
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
        <source>CHECK</source>
        <translation type="unfinished">TSEK</translation>
    </message>
    <message>
        <source>CHECK IT</source>
        <translation type="unfinished">SURIIN ITO</translation>
    </message>
    <message>
        <source>CHECK THE SCALE</source>
        <translation type="unfinished">SURIIN ANG TIMBANGAN</translation>
    </message>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished">MGA TSEK</translation>
    </message>
    <message>
        <source>CHECKS (F4) settles it.</source>
        <translation type="unfinished">Sa MGA TSEK (F4) inaayos.</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">BURAHIN</translation>
    </message>
    <message>
        <source>CLEAR LINE</source>
        <translation type="unfinished">LINISIN</translation>
    </message>
    <message>
        <source>CLEAR TARE</source>
        <translation type="unfinished">ALISIN ANG TARA</translation>
    </message>
    <message>
        <source>CLOCK</source>
        <translation type="unfinished">ORASAN</translation>
    </message>
    <message>
        <source>CLOSE PALLET</source>
        <translation type="unfinished">ISARA PALLET</translation>
    </message>
    <message>
        <source>COOLER TEMPERATURE</source>
        <translation type="unfinished">TEMPERATURA NG COOLER</translation>
    </message>
    <message>
        <source>COUNT</source>
        <translation type="unfinished">BILANG</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">NABILANG</translation>
    </message>
    <message>
        <source>CUSTOMERS</source>
        <translation type="unfinished">MGA CUSTOMER</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">HINIWA NOONG</translation>
    </message>
    <message>
        <source>Came</source>
        <translation type="unfinished">Dumating</translation>
    </message>
    <message>
        <source>Case {sscc} is filled; its label comes.</source>
        <translation type="unfinished">Puno na ang kahon {sscc}; lalabas ang label.</translation>
    </message>
    <message>
        <source>Checked {stage}. Bags wait meanwhile.</source>
        <translation type="unfinished">Tsek: {stage}. Naghihintay ang mga bag.</translation>
    </message>
    <message>
        <source>Choose cells, then say what they are: VALUE and, where they are there, UNIT, FLAG, CHECK. Type the digits of the scale's display, its unit, and what else is true now.</source>
        <translation type="unfinished">Pumili ng mga cell, tapos sabihin kung ano: HALAGA at, kung mayroon, YUNIT, FLAG, TSEK. I-type ang digit ng timbangan, yunit, at iba pang totoo ngayon.</translation>
    </message>
    <message>
        <source>Choose the cells first: touch them, or use the arrow keys.</source>
        <translation type="unfinished">Piliin muna ang mga cell: pindutin, o gamitin ang arrow key.</translation>
    </message>
    <message>
        <source>Commands of level 2</source>
        <translation type="unfinished">Mga utos ng antas 2</translation>
    </message>
    <message>
        <source>Correct the decision about {bags}?</source>
        <translation type="unfinished">Itama ang pasya sa {bags}?</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">MAGPASYA</translation>
    </message>
    <message>
        <source>DESTROYED</source>
        <translation type="unfinished">SINIRA</translation>
    </message>
    <message>
        <source>DIAGNOSE</source>
        <translation type="unfinished">SURIIN</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">HUWAG PUMIRMA</translation>
    </message>
    <message>
        <source>DOES NOT SUIT</source>
        <translation type="unfinished">HINDI BAGAY</translation>
    </message>
    <message>
        <source>DOUBT</source>
        <translation type="unfinished">DUDA</translation>
    </message>
    <message>
        <source>DOWNGRADED</source>
        <translation type="unfinished">IBINABA</translation>
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
        <source>DUMPED</source>
        <translation type="unfinished">ITINAPON</translation>
    </message>
    <message>
        <source>Decided: {decision}.</source>
        <translation type="unfinished">Napagpasyahan: {decision}.</translation>
    </message>
    <message>
        <source>Disk</source>
        <translation type="unfinished">Disk</translation>
    </message>
    <message>
        <source>Due at {time}.</source>
        <translation type="unfinished">Dapat sa {time}.</translation>
    </message>
    <message>
        <source>EMPTY</source>
        <translation type="unfinished">WALANG LAMAN</translation>
    </message>
    <message>
        <source>EMPTY BAG</source>
        <translation type="unfinished">BAG NA WALANG LAMAN</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">ALISIN LAHAT</translation>
    </message>
    <message>
        <source>EMPTY THE PAN</source>
        <translation type="unfinished">ALISIN ANG NASA PAN</translation>
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
        <source>EVIDENCE</source>
        <translation type="unfinished">EBIDENSIYA</translation>
    </message>
    <message>
        <source>Everything the scale sends goes into {file}</source>
        <translation type="unfinished">Lahat ng ipinapadala ng timbangan ay sa {file}</translation>
    </message>
    <message>
        <source>FAILED</source>
        <translation type="unfinished">BAGSAK</translation>
    </message>
    <message>
        <source>FAILED: check again</source>
        <translation type="unfinished">BAGSAK: suriin muli</translation>
    </message>
    <message>
        <source>FAILING</source>
        <translation type="unfinished">BAGSAK</translation>
    </message>
    <message>
        <source>FAILS</source>
        <translation type="unfinished">BAGSAK</translation>
    </message>
    <message>
        <source>FILL CASE</source>
        <translation type="unfinished">PUNUIN KAHON</translation>
    </message>
    <message>
        <source>FILTER</source>
        <translation type="unfinished">SALAIN</translation>
    </message>
    <message>
        <source>FINISHING</source>
        <translation type="unfinished">PAUBOS NA</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">UNANG LABEL</translation>
    </message>
    <message>
        <source>FLAG</source>
        <translation type="unfinished">FLAG</translation>
    </message>
    <message>
        <source>Fri {number}</source>
        <translation type="unfinished">Biy {number}</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished">Biyernes</translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished">Mula kanino</translation>
    </message>
    <message>
        <source>From the recording {file}: TAKE a line.</source>
        <translation type="unfinished">Mula sa rekording {file}: KUMUHA ng linya.</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">ITIGIL</translation>
    </message>
    <message>
        <source>GIVEN AWAY</source>
        <translation type="unfinished">SOBRANG BIGAY</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">ITULOY</translation>
    </message>
    <message>
        <source>GOOD</source>
        <translation type="unfinished">PASADO</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation type="unfinished">Sobrang bigay</translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation type="unfinished">Itinigil.</translation>
    </message>
    <message>
        <source>Given up: nothing is recorded.</source>
        <translation type="unfinished">Itinigil: walang naitala.</translation>
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
        <source>HELD</source>
        <translation type="unfinished">NAKA-HOLD</translation>
    </message>
    <message>
        <source>HISTORY</source>
        <translation type="unfinished">KASAYSAYAN</translation>
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
        <source>HOLD STILL</source>
        <translation type="unfinished">IHINTO</translation>
    </message>
    <message>
        <source>HOLDS</source>
        <translation type="unfinished">MGA HOLD</translation>
    </message>
    <message>
        <source>HOUSE</source>
        <translation type="unfinished">BODEGA</translation>
    </message>
    <message>
        <source>Held: {what}</source>
        <translation type="unfinished">Naka-hold: {what}</translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished">Narito</translation>
    </message>
    <message>
        <source>How many bags have which net. Touch a bar to read it.</source>
        <translation type="unfinished">Ilang bag ang may aling net. Pindutin ang bar para mabasa.</translation>
    </message>
    <message>
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">NAKITA KO NA</translation>
    </message>
    <message>
        <source>I see it there</source>
        <translation type="unfinished">nakikita ko roon</translation>
    </message>
    <message>
        <source>IN DOUBT</source>
        <translation type="unfinished">MAY DUDA</translation>
    </message>
    <message>
        <source>IN USE.</source>
        <translation type="unfinished">GAMIT NA.</translation>
    </message>
    <message>
        <source>INBOX</source>
        <translation type="unfinished">NAKABINBIN</translation>
    </message>
    <message>
        <source>INPUT LOT</source>
        <translation type="unfinished">INPUT LOT</translation>
    </message>
    <message>
        <source>INPUT LOTS</source>
        <translation type="unfinished">MGA INPUT LOT</translation>
    </message>
    <message>
        <source>INSPECTOR</source>
        <translation type="unfinished">INSPEKTOR</translation>
    </message>
    <message>
        <source>In the settings</source>
        <translation type="unfinished">Sa settings</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">Gamit</translation>
    </message>
    <message>
        <source>Is the scale on, and are baud rate and parity those of its menu?</source>
        <translation type="unfinished">Naka-on ba ang timbangan, at tama ba ang baud rate at parity ayon sa menu nito?</translation>
    </message>
    <message>
        <source>Issued − used − spoiled − samples − returned</source>
        <translation type="unfinished">Inilabas − nagamit − nasira − sample − isinauli</translation>
    </message>
    <message>
        <source>It cannot be released</source>
        <translation type="unfinished">Hindi mai-release</translation>
    </message>
    <message>
        <source>Its lines</source>
        <translation type="unfinished">Mga linya nito</translation>
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
        <source>KEEP LINE</source>
        <translation type="unfinished">ITAGO ANG LINYA</translation>
    </message>
    <message>
        <source>Kept as {name} (PNG, SVG, CSV) in {folder}</source>
        <translation type="unfinished">Itinago bilang {name} (PNG, SVG, CSV) sa {folder}</translation>
    </message>
    <message>
        <source>Key in how many bags lie in the bin.</source>
        <translation type="unfinished">Ilagay kung ilang bag ang nasa bin.</translation>
    </message>
    <message>
        <source>LABEL ON BAG</source>
        <translation type="unfinished">LABEL SA BAG</translation>
    </message>
    <message>
        <source>LABEL ROLL</source>
        <translation type="unfinished">ROLYO NG LABEL</translation>
    </message>
    <message>
        <source>LABEL {state}</source>
        <translation type="unfinished">LABEL {state}</translation>
    </message>
    <message>
        <source>LABELS</source>
        <translation type="unfinished">MGA LABEL</translation>
    </message>
    <message>
        <source>LABELS (F5) settles it.</source>
        <translation type="unfinished">Sa MGA LABEL (F5) inaayos.</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">WIKA</translation>
    </message>
    <message>
        <source>LAST</source>
        <translation type="unfinished">HULI</translation>
    </message>
    <message>
        <source>LAST 7 DAYS</source>
        <translation type="unfinished">HULING 7 ARAW</translation>
    </message>
    <message>
        <source>LAST DAY</source>
        <translation type="unfinished">HULING ARAW</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">LEAD</translation>
    </message>
    <message>
        <source>LEAVE</source>
        <translation type="unfinished">LUMABAS</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">ALISIN BAG</translation>
    </message>
    <message>
        <source>LIFT THE BAG OFF</source>
        <translation type="unfinished">ALISIN ANG BAG</translation>
    </message>
    <message>
        <source>LIFT THE WEIGHTS OFF</source>
        <translation type="unfinished">ALISIN ANG MGA PABIGAT</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">LINYA</translation>
    </message>
    <message>
        <source>LISTEN</source>
        <translation type="unfinished">MAKINIG</translation>
    </message>
    <message>
        <source>LISTEN to the scale, or open a RECORDING; put a known weight on the pan and TAKE a line.</source>
        <translation type="unfinished">MAKINIG sa timbangan, o magbukas ng REKORDING; maglagay ng alam na bigat at KUNIN ang linya.</translation>
    </message>
    <message>
        <source>LOAD</source>
        <translation type="unfinished">IKARGA</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">ILAGAY MULI</translation>
    </message>
    <message>
        <source>LOAD CLEAN</source>
        <translation type="unfinished">MALINIS NA KARGA</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation type="unfinished">TINGNAN</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">HANAPIN</translation>
    </message>
    <message>
        <source>LOSSES</source>
        <translation type="unfinished">MGA LUGI</translation>
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
        <source>Label roll {roll}: a difference of {difference} is open</source>
        <translation type="unfinished">Rolyo ng label {roll}: bukas ang kaibhang {difference}</translation>
    </message>
    <message>
        <source>Label {serial} is in doubt</source>
        <translation type="unfinished">May duda ang label {serial}</translation>
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
        <source>Languages</source>
        <translation type="unfinished">Mga wika</translation>
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
        <source>Line stands: {reason}. Look, then touch</source>
        <translation type="unfinished">Nakahinto ang linya: {reason}. Tingnan, tapos pindutin</translation>
    </message>
    <message>
        <source>Look, then touch</source>
        <translation type="unfinished">Tingnan, tapos pindutin</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation type="unfinished">Hinahanap …</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished">Lot</translation>
    </message>
    <message>
        <source>Lot {lot} is held, and every bag that may hold some of it.</source>
        <translation type="unfinished">Naka-hold ang lot {lot} at bawat bag na maaaring may laman nito.</translation>
    </message>
    <message>
        <source>Lot {lot} is released, and the bags that were held with it.</source>
        <translation type="unfinished">Na-release ang lot {lot} at ang mga bag na naka-hold kasama nito.</translation>
    </message>
    <message>
        <source>Lot {lot} received and held.</source>
        <translation type="unfinished">Tinanggap at naka-hold ang lot {lot}.</translation>
    </message>
    <message>
        <source>Lot {lot} received.</source>
        <translation type="unfinished">Tinanggap ang lot {lot}.</translation>
    </message>
    <message>
        <source>Lot {lot}: {move}, on record.</source>
        <translation type="unfinished">Lot {lot}: {move}, naitala.</translation>
    </message>
    <message>
        <source>MANAGER</source>
        <translation type="unfinished">MANAGER</translation>
    </message>
    <message>
        <source>METAL DETECTOR</source>
        <translation type="unfinished">METAL DETECTOR</translation>
    </message>
    <message>
        <source>MISMATCH</source>
        <translation type="unfinished">HINDI TUGMA</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">IBA PA</translation>
    </message>
    <message>
        <source>MOVING</source>
        <translation type="unfinished">GUMAGALAW</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation type="unfinished">Gumawa at modelo</translation>
    </message>
    <message>
        <source>Max / e = {number}, class {code} allows {least} to {most}</source>
        <translation type="unfinished">Max / e = {number}, pinapayagan ng klase {code} ang {least} hanggang {most}</translation>
    </message>
    <message>
        <source>Mean needed</source>
        <translation type="unfinished">Kailangang mean</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Average na net {mass}</translation>
    </message>
    <message>
        <source>Mean so far</source>
        <translation type="unfinished">Mean sa ngayon</translation>
    </message>
    <message>
        <source>Mon {number}</source>
        <translation type="unfinished">Lun {number}</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished">Lunes</translation>
    </message>
    <message>
        <source>NEAR MAX</source>
        <translation type="unfinished">MALAPIT SA MAX</translation>
    </message>
    <message>
        <source>NEAR THE TARE</source>
        <translation type="unfinished">MALAPIT SA TARE</translation>
    </message>
    <message>
        <source>NET</source>
        <translation type="unfinished">NET</translation>
    </message>
    <message>
        <source>NEVER CAME OUT</source>
        <translation type="unfinished">HINDI LUMABAS</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">BAGONG HOLD</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation type="unfinished">SUSUNOD</translation>
    </message>
    <message>
        <source>NEXT CASE</source>
        <translation type="unfinished">SUSUNOD NA KAHON</translation>
    </message>
    <message>
        <source>NO FORECAST</source>
        <translation type="unfinished">WALANG PAGTAYA</translation>
    </message>
    <message>
        <source>NO MARKS</source>
        <translation type="unfinished">WALANG MARKA</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">WALANG BASA</translation>
    </message>
    <message>
        <source>NO RUN IS OPEN</source>
        <translation type="unfinished">WALANG BUKAS NA RUN</translation>
    </message>
    <message>
        <source>NOBODY</source>
        <translation type="unfinished">WALA</translation>
    </message>
    <message>
        <source>NOMINAL</source>
        <translation type="unfinished">NOMINAL</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation type="unfinished">WALA</translation>
    </message>
    <message>
        <source>NOT MET</source>
        <translation type="unfinished">HINDI PASOK</translation>
    </message>
    <message>
        <source>NOW</source>
        <translation type="unfinished">NGAYON</translation>
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
        <source>No bag is on record yet.</source>
        <translation type="unfinished">Wala pang nakatalang bag.</translation>
    </message>
    <message>
        <source>No bag is suspect.</source>
        <translation type="unfinished">Walang kahina-hinalang bag.</translation>
    </message>
    <message>
        <source>No case stands here</source>
        <translation type="unfinished">Walang kahon dito</translation>
    </message>
    <message>
        <source>No description yet</source>
        <translation type="unfinished">Wala pang paglalarawan</translation>
    </message>
    <message>
        <source>No good bag yet</source>
        <translation type="unfinished">Wala pang mabuting bag</translation>
    </message>
    <message>
        <source>No label is in doubt</source>
        <translation type="unfinished">Walang label na may duda</translation>
    </message>
    <message>
        <source>No lot is on the line: scan one.</source>
        <translation type="unfinished">Walang lot sa linya: mag-scan ng isa.</translation>
    </message>
    <message>
        <source>No roll is in</source>
        <translation type="unfinished">Walang rolyo</translation>
    </message>
    <message>
        <source>No run is open</source>
        <translation type="unfinished">Walang bukas na run</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">Walang bukas na run</translation>
    </message>
    <message>
        <source>No target can be proposed: {why}.</source>
        <translation type="unfinished">Walang maimumungkahing target: {why}.</translation>
    </message>
    <message>
        <source>No whole line was heard yet.</source>
        <translation type="unfinished">Wala pang buong linyang narinig.</translation>
    </message>
    <message>
        <source>Not kept: {why}, {folder}</source>
        <translation type="unfinished">Hindi naitago: {why}, {folder}</translation>
    </message>
    <message>
        <source>Not recorded: {why}</source>
        <translation type="unfinished">Hindi naitala: {why}</translation>
    </message>
    <message>
        <source>Nothing is held or packed.</source>
        <translation type="unfinished">Walang naka-hold o naimpake.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">Walang nakabinbin.</translation>
    </message>
    <message>
        <source>Nothing keeps it.</source>
        <translation type="unfinished">Walang pumipigil.</translation>
    </message>
    <message>
        <source>Nothing waits for a signature.</source>
        <translation type="unfinished">Walang naghihintay ng pirma.</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">SA PACKER</translation>
    </message>
    <message>
        <source>OLD ONE DESTROYED</source>
        <translation type="unfinished">SINIRA ANG LUMA</translation>
    </message>
    <message>
        <source>ON ITS BAG</source>
        <translation type="unfinished">NASA BAG NITO</translation>
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
        <source>OVER</source>
        <translation type="unfinished">SOBRA</translation>
    </message>
    <message>
        <source>OVERDUE {minutes} min</source>
        <translation type="unfinished">HULI NG {minutes} min</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}</source>
        <translation type="unfinished">Nakatala {bags}, nabilang {count}</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} fewer. Why?</source>
        <translation type="unfinished">Nakatala {bags}, nabilang {count}: kulang ng {difference}. Bakit?</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} more. Why?</source>
        <translation type="unfinished">Nakatala {bags}, nabilang {count}: sobra ng {difference}. Bakit?</translation>
    </message>
    <message>
        <source>On record; it holds from the next run on.</source>
        <translation type="unfinished">Naitala; bisa mula sa susunod na run.</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished">Nasa timbangan</translation>
    </message>
    <message>
        <source>Open a run first: a check is made at its loads.</source>
        <translation type="unfinished">Magbukas muna ng run: sa mga karga nito ang tsek.</translation>
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
        <source>PALLET</source>
        <translation type="unfinished">PALLET</translation>
    </message>
    <message>
        <source>PALLETS</source>
        <translation type="unfinished">MGA PALLET</translation>
    </message>
    <message>
        <source>PAN WHEN EMPTY</source>
        <translation type="unfinished">PAN NA WALANG LAMAN</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation type="unfinished">PAPEL</translation>
    </message>
    <message>
        <source>PASSED</source>
        <translation type="unfinished">PASADO</translation>
    </message>
    <message>
        <source>PEOPLE</source>
        <translation type="unfinished">MGA TAO</translation>
    </message>
    <message>
        <source>PLUS/MINUS</source>
        <translation type="unfinished">PLUS/MINUS</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">I-PRINT</translation>
    </message>
    <message>
        <source>PRINT AGAIN</source>
        <translation type="unfinished">I-PRINT MULI</translation>
    </message>
    <message>
        <source>PRODUCT TEMPERATURE</source>
        <translation type="unfinished">TEMPERATURA NG PRODUKTO</translation>
    </message>
    <message>
        <source>PROPOSE</source>
        <translation type="unfinished">IMUNGKAHI</translation>
    </message>
    <message>
        <source>PROPOSE when they differ enough.</source>
        <translation type="unfinished">IMUNGKAHI kapag sapat ang pagkakaiba.</translation>
    </message>
    <message>
        <source>PUT AN EMPTY BAG ON</source>
        <translation type="unfinished">ILAGAY ANG BAG NA WALANG LAMAN</translation>
    </message>
    <message>
        <source>PUT ON {weights}</source>
        <translation type="unfinished">ILAGAY ANG {weights}</translation>
    </message>
    <message>
        <source>PUT {serial} ON</source>
        <translation type="unfinished">ILAGAY ANG {serial}</translation>
    </message>
    <message>
        <source>Pallet {sscc} is closed; its label comes.</source>
        <translation type="unfinished">Sarado na ang pallet {sscc}; lalabas ang label.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished">Mga bahagi</translation>
    </message>
    <message>
        <source>Plate in the settings</source>
        <translation type="unfinished">Plate sa settings</translation>
    </message>
    <message>
        <source>Print again: {what}</source>
        <translation type="unfinished">I-print muli: {what}</translation>
    </message>
    <message>
        <source>Protocol</source>
        <translation type="unfinished">Protokol</translation>
    </message>
    <message>
        <source>Put another weight on, and TAKE a line at rest and one in motion too.</source>
        <translation type="unfinished">Maglagay ng ibang bigat, KUMUHA ng linya kapag nakatigil at kapag gumagalaw.</translation>
    </message>
    <message>
        <source>Put its number into station.toml.</source>
        <translation type="unfinished">Ilagay ang numero nito sa station.toml.</translation>
    </message>
    <message>
        <source>QA check</source>
        <translation type="unfinished">tsek ng QA</translation>
    </message>
    <message>
        <source>QA decides</source>
        <translation type="unfinished">QA ang magpapasya</translation>
    </message>
    <message>
        <source>QA decides: release all, or let the hold stay</source>
        <translation type="unfinished">QA ang magpapasya: i-release lahat, o hold pa rin</translation>
    </message>
    <message>
        <source>QA holds the button</source>
        <translation type="unfinished">QA ang magdidiin</translation>
    </message>
    <message>
        <source>QA or a manager releases a lot: touch WHO and choose your name</source>
        <translation type="unfinished">QA o manager ang magre-release ng lot: pindutin ang SINO at piliin ang pangalan</translation>
    </message>
    <message>
        <source>QA said go on</source>
        <translation type="unfinished">sabi ng QA, ituloy</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">KALIDAD</translation>
    </message>
    <message>
        <source>READY</source>
        <translation type="unfinished">HANDA</translation>
    </message>
    <message>
        <source>REASON TO REFUSE</source>
        <translation type="unfinished">DAHILAN NG PAGTANGGI</translation>
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
        <source>RECORDED</source>
        <translation type="unfinished">NAITALA</translation>
    </message>
    <message>
        <source>RECORDING</source>
        <translation type="unfinished">REKORDING</translation>
    </message>
    <message>
        <source>REFUSE</source>
        <translation type="unfinished">TANGGIHAN</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">MAG-ENSAYO</translation>
    </message>
    <message>
        <source>REJECTS</source>
        <translation type="unfinished">REJECT</translation>
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
        <source>REPORT</source>
        <translation type="unfinished">ULAT</translation>
    </message>
    <message>
        <source>REPRINT</source>
        <translation type="unfinished">PRINT MULI</translation>
    </message>
    <message>
        <source>RETURN</source>
        <translation type="unfinished">ISAULI</translation>
    </message>
    <message>
        <source>RETURNED</source>
        <translation type="unfinished">ISINAULI</translation>
    </message>
    <message>
        <source>REWORKED</source>
        <translation type="unfinished">NI-REWORK</translation>
    </message>
    <message>
        <source>ROLL</source>
        <translation type="unfinished">ROLYO</translation>
    </message>
    <message>
        <source>ROLL IN</source>
        <translation type="unfinished">IPASOK ROLYO</translation>
    </message>
    <message>
        <source>ROLL OUT</source>
        <translation type="unfinished">ALISIN ROLYO</translation>
    </message>
    <message>
        <source>ROOM TEMPERATURE</source>
        <translation type="unfinished">TEMPERATURA NG SILID</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">RUN</translation>
    </message>
    <message>
        <source>RUN, then SERVICE (F9), SWAP</source>
        <translation type="unfinished">RUN, tapos SERBISYO (F9), PALIT</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">RUN, tapos {door} ({key})</translation>
    </message>
    <message>
        <source>RUNS</source>
        <translation type="unfinished">MGA RUN</translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished">Saklaw</translation>
    </message>
    <message>
        <source>Reading the record</source>
        <translation type="unfinished">Binabasa ang tala</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Talaan</translation>
    </message>
    <message>
        <source>Recorded as refused</source>
        <translation type="unfinished">Nakatala bilang tinanggihan</translation>
    </message>
    <message>
        <source>Recorded: {file}</source>
        <translation type="unfinished">Naitala: {file}</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation type="unfinished">Tinanggihan</translation>
    </message>
    <message>
        <source>Refused. Count the bags first.</source>
        <translation type="unfinished">Tinanggihan. Bilangin muna ang mga bag.</translation>
    </message>
    <message>
        <source>Refused. Look at another clock and say why first.</source>
        <translation type="unfinished">Tinanggihan. Tumingin muna sa ibang orasan at sabihin kung bakit.</translation>
    </message>
    <message>
        <source>Refused. No run is open.</source>
        <translation type="unfinished">Tinanggihan. Walang bukas na run.</translation>
    </message>
    <message>
        <source>Refused. Say which label, why, and where the old one is.</source>
        <translation type="unfinished">Tinanggihan. Sabihin kung aling label, bakit, at nasaan ang luma.</translation>
    </message>
    <message>
        <source>Refused. Scan the roll and key in its labels first.</source>
        <translation type="unfinished">Tinanggihan. I-scan muna ang rolyo at ilagay ang bilang ng label.</translation>
    </message>
    <message>
        <source>Refused. Touch the two who sign, the lead first.</source>
        <translation type="unfinished">Tinanggihan. Pindutin ang dalawang pipirma, lead muna.</translation>
    </message>
    <message>
        <source>Refused. Touch who signs.</source>
        <translation type="unfinished">Tinanggihan. Pindutin kung sino ang pipirma.</translation>
    </message>
    <message>
        <source>Refused. Who signs? Touch WHO and choose your name.</source>
        <translation type="unfinished">Tinanggihan. Sino ang pipirma? Pindutin ang SINO at piliin ang pangalan.</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Tinanggihan. {why}</translation>
    </message>
    <message>
        <source>Rehearsing …</source>
        <translation type="unfinished">Nagre-rehearse …</translation>
    </message>
    <message>
        <source>Roll {roll} is in. Count it out</source>
        <translation type="unfinished">Nakakabit ang rolyo {roll}. Bilangin palabas</translation>
    </message>
    <message>
        <source>Roll {roll}: why {difference}?</source>
        <translation type="unfinished">Rolyo {roll}: bakit {difference}?</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Bukas ang run</translation>
    </message>
    <message>
        <source>SAFE</source>
        <translation type="unfinished">LIGTAS</translation>
    </message>
    <message>
        <source>SAMPLED</source>
        <translation type="unfinished">SINAMPOL</translation>
    </message>
    <message>
        <source>SAMPLES</source>
        <translation type="unfinished">SAMPLE</translation>
    </message>
    <message>
        <source>SAVE</source>
        <translation type="unfinished">I-SAVE</translation>
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
        <source>SCAN A BAG</source>
        <translation type="unfinished">MAG-SCAN NG BAG</translation>
    </message>
    <message>
        <source>SCAN THE FILM LOT</source>
        <translation type="unfinished">I-SCAN ANG FILM LOT</translation>
    </message>
    <message>
        <source>SEAL</source>
        <translation type="unfinished">I-SEAL</translation>
    </message>
    <message>
        <source>SEAL CHECK</source>
        <translation type="unfinished">SELYO</translation>
    </message>
    <message>
        <source>SERIALS</source>
        <translation type="unfinished">MGA SERIAL</translation>
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
        <source>SHIP</source>
        <translation type="unfinished">IPADALA</translation>
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
        <source>SIGNS</source>
        <translation type="unfinished">PUMIPIRMA</translation>
    </message>
    <message>
        <source>SMA SCP-0499 level {code}</source>
        <translation type="unfinished">SMA SCP-0499 antas {code}</translation>
    </message>
    <message>
        <source>SPOILED</source>
        <translation type="unfinished">NASIRA</translation>
    </message>
    <message>
        <source>SPOOLED</source>
        <translation type="unfinished">NAKAPILA</translation>
    </message>
    <message>
        <source>SPREAD</source>
        <translation type="unfinished">KALAT</translation>
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
        <source>STARTING</source>
        <translation type="unfinished">NAGSISIMULA</translation>
    </message>
    <message>
        <source>STATION</source>
        <translation type="unfinished">ISTASYON</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished">HINTO</translation>
    </message>
    <message>
        <source>STOP RECORDING</source>
        <translation type="unfinished">ITIGIL ANG PAGTALA</translation>
    </message>
    <message>
        <source>STOPS</source>
        <translation type="unfinished">MGA HINTO</translation>
    </message>
    <message>
        <source>STUDY {count} BAGS</source>
        <translation type="unfinished">SURIIN ANG {count} BAG</translation>
    </message>
    <message>
        <source>SUBMITTED</source>
        <translation type="unfinished">IPINASA</translation>
    </message>
    <message>
        <source>SUSPECT BAGS</source>
        <translation type="unfinished">KAHINA-HINALANG BAG</translation>
    </message>
    <message>
        <source>SUSPECT WINDOW</source>
        <translation type="unfinished">KAHINA-HINALANG YUGTO</translation>
    </message>
    <message>
        <source>SWAP</source>
        <translation type="unfinished">PALIT</translation>
    </message>
    <message>
        <source>Same product?</source>
        <translation type="unfinished">Parehong produkto?</translation>
    </message>
    <message>
        <source>Sat {number}</source>
        <translation type="unfinished">Sab {number}</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished">Sabado</translation>
    </message>
    <message>
        <source>Scale {what} failed its last check</source>
        <translation type="unfinished">Bagsak ang timbangan {what} sa huling tsek</translation>
    </message>
    <message>
        <source>Scan a label, or type a serial or a blend lot.</source>
        <translation type="unfinished">Mag-scan ng label, o i-type ang serial o blend lot.</translation>
    </message>
    <message>
        <source>Scan the bags, type first..last, or touch NEXT CASE</source>
        <translation type="unfinished">I-scan ang mga bag, i-type una..huli, o pindutin ang SUSUNOD NA KAHON</translation>
    </message>
    <message>
        <source>Scan the cases of the pallet</source>
        <translation type="unfinished">I-scan ang mga kahon ng pallet</translation>
    </message>
    <message>
        <source>Scan the label on a bag</source>
        <translation type="unfinished">I-scan ang label ng isang bag</translation>
    </message>
    <message>
        <source>Scan the pallets and cases that leave</source>
        <translation type="unfinished">I-scan ang mga pallet at kahon na aalis</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation type="unfinished">Serial number</translation>
    </message>
    <message>
        <source>Settings and record are being read: no bag is taken yet</source>
        <translation type="unfinished">Binabasa ang mga setting at talaan: wala pang tinatanggap na bag</translation>
    </message>
    <message>
        <source>Shipment {number} is on record.</source>
        <translation type="unfinished">Naitala ang padala {number}.</translation>
    </message>
    <message>
        <source>Shipments</source>
        <translation type="unfinished">Mga padala</translation>
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
        <source>Signed and on record.</source>
        <translation type="unfinished">Napirmahan at naitala.</translation>
    </message>
    <message>
        <source>Solid: mean so far, dotted: its limits. Dashed: mean of about 40 bags. Touch a bag.</source>
        <translation type="unfinished">Buo: mean sa ngayon, tuldok: mga limit. Putol-putol: mean ng mga 40 bag. Pindutin ang bag.</translation>
    </message>
    <message>
        <source>Start a run</source>
        <translation type="unfinished">Magbukas ng run</translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished">Istasyon</translation>
    </message>
    <message>
        <source>Stop and start the station to use it</source>
        <translation type="unfinished">Ihinto at simulan ang istasyon para magamit</translation>
    </message>
    <message>
        <source>Study kept: mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">Naitago ang tare study: mean {mean}, s {spread}, {count} bag</translation>
    </message>
    <message>
        <source>Sun {number}</source>
        <translation type="unfinished">Lin {number}</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished">Linggo</translation>
    </message>
    <message>
        <source>Suspect window of {what}: {count} bags are held</source>
        <translation type="unfinished">Kahina-hinalang yugto ng {what}: {count} bag ang naka-hold</translation>
    </message>
    <message>
        <source>T1 packs in the official sample</source>
        <translation type="unfinished">T1 na bag sa opisyal na sample</translation>
    </message>
    <message>
        <source>T1 packs of the whole batch</source>
        <translation type="unfinished">T1 na bag ng buong batch</translation>
    </message>
    <message>
        <source>T2 packs in the long run</source>
        <translation type="unfinished">T2 na bag sa katagalan</translation>
    </message>
    <message>
        <source>T2 packs in the official sample</source>
        <translation type="unfinished">T2 na bag sa opisyal na sample</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, nominal</translation>
    </message>
    <message>
        <source>TAKE INTO USE</source>
        <translation type="unfinished">GAMITIN NA</translation>
    </message>
    <message>
        <source>TAKE LINE</source>
        <translation type="unfinished">KUNIN ANG LINYA</translation>
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
        <source>TARGET</source>
        <translation type="unfinished">TARGET</translation>
    </message>
    <message>
        <source>TEACH</source>
        <translation type="unfinished">TURUAN</translation>
    </message>
    <message>
        <source>TELL</source>
        <translation type="unfinished">ALAMIN</translation>
    </message>
    <message>
        <source>THE BAG</source>
        <translation type="unfinished">ANG BAG</translation>
    </message>
    <message>
        <source>THE DAY</source>
        <translation type="unfinished">ANG ARAW</translation>
    </message>
    <message>
        <source>THE SCALE FAILS: its bags are held, call maintenance</source>
        <translation type="unfinished">BAGSAK ANG TIMBANGAN: naka-hold ang mga bag nito, tawagin ang maintenance</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS</source>
        <translation type="unfinished">PASADO ANG TIMBANGAN</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS, beyond its first limit: have it adjusted soon</source>
        <translation type="unfinished">PASADO ANG TIMBANGAN, pero lampas sa unang limit: ipa-adjust agad</translation>
    </message>
    <message>
        <source>THIN</source>
        <translation type="unfinished">ALANGANIN</translation>
    </message>
    <message>
        <source>THIS HOUR</source>
        <translation type="unfinished">ORAS NA ITO</translation>
    </message>
    <message>
        <source>TIME</source>
        <translation type="unfinished">ORAS</translation>
    </message>
    <message>
        <source>TOPPED UP</source>
        <translation type="unfinished">DINAGDAGAN</translation>
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
        <source>TRAINING IS OVER</source>
        <translation type="unfinished">TAPOS NA ANG PAGSASANAY</translation>
    </message>
    <message>
        <source>Take a line, mark its value and say the unit first.</source>
        <translation type="unfinished">Kumuha muna ng linya, markahan ang halaga at sabihin ang yunit.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished">Target</translation>
    </message>
    <message>
        <source>Target {target} instead of {now}, held up by {what}: {then} given away a bag instead of {old}.</source>
        <translation type="unfinished">Target {target} sa halip na {now}, pinipigil ng {what}: {then} sobrang bigay bawat bag sa halip na {old}.</translation>
    </message>
    <message>
        <source>The bin of {day} is counted: {count}.</source>
        <translation type="unfinished">Nabilang ang bin ng {day}: {count}.</translation>
    </message>
    <message>
        <source>The clock</source>
        <translation type="unfinished">Ang orasan</translation>
    </message>
    <message>
        <source>The line is the lowest mean that holds for a spread. Touch it to read it.</source>
        <translation type="unfinished">Ang guhit ang pinakamababang mean na puwede sa isang kalat. Pindutin para mabasa.</translation>
    </message>
    <message>
        <source>The next check is {stage}.</source>
        <translation type="unfinished">Susunod na tsek: {stage}.</translation>
    </message>
    <message>
        <source>The port is opened again. What the scale says of itself stands beside.</source>
        <translation type="unfinished">Binuksan muli ang port. Nasa tabi ang sinasabi ng timbangan.</translation>
    </message>
    <message>
        <source>The proposal is on record. A manager approves it, as a new version.</source>
        <translation type="unfinished">Naitala ang mungkahi. Aaprubahan ng manager bilang bagong bersyon.</translation>
    </message>
    <message>
        <source>The recording ended: {why}</source>
        <translation type="unfinished">Natapos ang pagtala: {why}</translation>
    </message>
    <message>
        <source>The reject bin of {day} was not counted</source>
        <translation type="unfinished">Hindi nabilang ang reject bin ng {day}</translation>
    </message>
    <message>
        <source>The run ended: nothing is recorded.</source>
        <translation type="unfinished">Natapos ang run: walang naitala.</translation>
    </message>
    <message>
        <source>The run ended: the check was given up.</source>
        <translation type="unfinished">Natapos ang run: itinigil ang tsek.</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">Ang basa mismo ng timbangan ang masusunod. Kung magkaiba ang screen at timbangan, timbangan ang tama: huminto at tawagin ang lead.</translation>
    </message>
    <message>
        <source>The scan of label {serial} does not match</source>
        <translation type="unfinished">Hindi tugma ang scan ng label {serial}</translation>
    </message>
    <message>
        <source>The test is on record, as {what}.</source>
        <translation type="unfinished">Naitala ang test, bilang {what}.</translation>
    </message>
    <message>
        <source>There is no chart to keep.</source>
        <translation type="unfinished">Walang chart na maitatago.</translation>
    </message>
    <message>
        <source>There is no recording: make one on the page WIRE.</source>
        <translation type="unfinished">Walang rekording: gumawa sa pahinang KABLE.</translation>
    </message>
    <message>
        <source>There is no run before</source>
        <translation type="unfinished">Walang naunang run</translation>
    </message>
    <message>
        <source>There is nothing to keep yet.</source>
        <translation type="unfinished">Wala pang maitatago.</translation>
    </message>
    <message>
        <source>This run stays as it is.</source>
        <translation type="unfinished">Mananatili ang run na ito.</translation>
    </message>
    <message>
        <source>This screen is left at RUN, MORE, LEAVE, by somebody who may</source>
        <translation type="unfinished">Umalis sa screen na ito sa RUN, IBA PA, LUMABAS, ng may karapatan</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation type="unfinished">Mga thread</translation>
    </message>
    <message>
        <source>Thu {number}</source>
        <translation type="unfinished">Huw {number}</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished">Huwebes</translation>
    </message>
    <message>
        <source>Touch PASSED or FAILED.</source>
        <translation type="unfinished">Pindutin ang PASADO o BAGSAK.</translation>
    </message>
    <message>
        <source>Touch a line.</source>
        <translation type="unfinished">Pindutin ang isang hanay.</translation>
    </message>
    <message>
        <source>Touch the rejects it is about first.</source>
        <translation type="unfinished">Pindutin muna ang mga reject.</translation>
    </message>
    <message>
        <source>Touch what becomes of it first.</source>
        <translation type="unfinished">Pindutin muna kung ano ang gagawin.</translation>
    </message>
    <message>
        <source>Touch what is checked first.</source>
        <translation type="unfinished">Pindutin muna kung ano ang sinusuri.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Pindutin muna ang pangalan mo.</translation>
    </message>
    <message>
        <source>Tue {number}</source>
        <translation type="unfinished">Mar {number}</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished">Martes</translation>
    </message>
    <message>
        <source>UNDO</source>
        <translation type="unfinished">I-UNDO</translation>
    </message>
    <message>
        <source>UNIT</source>
        <translation type="unfinished">YUNIT</translation>
    </message>
    <message>
        <source>UNIT {code}</source>
        <translation type="unfinished">YUNIT {code}</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">Gamitin hanggang</translation>
    </message>
    <message>
        <source>Use by {day}</source>
        <translation type="unfinished">Gamitin hanggang {day}</translation>
    </message>
    <message>
        <source>VALUE</source>
        <translation type="unfinished">HALAGA</translation>
    </message>
    <message>
        <source>VOIDED</source>
        <translation type="unfinished">PINAWALANG-BISA</translation>
    </message>
    <message>
        <source>Version</source>
        <translation type="unfinished">Bersyon</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">HINTAY</translation>
    </message>
    <message>
        <source>WARN</source>
        <translation type="unfinished">BABALA</translation>
    </message>
    <message>
        <source>WASH RECORD</source>
        <translation type="unfinished">TALA NG PAGHUGAS</translation>
    </message>
    <message>
        <source>WASTE</source>
        <translation type="unfinished">ITAPON</translation>
    </message>
    <message>
        <source>WEIGH AN EMPTY BAG</source>
        <translation type="unfinished">TIMBANGIN ANG BAG NA WALANG LAMAN</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">TIMBANGIN ANG ISA</translation>
    </message>
    <message>
        <source>WEIGHED AGAIN</source>
        <translation type="unfinished">TINIMBANG MULI</translation>
    </message>
    <message>
        <source>WEIGHTS</source>
        <translation type="unfinished">MGA BIGAT</translation>
    </message>
    <message>
        <source>WHO</source>
        <translation type="unfinished">SINO</translation>
    </message>
    <message>
        <source>WHOLE RUN</source>
        <translation type="unfinished">BUONG RUN</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">PUNASAN</translation>
    </message>
    <message>
        <source>WIRE</source>
        <translation type="unfinished">KABLE</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">KALKULAHIN</translation>
    </message>
    <message>
        <source>WOULD BE ACCEPTED</source>
        <translation type="unfinished">MATATANGGAP</translation>
    </message>
    <message>
        <source>WOULD NOT BE ACCEPTED</source>
        <translation type="unfinished">HINDI MATATANGGAP</translation>
    </message>
    <message>
        <source>Wait until the day is read.</source>
        <translation type="unfinished">Hintaying mabasa ang araw.</translation>
    </message>
    <message>
        <source>Wed {number}</source>
        <translation type="unfinished">Miy {number}</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished">Miyerkules</translation>
    </message>
    <message>
        <source>Weigh again in this order: net as shown, less the whole error, less even growth</source>
        <translation type="unfinished">Timbangin muli sa ayos na ito: net na ipinakita, bawas buong mali, bawas pantay na paglaki</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">Ano</translation>
    </message>
    <message>
        <source>What becomes of the bags?</source>
        <translation type="unfinished">Ano ang gagawin sa mga bag?</translation>
    </message>
    <message>
        <source>What becomes of {bags}?</source>
        <translation type="unfinished">Ano ang gagawin sa {bags}?</translation>
    </message>
    <message>
        <source>Who decides?</source>
        <translation type="unfinished">Sino ang magpapasya?</translation>
    </message>
    <message>
        <source>Who is touched first signs; who is touched second witnesses or releases too</source>
        <translation type="unfinished">Ang unang pinindot ang pipirma; ang ikalawa ang saksi o kasamang magre-release</translation>
    </message>
    <message>
        <source>Who leads touches why the line may go on</source>
        <translation type="unfinished">Pipindutin ng lead kung bakit puwedeng magpatuloy</translation>
    </message>
    <message>
        <source>Why does the line stop?</source>
        <translation type="unfinished">Bakit hihinto ang linya?</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">Bakit inihiwalay?</translation>
    </message>
    <message>
        <source>Why? Choose or type the reason.</source>
        <translation type="unfinished">Bakit? Piliin o i-type ang dahilan.</translation>
    </message>
    <message>
        <source>Working a target out from the bags …</source>
        <translation type="unfinished">Kinakalkula ang target mula sa mga bag …</translation>
    </message>
    <message>
        <source>Working a target out from the bags: {count} tried …</source>
        <translation type="unfinished">Kinakalkula ang target mula sa mga bag: {count} na ang nasubok …</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation type="unfinished">Isinusulat …</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation type="unfinished">Naisulat: {file}</translation>
    </message>
    <message>
        <source>Written: {file} and {count} more in {folder}</source>
        <translation type="unfinished">Naisulat: {file} at {count} pa sa {folder}</translation>
    </message>
    <message>
        <source>YIELD OF LOTS</source>
        <translation type="unfinished">YIELD NG MGA LOT</translation>
    </message>
    <message>
        <source>ZERO</source>
        <translation type="unfinished">ZERO</translation>
    </message>
    <message>
        <source>Zero stepped by {step} between {before} and {after}.</source>
        <translation type="unfinished">Lumundag ang zero ng {step} sa pagitan ng {before} at {after}.</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">may bag sa pan: tapusin at alisin, saka tapusin ang run</translation>
    </message>
    <message>
        <source>a bag that is {what} has no new bag</source>
        <translation type="unfinished">walang bagong bag ang bag na {what}</translation>
    </message>
    <message>
        <source>a bag that is {what} wants a witness: a second person signs</source>
        <translation type="unfinished">kailangan ng saksi ang bag na {what}: pipirma ang ikalawang tao</translation>
    </message>
    <message>
        <source>a case was packed short or over</source>
        <translation type="unfinished">may kahong kulang o sobra</translation>
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
        <source>a check needs test weights: name at least one</source>
        <translation type="unfinished">kailangan ng panubok ang tsek: maglagay ng kahit isa</translation>
    </message>
    <message>
        <source>a copy was printed</source>
        <translation type="unfinished">may na-print na kopya</translation>
    </message>
    <message>
        <source>a cover is open: close it</source>
        <translation type="unfinished">bukas ang takip: isara</translation>
    </message>
    <message>
        <source>a decision needs a reason: choose or write why</source>
        <translation type="unfinished">kailangan ng dahilan ang pasya: pumili o isulat</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">bukas ang pinto: isara</translation>
    </message>
    <message>
        <source>a figure</source>
        <translation type="unfinished">isang bilang</translation>
    </message>
    <message>
        <source>a forecast needs at least two packs</source>
        <translation type="unfinished">kailangan ng dalawang bag man lang para sa pagtaya</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">may naka-hold na lot sa linya</translation>
    </message>
    <message>
        <source>a hold needs a reason: write why</source>
        <translation type="unfinished">kailangan ng dahilan ang hold: isulat</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">hindi tugma ang label</translation>
    </message>
    <message>
        <source>a load was taken for zero when the scale came back: with the pan empty set the scale to zero, or switch it off and on</source>
        <translation type="unfinished">ginawang zero ang isang karga nang bumalik ang timbangan: habang walang laman ang pan i-zero ito, o patayin at buksan</translation>
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
        <source>a new bag</source>
        <translation type="unfinished">bagong bag</translation>
    </message>
    <message>
        <source>a new code is made</source>
        <translation type="unfinished">gagawa ng bagong code</translation>
    </message>
    <message>
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">nagsisimula ang bagong rolyo sa unang label</translation>
    </message>
    <message>
        <source>a numbered copy</source>
        <translation type="unfinished">may bilang na kopya</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">pahinga</translation>
    </message>
    <message>
        <source>a release needs a reason: write why</source>
        <translation type="unfinished">kailangan ng dahilan ang release: isulat</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">may bukas na run: tapusin bago magbukas ng iba</translation>
    </message>
    <message>
        <source>a run needs a lead and a person on the scale</source>
        <translation type="unfinished">kailangan ng run ang lead at tao sa timbangan</translation>
    </message>
    <message>
        <source>a scale that says nothing</source>
        <translation type="unfinished">timbangang walang sinasabi</translation>
    </message>
    <message>
        <source>a suspect window of {what} is open ({count} bags)</source>
        <translation type="unfinished">bukas ang kahina-hinalang yugto ng {what} ({count} bag)</translation>
    </message>
    <message>
        <source>a version is not refused</source>
        <translation type="unfinished">hindi tinatanggihan ang bersyon</translation>
    </message>
    <message>
        <source>a weight every {gap} ms</source>
        <translation type="unfinished">isang bigat bawat {gap} ms</translation>
    </message>
    <message>
        <source>a whole run is not dumped: hold its bags first</source>
        <translation type="unfinished">hindi itinatapon ang buong run: i-hold muna ang mga bag</translation>
    </message>
    <message>
        <source>about {mass} in bags of {loaded} loaded</source>
        <translation type="unfinished">mga {mass} sa bag mula sa {loaded} na ikinarga</translation>
    </message>
    <message>
        <source>above the highest of the description, {number}</source>
        <translation type="unfinished">mas mataas sa {number} na inilarawan</translation>
    </message>
    <message>
        <source>adds up</source>
        <translation type="unfinished">tugma</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">matapos huminto</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation type="unfinished">pasulong</translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished">hangin</translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished">lahat</translation>
    </message>
    <message>
        <source>all 999 lot codes of {day} are used: give a code by hand</source>
        <translation type="unfinished">nagamit na ang lahat ng 999 lot code ng {day}: magbigay ng code</translation>
    </message>
    <message>
        <source>all days</source>
        <translation type="unfinished">lahat ng araw</translation>
    </message>
    <message>
        <source>all found</source>
        <translation type="unfinished">nakita lahat</translation>
    </message>
    <message>
        <source>all loads are taken</source>
        <translation type="unfinished">nakuha na ang lahat ng karga</translation>
    </message>
    <message>
        <source>all reviewed</source>
        <translation type="unfinished">nasuri na lahat</translation>
    </message>
    <message>
        <source>all {count} lines are weights: compare them with what the scale showed</source>
        <translation type="unfinished">timbang ang lahat ng {count} linya: ihambing sa ipinakita ng timbangan</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation type="unfinished">puwede</translation>
    </message>
    <message>
        <source>allowed {floor} to {upper}, T1 {t1}, T2 {t2}</source>
        <translation type="unfinished">puwede {floor} hanggang {upper}, T1 {t1}, T2 {t2}</translation>
    </message>
    <message>
        <source>an aid to the inspector, no official result</source>
        <translation type="unfinished">tulong sa inspektor, hindi opisyal na resulta</translation>
    </message>
    <message>
        <source>an alarm is not shelved for {minutes} minutes: allowed are {allowed}</source>
        <translation type="unfinished">hindi maipagpapaliban ang alarma nang {minutes} minuto: puwede ang {allowed}</translation>
    </message>
    <message>
        <source>an empty bag weighs {mass}, {more} more than the tare taken off</source>
        <translation type="unfinished">ang bag na walang laman ay {mass}, {more} na higit sa ibinawas na tare</translation>
    </message>
    <message>
        <source>an order of {count} bags: give 1 or more, or leave it open</source>
        <translation type="unfinished">order na {count} bag: maglagay ng 1 pataas, o iwang bukas</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished">at {count} pa</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">at {count} pa sa ibaba</translation>
    </message>
    <message>
        <source>another code was scanned</source>
        <translation type="unfinished">ibang code ang na-scan</translation>
    </message>
    <message>
        <source>another device is at {code}</source>
        <translation type="unfinished">ibang aparato ang nasa {code}</translation>
    </message>
    <message>
        <source>another one is set</source>
        <translation type="unfinished">iba ang nakatakda</translation>
    </message>
    <message>
        <source>another program has it: close that program, or name another port</source>
        <translation type="unfinished">gamit ng ibang programa: isara iyon, o maglagay ng ibang port</translation>
    </message>
    <message>
        <source>another scale is here, {here}; in use is {known}: take it into use, {where}</source>
        <translation type="unfinished">ibang timbangan ito, {here}; ang gamit ay {known}: gawing gamit, {where}</translation>
    </message>
    <message>
        <source>any number</source>
        <translation type="unfinished">kahit ilan</translation>
    </message>
    <message>
        <source>applied</source>
        <translation type="unfinished">nakadikit</translation>
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
        <source>approved</source>
        <translation type="unfinished">aprubado</translation>
    </message>
    <message>
        <source>as far as one approval goes</source>
        <translation type="unfinished">hanggang sa abot ng isang pag-apruba</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">gaya ng nadatnan</translation>
    </message>
    <message>
        <source>as left</source>
        <translation type="unfinished">gaya ng iniwan</translation>
    </message>
    <message>
        <source>as left, after its adjustment</source>
        <translation type="unfinished">pagkatapos i-adjust</translation>
    </message>
    <message>
        <source>as people.toml says</source>
        <translation type="unfinished">ayon sa people.toml</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation type="unfinished">gaya ng natimbang</translation>
    </message>
    <message>
        <source>asked by, as in W\r\n</source>
        <translation type="unfinished">tanong, gaya ng W\r\n</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">tinanong ang linya …</translation>
    </message>
    <message>
        <source>at least {least} {unit}</source>
        <translation type="unfinished">hindi bababa sa {least} {unit}</translation>
    </message>
    <message>
        <source>at most {most} {unit}</source>
        <translation type="unfinished">hanggang {most} {unit}</translation>
    </message>
    <message>
        <source>at once</source>
        <translation type="unfinished">agad</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">random</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation type="unfinished">nakatigil</translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">paatras</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">bag</translation>
    </message>
    <message>
        <source>bag of the run</source>
        <translation type="unfinished">bag ng run</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">walang tare study ang bag {code}, film lot {lot}: gumawa: {where}</translation>
    </message>
    <message>
        <source>bag {code}: rework of {lot}, last day {day}</source>
        <translation type="unfinished">bag {code}: rework ng {lot}, huling araw {day}</translation>
    </message>
    <message>
        <source>bag {serial} has had {copies} already: the lead signs for the next one</source>
        <translation type="unfinished">may {copies} na ang bag {serial}: pipirma ang lead sa susunod</translation>
    </message>
    <message>
        <source>bag {serial} has had {count} copies: set it aside</source>
        <translation type="unfinished">may {count} kopya na ang bag {serial}: ihiwalay ito</translation>
    </message>
    <message>
        <source>bag {serial} is held: it gets no label before QA has released it</source>
        <translation type="unfinished">naka-hold ang bag {serial}: walang label hanggang i-release ng QA</translation>
    </message>
    <message>
        <source>bag {serial} is of blend lot {lot}, the case of {other}: close this case and begin another</source>
        <translation type="unfinished">ang bag {serial} ay sa blend lot {lot}, ang kahon ay sa {other}: isara ito at magsimula ng iba</translation>
    </message>
    <message>
        <source>bag {serial} is {what}: scan the label of the new bag</source>
        <translation type="unfinished">bag {serial} {what}: i-scan ang label ng bagong bag</translation>
    </message>
    <message>
        <source>bag {serial} lies under the hold of {what}: have it released first, or dump it</source>
        <translation type="unfinished">ang bag {serial} ay sakop ng hold ng {what}: ipa-release muna, o itapon</translation>
    </message>
    <message>
        <source>bag {serial} was picked already</source>
        <translation type="unfinished">napili na ang bag {serial}</translation>
    </message>
    <message>
        <source>bag {serial} was scanned already</source>
        <translation type="unfinished">na-scan na ang bag {serial}</translation>
    </message>
    <message>
        <source>bag, case, pallet or lot</source>
        <translation type="unfinished">bag, kahon, pallet o lot</translation>
    </message>
    <message>
        <source>bag, record</source>
        <translation type="unfinished">bag, tala</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">bag</translation>
    </message>
    <message>
        <source>bags are taken again: {why}</source>
        <translation type="unfinished">tumatanggap muli ng bag: {why}</translation>
    </message>
    <message>
        <source>bags left on the line were set aside or cooled</source>
        <translation type="unfinished">inihiwalay o pinalamig ang mga bag na naiwan</translation>
    </message>
    <message>
        <source>bags since then looked at</source>
        <translation type="unfinished">tiningnan ang mga bag mula noon</translation>
    </message>
    <message>
        <source>before bag {count}</source>
        <translation type="unfinished">bago ang bag {count}</translation>
    </message>
    <message>
        <source>below T1</source>
        <translation type="unfinished">mababa sa T1</translation>
    </message>
    <message>
        <source>below T1: {count} of at most {most}</source>
        <translation type="unfinished">mababa sa T1: {count}, hanggang {most}</translation>
    </message>
    <message>
        <source>below T2</source>
        <translation type="unfinished">mababa sa T2</translation>
    </message>
    <message>
        <source>below T2: {count}</source>
        <translation type="unfinished">mababa sa T2: {count}</translation>
    </message>
    <message>
        <source>below T2: {count} of at most {most}</source>
        <translation type="unfinished">mababa sa T2: {count}, hanggang {most}</translation>
    </message>
    <message>
        <source>below floor</source>
        <translation type="unfinished">mababa sa floor</translation>
    </message>
    <message>
        <source>below the lowest of the description, {number}</source>
        <translation type="unfinished">mas mababa sa {number} na inilarawan</translation>
    </message>
    <message>
        <source>between the fields stands {one} and also {other}: mark what changes</source>
        <translation type="unfinished">nasa pagitan ng mga field ang {one} at {other}: markahan ang nagbabago</translation>
    </message>
    <message>
        <source>bin and belt empty</source>
        <translation type="unfinished">walang laman ang bin</translation>
    </message>
    <message>
        <source>bin count</source>
        <translation type="unfinished">bilang ng bin</translation>
    </message>
    <message>
        <source>blend</source>
        <translation type="unfinished">blend</translation>
    </message>
    <message>
        <source>blend lot</source>
        <translation type="unfinished">blend lot</translation>
    </message>
    <message>
        <source>blend lot code</source>
        <translation type="unfinished">code ng blend lot</translation>
    </message>
    <message>
        <source>blend {lot}, use-by {day}</source>
        <translation type="unfinished">blend {lot}, gamitin hanggang {day}</translation>
    </message>
    <message>
        <source>both on the label</source>
        <translation type="unfinished">pareho sa label</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">break</translation>
    </message>
    <message>
        <source>burst after its label, destroyed</source>
        <translation type="unfinished">pumutok matapos malabelan, sinira</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">bukas ang seal</translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished">ayon sa</translation>
    </message>
    <message>
        <source>by the record</source>
        <translation type="unfinished">ayon sa tala</translation>
    </message>
    <message>
        <source>by {code}</source>
        <translation type="unfinished">ni {code}</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity ({here}), and that this is the scale</source>
        <translation type="unfinished">may byte pero walang linyang nagsisimula o natatapos: tingnan ang baud rate at parity ({here}), at kung ito nga ang timbangan</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity of the converter, and that this is the scale</source>
        <translation type="unfinished">may byte pero walang linyang nagsisimula o natatapos: tingnan ang baud rate at parity ng converter, at kung ito nga ang timbangan</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity ({here})</source>
        <translation type="unfinished">may byte pero walang frame: tingnan ang baud rate at parity ({here})</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity of the converter</source>
        <translation type="unfinished">may byte pero walang frame: tingnan ang baud rate at parity ng converter</translation>
    </message>
    <message>
        <source>bytes that belong to no frame</source>
        <translation type="unfinished">mga byte na walang frame</translation>
    </message>
    <message>
        <source>bytes that belong to no line</source>
        <translation type="unfinished">mga byte na walang linya</translation>
    </message>
    <message>
        <source>call QA</source>
        <translation type="unfinished">tawagin ang QA</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">tumawag ng tao</translation>
    </message>
    <message>
        <source>case</source>
        <translation type="unfinished">kahon</translation>
    </message>
    <message>
        <source>case opened</source>
        <translation type="unfinished">binuksan ang kahon</translation>
    </message>
    <message>
        <source>case {code}</source>
        <translation type="unfinished">kahon {code}</translation>
    </message>
    <message>
        <source>category-b</source>
        <translation type="unfinished">kategorya B</translation>
    </message>
    <message>
        <source>centre of zero</source>
        <translation type="unfinished">gitna ng zero</translation>
    </message>
    <message>
        <source>chance to pass the official test</source>
        <translation type="unfinished">tsansang pumasa sa opisyal na test</translation>
    </message>
    <message>
        <source>change every {count} ms</source>
        <translation type="unfinished">nagpapalit bawat {count} ms</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">palitan o ipaliwanag ang rolyo</translation>
    </message>
    <message>
        <source>changed after weighing</source>
        <translation type="unfinished">nagbago matapos timbangin</translation>
    </message>
    <message>
        <source>changed after weighing: {net} is recorded, {found} is on the pan</source>
        <translation type="unfinished">nagbago matapos timbangin: {net} ang nakatala, {found} ang nasa pan</translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished">tsek</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">tsek ng {what}</translation>
    </message>
    <message>
        <source>check the plug</source>
        <translation type="unfinished">tingnan ang plug</translation>
    </message>
    <message>
        <source>check the plug, the cable and the {what}'s power</source>
        <translation type="unfinished">tingnan ang plug, ang kable at ang kuryente ({what})</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">suriin ang timbangan pagkatapos ng {what}: {where}</translation>
    </message>
    <message>
        <source>checked again, good</source>
        <translation type="unfinished">sinuri muli, ayos</translation>
    </message>
    <message>
        <source>checked was {known}, here is {found}: CHECK IT again</source>
        <translation type="unfinished">sinuri ang {known}, narito ang {found}: SURIIN ITO muli</translation>
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
        <source>checksum {code} does not agree</source>
        <translation type="unfinished">hindi tugma ang checksum {code}</translation>
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
        <source>class {code}</source>
        <translation type="unfinished">klase {code}</translation>
    </message>
    <message>
        <source>class {code} knows no scale interval of {interval} (R 76 Table 3)</source>
        <translation type="unfinished">walang hating {interval} ang klase {code} (R 76 talaan 3)</translation>
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
        <source>code</source>
        <translation type="unfinished">code</translation>
    </message>
    <message>
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">ihambing ang label, saka ayusin ang scan</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">kumpleto</translation>
    </message>
    <message>
        <source>component {component} is not known: allowed are {allowed}</source>
        <translation type="unfinished">hindi kilala ang sangkap na {component}: puwede ang {allowed}</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">kumpirmahin ang petsa at oras</translation>
    </message>
    <message>
        <source>connected by {device}</source>
        <translation type="unfinished">nakakabit sa {device}</translation>
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
        <source>count on the core was wrong</source>
        <translation type="unfinished">mali ang bilang sa rolyo</translation>
    </message>
    <message>
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">bilangin ang mga bag ng nakaraang run: {where}</translation>
    </message>
    <message>
        <source>counted {count}</source>
        <translation type="unfinished">nabilang {count}</translation>
    </message>
    <message>
        <source>counted {count}, agrees</source>
        <translation type="unfinished">nabilang {count}, tugma</translation>
    </message>
    <message>
        <source>counted {count}, {difference}</source>
        <translation type="unfinished">nabilang {count}, {difference}</translation>
    </message>
    <message>
        <source>counted {count}, {difference}: {why}</source>
        <translation type="unfinished">nabilang {count}, {difference}: {why}</translation>
    </message>
    <message>
        <source>customer's own limits</source>
        <translation type="unfinished">sariling limit ng customer</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">hindi tiyak ang petsa o oras</translation>
    </message>
    <message>
        <source>dated step</source>
        <translation type="unfinished">may oras na lundag</translation>
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
        <source>day, month</source>
        <translation type="unfinished">araw, buwan</translation>
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
        <source>declared tare {mass}</source>
        <translation type="unfinished">ideklarang tare {mass}</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation type="unfinished">sinira</translation>
    </message>
    <message>
        <source>destructive</source>
        <translation type="unfinished">sisirain</translation>
    </message>
    <message>
        <source>destructive-e-mark</source>
        <translation type="unfinished">sisirain (℮)</translation>
    </message>
    <message>
        <source>device {code}</source>
        <translation type="unfinished">device {code}</translation>
    </message>
    <message>
        <source>differs</source>
        <translation type="unfinished">magkaiba</translation>
    </message>
    <message>
        <source>digest</source>
        <translation type="unfinished">digest</translation>
    </message>
    <message>
        <source>digits it shows</source>
        <translation type="unfinished">mga digit na ipinapakita</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation type="unfinished">hindi tugma</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">tapos</translation>
    </message>
    <message>
        <source>double</source>
        <translation type="unfinished">doble</translation>
    </message>
    <message>
        <source>downgraded</source>
        <translation type="unfinished">ibinaba</translation>
    </message>
    <message>
        <source>dumped</source>
        <translation type="unfinished">itinapon</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation type="unfinished">naubos</translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished">ubos na</translation>
    </message>
    <message>
        <source>empty bag</source>
        <translation type="unfinished">bag na walang laman</translation>
    </message>
    <message>
        <source>empty by now?</source>
        <translation type="unfinished">ubos na?</translation>
    </message>
    <message>
        <source>empty pan</source>
        <translation type="unfinished">walang laman ang pan</translation>
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
        <source>equal</source>
        <translation type="unfinished">pareho</translation>
    </message>
    <message>
        <source>even</source>
        <translation type="unfinished">pantay</translation>
    </message>
    <message>
        <source>even growth</source>
        <translation type="unfinished">pantay na paglaki</translation>
    </message>
    <message>
        <source>even parity</source>
        <translation type="unfinished">even parity</translation>
    </message>
    <message>
        <source>event</source>
        <translation type="unfinished">pangyayari</translation>
    </message>
    <message>
        <source>example {number}, {line}</source>
        <translation type="unfinished">halimbawa {number}, {line}</translation>
    </message>
    <message>
        <source>expired</source>
        <translation type="unfinished">expired</translation>
    </message>
    <message>
        <source>expired – take it off the line</source>
        <translation type="unfinished">expired – alisin sa linya</translation>
    </message>
    <message>
        <source>explained</source>
        <translation type="unfinished">ipinaliwanag</translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished">bagsak</translation>
    </message>
    <message>
        <source>failed: what is done</source>
        <translation type="unfinished">bagsak: ano ang ginawa</translation>
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
        <source>fewer</source>
        <translation type="unfinished">kulang</translation>
    </message>
    <message>
        <source>fewer than {count} labels are left</source>
        <translation type="unfinished">wala nang {count} label ang natitira</translation>
    </message>
    <message>
        <source>field {code}</source>
        <translation type="unfinished">field {code}</translation>
    </message>
    <message>
        <source>figures do not convince</source>
        <translation type="unfinished">hindi kapani-paniwala ang bilang</translation>
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
        <source>finishing</source>
        <translation type="unfinished">paubos na</translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished">una</translation>
    </message>
    <message>
        <source>first label</source>
        <translation type="unfinished">unang label</translation>
    </message>
    <message>
        <source>first serial</source>
        <translation type="unfinished">unang serial</translation>
    </message>
    <message>
        <source>first-off</source>
        <translation type="unfinished">unang label</translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished">tugma</translation>
    </message>
    <message>
        <source>flag</source>
        <translation type="unfinished">flag</translation>
    </message>
    <message>
        <source>flags that contradict</source>
        <translation type="unfinished">nagsasalungat na flag</translation>
    </message>
    <message>
        <source>floor {mass}</source>
        <translation type="unfinished">pinakamababa {mass}</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">baba, target, taas</translation>
    </message>
    <message>
        <source>for every product</source>
        <translation type="unfinished">para sa bawat produkto</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">banyagang bagay</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">nakita</translation>
    </message>
    <message>
        <source>frame cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">naputol ang frame matapos ang {count} byte</translation>
    </message>
    <message>
        <source>frame of {count} bytes, a weight has {number}</source>
        <translation type="unfinished">frame na {count} byte, {number} ang sa timbang</translation>
    </message>
    <message>
        <source>frame without an end within {count} bytes</source>
        <translation type="unfinished">walang dulo ang frame sa loob ng {count} byte</translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished">libre</translation>
    </message>
    <message>
        <source>from {code}</source>
        <translation type="unfinished">mula {code}</translation>
    </message>
    <message>
        <source>from, such as 09:00</source>
        <translation type="unfinished">mula, gaya ng 09:00</translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished">buo</translation>
    </message>
    <message>
        <source>gate</source>
        <translation type="unfinished">gate</translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished">sobrang bigay</translation>
    </message>
    <message>
        <source>gives away</source>
        <translation type="unfinished">sobrang bigay</translation>
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
        <source>gone on after a stop: {why}</source>
        <translation type="unfinished">itinuloy matapos huminto: {why}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">ayos</translation>
    </message>
    <message>
        <source>gross</source>
        <translation type="unfinished">gross</translation>
    </message>
    <message>
        <source>gross weight</source>
        <translation type="unfinished">gross na timbang</translation>
    </message>
    <message>
        <source>guards are shut and tools are counted</source>
        <translation type="unfinished">sarado ang guard, bilang ang gamit</translation>
    </message>
    <message>
        <source>hands and tools are washed</source>
        <translation type="unfinished">hugas na ang kamay at gamit</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation type="unfinished">inani</translation>
    </message>
    <message>
        <source>heaviest gross {mass} against Max {most}</source>
        <translation type="unfinished">pinakamabigat na gross {mass} laban sa Max {most}</translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished">naka-hold</translation>
    </message>
    <message>
        <source>held at the line</source>
        <translation type="unfinished">na-hold sa linya</translation>
    </message>
    <message>
        <source>held up by</source>
        <translation type="unfinished">pinipigil ng</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">naka-hold – tawagin ang QA</translation>
    </message>
    <message>
        <source>here: {line}</source>
        <translation type="unfinished">dito: {line}</translation>
    </message>
    <message>
        <source>high resolution</source>
        <translation type="unfinished">mataas na resolusyon</translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished">i-hold</translation>
    </message>
    <message>
        <source>hold down</source>
        <translation type="unfinished">matagal na diin</translation>
    </message>
    <message>
        <source>hold stays</source>
        <translation type="unfinished">hold pa rin</translation>
    </message>
    <message>
        <source>hold the button</source>
        <translation type="unfinished">idiin ang button</translation>
    </message>
    <message>
        <source>hold, no record</source>
        <translation type="unfinished">hold, walang tala</translation>
    </message>
    <message>
        <source>holds</source>
        <translation type="unfinished">mga hold</translation>
    </message>
    <message>
        <source>holds from</source>
        <translation type="unfinished">bisa mula</translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished">oras</translation>
    </message>
    <message>
        <source>id of the label roll</source>
        <translation type="unfinished">id ng rolyo ng label</translation>
    </message>
    <message>
        <source>id of the run</source>
        <translation type="unfinished">id ng run</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation type="unfinished">may duda</translation>
    </message>
    <message>
        <source>in money</source>
        <translation type="unfinished">sa pera</translation>
    </message>
    <message>
        <source>in motion</source>
        <translation type="unfinished">gumagalaw</translation>
    </message>
    <message>
        <source>in no case</source>
        <translation type="unfinished">wala sa kahon</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">nasa bag {mass}</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation type="unfinished">nasa bodega</translation>
    </message>
    <message>
        <source>in the printer</source>
        <translation type="unfinished">nasa printer</translation>
    </message>
    <message>
        <source>in window</source>
        <translation type="unfinished">nasa window</translation>
    </message>
    <message>
        <source>in {number} min</source>
        <translation type="unfinished">sa {number} min</translation>
    </message>
    <message>
        <source>in-service error at {gross} gross {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">mali sa gamit sa {gross} gross: {mass} laban sa {share} ng {limit} = {most}</translation>
    </message>
    <message>
        <source>initial zero error</source>
        <translation type="unfinished">mali sa unang zero</translation>
    </message>
    <message>
        <source>input lot</source>
        <translation type="unfinished">input lot</translation>
    </message>
    <message>
        <source>input lot code</source>
        <translation type="unfinished">code ng input lot</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished">instrumento</translation>
    </message>
    <message>
        <source>interval {mass}</source>
        <translation type="unfinished">hati {mass}</translation>
    </message>
    <message>
        <source>it came too slowly, or was too short, for a scanner</source>
        <translation type="unfinished">masyadong mabagal o maikli para sa scanner</translation>
    </message>
    <message>
        <source>it came too warm, or damaged: QA decides</source>
        <translation type="unfinished">dumating na mainit o sira: QA ang magpapasya</translation>
    </message>
    <message>
        <source>it changes: mark it on each line</source>
        <translation type="unfinished">nagbabago ito: markahan sa bawat linya</translation>
    </message>
    <message>
        <source>it comes back without help</source>
        <translation type="unfinished">babalik ito nang kusa</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">walang sagot: naka-on ba, nakakabit ba ang kable?</translation>
    </message>
    <message>
        <source>it does not end with Enter</source>
        <translation type="unfinished">hindi nagtatapos sa Enter</translation>
    </message>
    <message>
        <source>it does not suit {products}: use another scale</source>
        <translation type="unfinished">hindi bagay sa {products}: gumamit ng ibang timbangan</translation>
    </message>
    <message>
        <source>it failed its check with test weights: have it adjusted, then check it again</source>
        <translation type="unfinished">bumagsak sa tsek gamit ang panubok: ipaayos, tapos i-tsek ulit</translation>
    </message>
    <message>
        <source>it is held until a person releases it</source>
        <translation type="unfinished">naka-hold hanggang may mag-release</translation>
    </message>
    <message>
        <source>it is no serial port</source>
        <translation type="unfinished">hindi ito serial port</translation>
    </message>
    <message>
        <source>it is not there: check the plug</source>
        <translation type="unfinished">wala roon: tingnan ang plug</translation>
    </message>
    <message>
        <source>it is {found}, the {what}'s is {known}: plug that one in again, or stop and start the station to take this one</source>
        <translation type="unfinished">ito ay {found}, ang kilala ({what}) ay {known}: isaksak ito muli, o itigil at simulan ang istasyon para tanggapin ito</translation>
    </message>
    <message>
        <source>it just stays without approval</source>
        <translation type="unfinished">mananatili lang na hindi aprubado</translation>
    </message>
    <message>
        <source>it lacks what the station's scanner types first</source>
        <translation type="unfinished">kulang ang unang tina-type ng scanner ng istasyon</translation>
    </message>
    <message>
        <source>it never came out</source>
        <translation type="unfinished">hindi lumabas</translation>
    </message>
    <message>
        <source>it reached the scale damaged, nothing was done</source>
        <translation type="unfinished">sira nang dumating sa timbangan, walang nangyari</translation>
    </message>
    <message>
        <source>it was cancelled</source>
        <translation type="unfinished">kinansela ito</translation>
    </message>
    <message>
        <source>it was cancelled before printing</source>
        <translation type="unfinished">kinansela bago ma-print</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s</source>
        <translation type="unfinished">hindi lumabas pagkalipas ng {seconds} s</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s ({why})</source>
        <translation type="unfinished">hindi lumabas pagkalipas ng {seconds} s ({why})</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">hindi lumabas sa loob ng {seconds} s: tingnan kung lalabas</translation>
    </message>
    <message>
        <source>its bag goes out</source>
        <translation type="unfinished">ilalabas ang bag nito</translation>
    </message>
    <message>
        <source>its marks overlap or leave the line</source>
        <translation type="unfinished">nagpapatong o lumalampas ang marka</translation>
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
        <source>jammed in the printer</source>
        <translation type="unfinished">naipit sa printer</translation>
    </message>
    <message>
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">itago, ibalik o linisin ang tala</translation>
    </message>
    <message>
        <source>kept as {file} and named in station.toml</source>
        <translation type="unfinished">itinago bilang {file} at isinulat sa station.toml</translation>
    </message>
    <message>
        <source>knee</source>
        <translation type="unfinished">liko</translation>
    </message>
    <message>
        <source>label</source>
        <translation type="unfinished">label</translation>
    </message>
    <message>
        <source>label destroyed</source>
        <translation type="unfinished">sinira ang label</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">walang bisa ang label</translation>
    </message>
    <message>
        <source>label never printed</source>
        <translation type="unfinished">hindi na-print ang label</translation>
    </message>
    <message>
        <source>label of another run taken out</source>
        <translation type="unfinished">inalis ang label ng ibang run</translation>
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
        <source>label roll</source>
        <translation type="unfinished">rolyo ng label</translation>
    </message>
    <message>
        <source>label scan</source>
        <translation type="unfinished">scan ng label</translation>
    </message>
    <message>
        <source>label spoiled</source>
        <translation type="unfinished">sira ang label</translation>
    </message>
    <message>
        <source>label {code}</source>
        <translation type="unfinished">label {code}</translation>
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
        <source>label {serial} is printed again, marked {mark}</source>
        <translation type="unfinished">ini-print muli ang label {serial}, may markang {mark}</translation>
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
        <source>labels on it {count}</source>
        <translation type="unfinished">bilang ng label {count}</translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished">huli</translation>
    </message>
    <message>
        <source>last 7 days</source>
        <translation type="unfinished">huling 7 araw</translation>
    </message>
    <message>
        <source>last day</source>
        <translation type="unfinished">huling araw</translation>
    </message>
    <message>
        <source>last day {day}</source>
        <translation type="unfinished">huling araw {day}</translation>
    </message>
    <message>
        <source>last label</source>
        <translation type="unfinished">huling label</translation>
    </message>
    <message>
        <source>last of it</source>
        <translation type="unfinished">ang huli nito</translation>
    </message>
    <message>
        <source>last serial</source>
        <translation type="unfinished">huling serial</translation>
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
        <source>lead {code}</source>
        <translation type="unfinished">lead {code}</translation>
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
        <source>less the stops</source>
        <translation type="unfinished">bawas ang hinto</translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished">magaan</translation>
    </message>
    <message>
        <source>line cleared</source>
        <translation type="unfinished">nalinis ang linya</translation>
    </message>
    <message>
        <source>line cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">naputol ang linya matapos ang {count} byte</translation>
    </message>
    <message>
        <source>line error</source>
        <translation type="unfinished">mali sa linya</translation>
    </message>
    <message>
        <source>line that does not fit the pattern of its description</source>
        <translation type="unfinished">linyang hindi tugma sa paglalarawan</translation>
    </message>
    <message>
        <source>line without an end within {count} bytes</source>
        <translation type="unfinished">walang dulo ang linya sa loob ng {count} byte</translation>
    </message>
    <message>
        <source>line {code}</source>
        <translation type="unfinished">linya {code}</translation>
    </message>
    <message>
        <source>line {number}</source>
        <translation type="unfinished">linya {number}</translation>
    </message>
    <message>
        <source>lines</source>
        <translation type="unfinished">mga linya</translation>
    </message>
    <message>
        <source>loaded</source>
        <translation type="unfinished">ikinarga</translation>
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
        <source>look whether it comes out</source>
        <translation type="unfinished">tingnan kung lalabas</translation>
    </message>
    <message>
        <source>look whether the label is whole</source>
        <translation type="unfinished">tingnan kung buo ang label</translation>
    </message>
    <message>
        <source>looked at another clock: right now</source>
        <translation type="unfinished">tiningnan ang ibang orasan: tama</translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished">lot</translation>
    </message>
    <message>
        <source>lot code {code} cannot be printed: allowed are 1 to 20 of the characters A-Z 0-9 . / - (no blanks, no small letters)</source>
        <translation type="unfinished">hindi maipi-print ang lot code {code}: 1 hanggang 20 karakter na A-Z 0-9 . / - (walang puwang, walang maliit na titik)</translation>
    </message>
    <message>
        <source>lot {code}</source>
        <translation type="unfinished">lot {code}</translation>
    </message>
    <message>
        <source>lot {lot} had its last day on {day}: it must not be used</source>
        <translation type="unfinished">huling araw ng lot {lot} ang {day}: huwag gamitin</translation>
    </message>
    <message>
        <source>lot {lot} is already in the record as another delivery ({component} from {supplier}, received {day}): leave the code empty to get a new one</source>
        <translation type="unfinished">nakatala na ang lot {lot} sa ibang delivery ({component} mula {supplier}, tinanggap {day}): iwang blangko ang code para sa bago</translation>
    </message>
    <message>
        <source>lot {lot} is held</source>
        <translation type="unfinished">naka-hold ang lot {lot}</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">naka-hold ang lot {lot}: alisin at palitan: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is nearly empty</source>
        <translation type="unfinished">halos ubos na ang lot {lot}</translation>
    </message>
    <message>
        <source>lot {lot} is not in the record: receive it before the run</source>
        <translation type="unfinished">wala sa tala ang lot {lot}: tanggapin bago ang run</translation>
    </message>
    <message>
        <source>lot {lot} is not known: check the code</source>
        <translation type="unfinished">hindi kilala ang lot {lot}: tingnan ang code</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">hindi kilala ang lot {lot}: tanggapin muna</translation>
    </message>
    <message>
        <source>lot {lot} is not on the line: on it are {lots}</source>
        <translation type="unfinished">wala sa linya ang lot {lot}: naroon ang {lots}</translation>
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
        <source>lot {lot} is {status}: it must not be used, call QA</source>
        <translation type="unfinished">{status} ang lot {lot}: huwag gamitin, tawagin ang QA</translation>
    </message>
    <message>
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lot {lot}: {why}</translation>
    </message>
    <message>
        <source>lot {lot} of {supplier} was received already on {day}: load it, do not receive it again</source>
        <translation type="unfinished">tinanggap na ang lot {lot} ng {supplier} noong {day}: ikarga, huwag tanggapin muli</translation>
    </message>
    <message>
        <source>lot {lot}: harvested {harvested} after it was received {received}</source>
        <translation type="unfinished">lot {lot}: inani {harvested} matapos tanggapin {received}</translation>
    </message>
    <message>
        <source>lot {lot}: no person holds it; lots.toml says what it is</source>
        <translation type="unfinished">lot {lot}: walang taong nag-hold; nasa lots.toml ito</translation>
    </message>
    <message>
        <source>lot {lot}: packed {packed} after it was received {received}</source>
        <translation type="unfinished">lot {lot}: inimpake {packed} matapos tanggapin {received}</translation>
    </message>
    <message>
        <source>lot {lot}: waste needs its mass: weigh it</source>
        <translation type="unfinished">lot {lot}: kailangan ang bigat ng itatapon: timbangin</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} came: give more than nothing, or no mass</source>
        <translation type="unfinished">lot {lot}: dumating {mass}: maglagay nang higit sa zero, o wala</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} is below nothing</source>
        <translation type="unfinished">lot {lot}: mas mababa sa zero ang {mass}</translation>
    </message>
    <message>
        <source>lot {lot}: {warmth} °C on arrival: allowed are {least} to {most} °C</source>
        <translation type="unfinished">lot {lot}: {warmth} °C pagdating: puwede ang {least} hanggang {most} °C</translation>
    </message>
    <message>
        <source>lots</source>
        <translation type="unfinished">mga lot</translation>
    </message>
    <message>
        <source>lots changed while a bag was on the pan: lift it before the next change</source>
        <translation type="unfinished">nagbago ang mga lot habang may bag sa pan: alisin bago ang susunod na palit</translation>
    </message>
    <message>
        <source>lots {lots}</source>
        <translation type="unfinished">mga lot {lots}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">makina</translation>
    </message>
    <message>
        <source>made by machine, not reviewed: {said}</source>
        <translation type="unfinished">gawa ng makina, hindi nasuri: {said}</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation type="unfinished">maintenance</translation>
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
        <source>many frames arrive damaged: check plug and cable, keep it away from motors, and see that no other program reads this port</source>
        <translation type="unfinished">maraming frame ang sira pagdating: tingnan ang plug at kable, ilayo sa motor, at tiyaking walang ibang program sa port na ito</translation>
    </message>
    <message>
        <source>mark no control characters, and nothing after the end</source>
        <translation type="unfinished">huwag markahan ang control character o anuman pagkatapos ng dulo</translation>
    </message>
    <message>
        <source>mark the same fields on each line, in the same order</source>
        <translation type="unfinished">markahan ang parehong field sa bawat linya, sa parehong ayos</translation>
    </message>
    <message>
        <source>mark the value on each line</source>
        <translation type="unfinished">markahan ang halaga sa bawat linya</translation>
    </message>
    <message>
        <source>mark two or more, with different weights on the pan</source>
        <translation type="unfinished">markahan ang dalawa o higit pa, na may ibang bigat</translation>
    </message>
    <message>
        <source>may be run</source>
        <translation type="unfinished">puwedeng patakbuhin</translation>
    </message>
    <message>
        <source>may not be run</source>
        <translation type="unfinished">hindi puwedeng patakbuhin</translation>
    </message>
    <message>
        <source>mean + {factor} s ≥ {nominal}: {holds} so far</source>
        <translation type="unfinished">mean + {factor} s ≥ {nominal}: {holds} sa ngayon</translation>
    </message>
    <message>
        <source>mean in the official sample</source>
        <translation type="unfinished">mean sa opisyal na sample</translation>
    </message>
    <message>
        <source>mean net</source>
        <translation type="unfinished">mean net</translation>
    </message>
    <message>
        <source>mean of the whole batch</source>
        <translation type="unfinished">mean ng buong batch</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}</source>
        <translation type="unfinished">mean {mean}, s {spread}</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">mean {mean}, s {spread}, {count} bag</translation>
    </message>
    <message>
        <source>mean {number}</source>
        <translation type="unfinished">average {number}</translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished">pasok</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">metal detector</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished">minuto</translation>
    </message>
    <message>
        <source>missed {pieces}</source>
        <translation type="unfinished">hindi nakita {pieces}</translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished">sobra</translation>
    </message>
    <message>
        <source>more bytes arrive than a scale sends: is this the scale's line?</source>
        <translation type="unfinished">mas maraming byte kaysa ipinapadala ng timbangan: linya ba ito ng timbangan?</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">ilipat ang lot sa linya</translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished">pangalan</translation>
    </message>
    <message>
        <source>name of the format</source>
        <translation type="unfinished">pangalan ng format</translation>
    </message>
    <message>
        <source>name of the inspector</source>
        <translation type="unfinished">pangalan ng inspektor</translation>
    </message>
    <message>
        <source>name the inspector: scan or type who tests</source>
        <translation type="unfinished">pangalanan ang inspektor: i-scan o i-type</translation>
    </message>
    <message>
        <source>name the wash record: tank and number, as the wash step names it</source>
        <translation type="unfinished">pangalanan ang tala ng paghugas: tangke at bilang</translation>
    </message>
    <message>
        <source>near Max</source>
        <translation type="unfinished">malapit sa max</translation>
    </message>
    <message>
        <source>near the tare</source>
        <translation type="unfinished">malapit sa tare</translation>
    </message>
    <message>
        <source>net</source>
        <translation type="unfinished">net</translation>
    </message>
    <message>
        <source>net below {mass}</source>
        <translation type="unfinished">net na mababa sa {mass}</translation>
    </message>
    <message>
        <source>net below {mass}; {count} below T2</source>
        <translation type="unfinished">net na mababa sa {mass}; {count} mababa sa T2</translation>
    </message>
    <message>
        <source>net fill</source>
        <translation type="unfinished">net na laman</translation>
    </message>
    <message>
        <source>net {mass}: {verdict}</source>
        <translation type="unfinished">net {mass}: {verdict}</translation>
    </message>
    <message>
        <source>never came out</source>
        <translation type="unfinished">hindi lumabas</translation>
    </message>
    <message>
        <source>never printed</source>
        <translation type="unfinished">hindi na-print</translation>
    </message>
    <message>
        <source>new bag {serial}</source>
        <translation type="unfinished">bagong bag {serial}</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">wala pang PIN o badge</translation>
    </message>
    <message>
        <source>no USB device</source>
        <translation type="unfinished">walang aparatong USB</translation>
    </message>
    <message>
        <source>no bag</source>
        <translation type="unfinished">walang bag</translation>
    </message>
    <message>
        <source>no bag is expected any more</source>
        <translation type="unfinished">wala nang aasahang bag</translation>
    </message>
    <message>
        <source>no bag is on record yet</source>
        <translation type="unfinished">wala pang bag na nakatala</translation>
    </message>
    <message>
        <source>no bag is taken: {why}</source>
        <translation type="unfinished">hindi tumatanggap ng bag: {why}</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">hindi produkto ang mga bag na ito</translation>
    </message>
    <message>
        <source>no bag of this run is labelled yet: pack one, then scan its label</source>
        <translation type="unfinished">wala pang bag na may label sa run na ito: mag-impake ng isa, tapos i-scan</translation>
    </message>
    <message>
        <source>no bag of {scope} {name} is in the record: nothing is held</source>
        <translation type="unfinished">walang bag ng {scope} {name} sa tala: walang na-hold</translation>
    </message>
    <message>
        <source>no checksum known here agrees on all lines: mark another field, or none</source>
        <translation type="unfinished">walang checksum na tugma sa lahat: markahan ang iba, o wala</translation>
    </message>
    <message>
        <source>no copy</source>
        <translation type="unfinished">walang kopya</translation>
    </message>
    <message>
        <source>no day given</source>
        <translation type="unfinished">walang araw</translation>
    </message>
    <message>
        <source>no error at any load</source>
        <translation type="unfinished">walang mali sa anumang karga</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">walang bilang</translation>
    </message>
    <message>
        <source>no good bag yet</source>
        <translation type="unfinished">wala pang mabuting bag</translation>
    </message>
    <message>
        <source>no good check of {what} after the last bag</source>
        <translation type="unfinished">walang ayos na tsek ng {what} matapos ang huling bag</translation>
    </message>
    <message>
        <source>no good check of {what} in the run</source>
        <translation type="unfinished">walang ayos na tsek ng {what} sa run</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">walang rolyo ng label: mag-scan ng isa sa {where}</translation>
    </message>
    <message>
        <source>no labelled bag of the last run is loose</source>
        <translation type="unfinished">walang nakalabas na bag na may label mula sa huling run</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">ubos na ang label: magkarga ng rolyo</translation>
    </message>
    <message>
        <source>no lot of {component} may be used on {day}</source>
        <translation type="unfinished">walang magagamit na lot ng {component} sa {day}</translation>
    </message>
    <message>
        <source>no old product on line, pan or floor</source>
        <translation type="unfinished">walang lumang produkto sa linya, pan, o sahig</translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished">walang presyo</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">walang produkto</translation>
    </message>
    <message>
        <source>no product has it</source>
        <translation type="unfinished">walang produktong may ganito</translation>
    </message>
    <message>
        <source>no proposal worked out yet</source>
        <translation type="unfinished">wala pang nakalkulang mungkahi</translation>
    </message>
    <message>
        <source>no rate yet</source>
        <translation type="unfinished">wala pang bilis</translation>
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
        <source>no roll is in</source>
        <translation type="unfinished">walang rolyo</translation>
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
        <source>no run yet</source>
        <translation type="unfinished">wala pang run</translation>
    </message>
    <message>
        <source>no scale yet</source>
        <translation type="unfinished">wala pang timbangan</translation>
    </message>
    <message>
        <source>no scan differed: there is nothing to clear</source>
        <translation type="unfinished">walang scan na naiba: walang aayusin</translation>
    </message>
    <message>
        <source>no single test weight of {mass}: use 1, 2 or 5 times a power of ten from 1 g to 20 kg</source>
        <translation type="unfinished">walang iisang panubok na {mass}: gamitin ang 1, 2 o 5 beses ng power of ten, 1 g hanggang 20 kg</translation>
    </message>
    <message>
        <source>no target meets every clause: the fills scatter too much</source>
        <translation type="unfinished">walang target na tumutugon sa lahat: masyadong kalat ang laman</translation>
    </message>
    <message>
        <source>no time service has kept the clock right for {time}</source>
        <translation type="unfinished">{time} nang walang serbisyo ng oras na nagwasto sa orasan</translation>
    </message>
    <message>
        <source>no weight</source>
        <translation type="unfinished">walang timbang</translation>
    </message>
    <message>
        <source>nobody may ship them</source>
        <translation type="unfinished">bawal ipadala</translation>
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
        <source>nominal</source>
        <translation type="unfinished">nominal</translation>
    </message>
    <message>
        <source>nominal {mass}</source>
        <translation type="unfinished">nominal {mass}</translation>
    </message>
    <message>
        <source>nominal {mass} against Min {least}</source>
        <translation type="unfinished">nominal {mass} laban sa Min {least}</translation>
    </message>
    <message>
        <source>nominal {mass} against {count} intervals of {interval}</source>
        <translation type="unfinished">nominal {mass} laban sa {count} hati na {interval}</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">wala</translation>
    </message>
    <message>
        <source>none left on line</source>
        <translation type="unfinished">wala na sa linya</translation>
    </message>
    <message>
        <source>none of what was heard is a weight by this description</source>
        <translation type="unfinished">walang narinig na timbang ayon sa paglalarawang ito</translation>
    </message>
    <message>
        <source>none was taken into use on record yet</source>
        <translation type="unfinished">wala pang nakatalang ginamit</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">wala pa</translation>
    </message>
    <message>
        <source>not a multiple of {number}</source>
        <translation type="unfinished">hindi multiple ng {number}</translation>
    </message>
    <message>
        <source>not clear yet: {point}</source>
        <translation type="unfinished">hindi pa malinis: {point}</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation type="unfinished">hindi pa nabibilang</translation>
    </message>
    <message>
        <source>not due</source>
        <translation type="unfinished">hindi pa</translation>
    </message>
    <message>
        <source>not fit to sell</source>
        <translation type="unfinished">hindi maibebenta</translation>
    </message>
    <message>
        <source>not found: QA decides</source>
        <translation type="unfinished">hindi nakita: QA ang magpapasya</translation>
    </message>
    <message>
        <source>not judged: {why}</source>
        <translation type="unfinished">hindi nahusgahan: {why}</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">walang label: {reason}</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">hindi ngayon</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">hindi na-print</translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished">hindi sinabi</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation type="unfinished">hindi natimbang</translation>
    </message>
    <message>
        <source>not weighed in</source>
        <translation type="unfinished">hindi natimbang pagpasok</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">hindi pa nasuri</translation>
    </message>
    <message>
        <source>not yet: {what}</source>
        <translation type="unfinished">hindi pa: {what}</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">tala</translation>
    </message>
    <message>
        <source>nothing about the clock is open</source>
        <translation type="unfinished">walang nakabinbin sa orasan</translation>
    </message>
    <message>
        <source>nothing on the pan</source>
        <translation type="unfinished">walang laman ang pan</translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished">ngayon</translation>
    </message>
    <message>
        <source>now {number}</source>
        <translation type="unfinished">ngayon {number}</translation>
    </message>
    <message>
        <source>odd parity</source>
        <translation type="unfinished">odd parity</translation>
    </message>
    <message>
        <source>of everything the version says</source>
        <translation type="unfinished">ng lahat ng sinasabi ng bersyon</translation>
    </message>
    <message>
        <source>of the last bag</source>
        <translation type="unfinished">ng huling bag</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">sa {count} bag</translation>
    </message>
    <message>
        <source>old labels and film are off the line</source>
        <translation type="unfinished">wala na ang lumang label at film</translation>
    </message>
    <message>
        <source>old lots are closed or returned</source>
        <translation type="unfinished">sarado o isinauli ang lumang lot</translation>
    </message>
    <message>
        <source>on another pallet</source>
        <translation type="unfinished">nasa ibang pallet</translation>
    </message>
    <message>
        <source>on no label</source>
        <translation type="unfinished">wala sa label</translation>
    </message>
    <message>
        <source>on the line</source>
        <translation type="unfinished">nasa linya</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">nasa timbangan: {who}</translation>
    </message>
    <message>
        <source>on the {count} bags to come</source>
        <translation type="unfinished">sa darating na {count} bag</translation>
    </message>
    <message>
        <source>on the {count} bags to come, any above the floor will do</source>
        <translation type="unfinished">sa darating na {count} bag, sapat ang higit sa floor</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">sa {code} bumabalik lang ang ipinadadala ng istasyon: tingnan kung naka-on ang timbangan, ang kable at settings</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">sa {code} bumabalik lang ang ipinadadala ng istasyon: tingnan kung naka-on ang timbangan, ang kable at settings ({here})</translation>
    </message>
    <message>
        <source>one line comes again and again and is no weight ({why}): see what the scale shows, such as an error, another unit or another mode, and set it back</source>
        <translation type="unfinished">iisang linya ang paulit-ulit at hindi timbang ({why}): tingnan ang ipinapakita ng timbangan, gaya ng error, ibang yunit o ibang mode, at ibalik ito</translation>
    </message>
    <message>
        <source>one new bag stands for one reject: touch one alone</source>
        <translation type="unfinished">isang bagong bag sa isang reject: isa lang ang pindutin</translation>
    </message>
    <message>
        <source>one of {count} bags</source>
        <translation type="unfinished">isa sa {count} bag</translation>
    </message>
    <message>
        <source>only a lead goes on after a mismatch</source>
        <translation type="unfinished">lead lang ang magtutuloy matapos di-tugma</translation>
    </message>
    <message>
        <source>only just suits</source>
        <translation type="unfinished">alanganing bagay</translation>
    </message>
    <message>
        <source>only where in doubt</source>
        <translation type="unfinished">kung may duda lang</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">bukas</translation>
    </message>
    <message>
        <source>open order</source>
        <translation type="unfinished">bukas na order</translation>
    </message>
    <message>
        <source>or scan a badge</source>
        <translation type="unfinished">o i-scan ang badge</translation>
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
        <source>other unit {found}, the line runs in {unit}: set the scale back</source>
        <translation type="unfinished">ibang yunit {found}, {unit} ang linya: ibalik ang timbangan</translation>
    </message>
    <message>
        <source>out of bags</source>
        <translation type="unfinished">mula sa mga bag</translation>
    </message>
    <message>
        <source>over capacity</source>
        <translation type="unfinished">lampas sa kapasidad</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">sobra sa kapasidad: alisin ang karga</translation>
    </message>
    <message>
        <source>over capacity: take the load off the pan</source>
        <translation type="unfinished">sobra sa kapasidad: alisin ang karga sa pan</translation>
    </message>
    <message>
        <source>packed</source>
        <translation type="unfinished">inimpake</translation>
    </message>
    <message>
        <source>packed {day}</source>
        <translation type="unfinished">inimpake {day}</translation>
    </message>
    <message>
        <source>packed {time} by {who}, production day {day}</source>
        <translation type="unfinished">inimpake {time} ni {who}, araw ng produksyon {day}</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">packer</translation>
    </message>
    <message>
        <source>pallet</source>
        <translation type="unfinished">pallet</translation>
    </message>
    <message>
        <source>pallet broken up</source>
        <translation type="unfinished">kinalas ang pallet</translation>
    </message>
    <message>
        <source>pallet {code}</source>
        <translation type="unfinished">pallet {code}</translation>
    </message>
    <message>
        <source>pan, chute and tools are clean and dry</source>
        <translation type="unfinished">malinis at tuyo ang pan, chute, at gamit</translation>
    </message>
    <message>
        <source>paper: delivery note 12</source>
        <translation type="unfinished">papel: resibo ng delivery 12</translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished">pasado</translation>
    </message>
    <message>
        <source>pause</source>
        <translation type="unfinished">paghinto</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">iplano ang tsek</translation>
    </message>
    <message>
        <source>plate {code}</source>
        <translation type="unfinished">plate {code}</translation>
    </message>
    <message>
        <source>plus or minus</source>
        <translation type="unfinished">plus o minus</translation>
    </message>
    <message>
        <source>poor print</source>
        <translation type="unfinished">pangit ang print</translation>
    </message>
    <message>
        <source>port {code}</source>
        <translation type="unfinished">port {code}</translation>
    </message>
    <message>
        <source>position</source>
        <translation type="unfinished">puwesto</translation>
    </message>
    <message>
        <source>present are</source>
        <translation type="unfinished">naroon ang</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">i-print muli ang label</translation>
    </message>
    <message>
        <source>print unreadable</source>
        <translation type="unfinished">hindi mabasa ang print</translation>
    </message>
    <message>
        <source>product</source>
        <translation type="unfinished">produkto</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">temperatura ng produkto</translation>
    </message>
    <message>
        <source>product {product} cannot run on this scale: {why}</source>
        <translation type="unfinished">hindi puwede ang produktong {product} sa timbangang ito: {why}</translation>
    </message>
    <message>
        <source>product {product} is at version {version} now, not {other}: choose it again</source>
        <translation type="unfinished">bersyon {version} na ang produktong {product}, hindi {other}: piliin muli</translation>
    </message>
    <message>
        <source>product {product} is not known: choose one of {allowed}</source>
        <translation type="unfinished">hindi kilala ang produktong {product}: pumili sa {allowed}</translation>
    </message>
    <message>
        <source>product {product} version {version}, as it is set</source>
        <translation type="unfinished">produkto {product} bersyon {version}, gaya ng naka-set</translation>
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
        <source>proposed</source>
        <translation type="unfinished">iminungkahi</translation>
    </message>
    <message>
        <source>purge old runs</source>
        <translation type="unfinished">burahin ang lumang run</translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished">ipinasok</translation>
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
        <source>qa check</source>
        <translation type="unfinished">tsek ng QA</translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished">bilis</translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished">nabasa</translation>
    </message>
    <message>
        <source>reason</source>
        <translation type="unfinished">dahilan</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">tumanggap ng delivery</translation>
    </message>
    <message>
        <source>received {day}</source>
        <translation type="unfinished">tinanggap {day}</translation>
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
        <source>recorded</source>
        <translation type="unfinished">naitala</translation>
    </message>
    <message>
        <source>recounted, stays open</source>
        <translation type="unfinished">binilang muli, bukas pa</translation>
    </message>
    <message>
        <source>reference</source>
        <translation type="unfinished">reference</translation>
    </message>
    <message>
        <source>refuse a label</source>
        <translation type="unfinished">tanggihan ang label</translation>
    </message>
    <message>
        <source>refused</source>
        <translation type="unfinished">tinanggihan</translation>
    </message>
    <message>
        <source>refused: {why}</source>
        <translation type="unfinished">tinanggihan: {why}</translation>
    </message>
    <message>
        <source>reject</source>
        <translation type="unfinished">reject</translation>
    </message>
    <message>
        <source>reject ticket</source>
        <translation type="unfinished">tiket ng reject</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">i-release ang naka-hold</translation>
    </message>
    <message>
        <source>released</source>
        <translation type="unfinished">na-release</translation>
    </message>
    <message>
        <source>released at the line by QA</source>
        <translation type="unfinished">na-release sa linya ng QA</translation>
    </message>
    <message>
        <source>released before the step</source>
        <translation type="unfinished">na-release ang bago ang lundag</translation>
    </message>
    <message>
        <source>remark on what is open</source>
        <translation type="unfinished">puna sa nakabinbin</translation>
    </message>
    <message>
        <source>repacked</source>
        <translation type="unfinished">inimpake muli</translation>
    </message>
    <message>
        <source>rest N2</source>
        <translation type="unfinished">natitira N2</translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished">resulta</translation>
    </message>
    <message>
        <source>returned</source>
        <translation type="unfinished">isinauli</translation>
    </message>
    <message>
        <source>returned {count}</source>
        <translation type="unfinished">isinauli {count}</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">suriin at pirmahan ang araw</translation>
    </message>
    <message>
        <source>reviewed</source>
        <translation type="unfinished">nasuri</translation>
    </message>
    <message>
        <source>reviewed with exceptions</source>
        <translation type="unfinished">nasuri na may eksepsiyon</translation>
    </message>
    <message>
        <source>rework</source>
        <translation type="unfinished">rework</translation>
    </message>
    <message>
        <source>rework of {lot} was packed {time} ago: it may go back on the line for {most}</source>
        <translation type="unfinished">inimpake ang rework ng {lot} {time} na ang nakalipas: puwedeng ibalik sa loob ng {most}</translation>
    </message>
    <message>
        <source>reworked</source>
        <translation type="unfinished">ni-rework</translation>
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
        <source>roll {code}</source>
        <translation type="unfinished">rolyo {code}</translation>
    </message>
    <message>
        <source>roll {roll} is in: take it out first</source>
        <translation type="unfinished">nakakabit ang rolyo {roll}: alisin muna</translation>
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
        <source>run</source>
        <translation type="unfinished">run</translation>
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
        <source>run reconciled</source>
        <translation type="unfinished">natugma ang run</translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished">sample</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation type="unfinished">sinampol</translation>
    </message>
    <message>
        <source>samples {count}</source>
        <translation type="unfinished">sample {count}</translation>
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
        <source>say which lot is empty</source>
        <translation type="unfinished">sabihin kung aling lot ang ubos na</translation>
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
        <source>scale interval {mass} against at most {most} for {nominal}</source>
        <translation type="unfinished">hati {mass}, hanggang {most} para sa {nominal}</translation>
    </message>
    <message>
        <source>scale interval {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">hati {mass} laban sa {share} ng {limit} = {most}</translation>
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
        <source>scale's port {code} cannot be opened</source>
        <translation type="unfinished">hindi mabuksan ang port {code} ng timbangan</translation>
    </message>
    <message>
        <source>scan a case or pallet</source>
        <translation type="unfinished">mag-scan ng kahon o pallet</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">mag-scan ng label</translation>
    </message>
    <message>
        <source>scan a label or lot</source>
        <translation type="unfinished">mag-scan ng label o lot</translation>
    </message>
    <message>
        <source>scan a lot</source>
        <translation type="unfinished">mag-scan ng lot</translation>
    </message>
    <message>
        <source>scan a lot, or touch one</source>
        <translation type="unfinished">mag-scan ng lot, o pumindot ng isa</translation>
    </message>
    <message>
        <source>scan a picked bag</source>
        <translation type="unfinished">i-scan ang napiling bag</translation>
    </message>
    <message>
        <source>scan a ticket or label</source>
        <translation type="unfinished">mag-scan ng tiket o label</translation>
    </message>
    <message>
        <source>scan back</source>
        <translation type="unfinished">scan ng label</translation>
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
        <source>scan or type the film lot</source>
        <translation type="unfinished">i-scan o i-type ang film lot</translation>
    </message>
    <message>
        <source>scan pallets and cases</source>
        <translation type="unfinished">mag-scan ng pallet at kahon</translation>
    </message>
    <message>
        <source>scan the bags</source>
        <translation type="unfinished">i-scan ang mga bag</translation>
    </message>
    <message>
        <source>scan the bags of the case first</source>
        <translation type="unfinished">i-scan muna ang mga bag ng kahon</translation>
    </message>
    <message>
        <source>scan the case label</source>
        <translation type="unfinished">i-scan ang label ng kahon</translation>
    </message>
    <message>
        <source>scan the cases</source>
        <translation type="unfinished">i-scan ang mga kahon</translation>
    </message>
    <message>
        <source>scan the cases of the pallet first</source>
        <translation type="unfinished">i-scan muna ang mga kahon ng pallet</translation>
    </message>
    <message>
        <source>scan the label</source>
        <translation type="unfinished">i-scan ang label</translation>
    </message>
    <message>
        <source>scan the label of the new bag</source>
        <translation type="unfinished">i-scan ang label ng bagong bag</translation>
    </message>
    <message>
        <source>scan the label, or type its serial</source>
        <translation type="unfinished">i-scan ang label, o i-type ang serial</translation>
    </message>
    <message>
        <source>scan the last label</source>
        <translation type="unfinished">i-scan ang huling label</translation>
    </message>
    <message>
        <source>scan the pallets and cases that leave</source>
        <translation type="unfinished">i-scan ang mga pallet at kahon na aalis</translation>
    </message>
    <message>
        <source>scan the roll, then Enter</source>
        <translation type="unfinished">i-scan ang rolyo, tapos Enter</translation>
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
        <source>seal in doubt</source>
        <translation type="unfinished">duda sa selyo</translation>
    </message>
    <message>
        <source>seal open</source>
        <translation type="unfinished">bukas ang selyo</translation>
    </message>
    <message>
        <source>seen on its bag</source>
        <translation type="unfinished">nakita sa bag nito</translation>
    </message>
    <message>
        <source>sent to the laboratory</source>
        <translation type="unfinished">ipinadala sa laboratoryo</translation>
    </message>
    <message>
        <source>sent to the scale</source>
        <translation type="unfinished">ipinadala sa timbangan</translation>
    </message>
    <message>
        <source>serial</source>
        <translation type="unfinished">serial</translation>
    </message>
    <message>
        <source>serial number on its plate</source>
        <translation type="unfinished">serial number sa plate nito</translation>
    </message>
    <message>
        <source>serial number {shown}: give the 1 to 40 characters of the plate</source>
        <translation type="unfinished">serial na {shown}: ilagay ang 1 hanggang 40 karakter ng plaka</translation>
    </message>
    <message>
        <source>serial {code}</source>
        <translation type="unfinished">serial {code}</translation>
    </message>
    <message>
        <source>serials</source>
        <translation type="unfinished">mga serial</translation>
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
        <source>set aside: {reason}</source>
        <translation type="unfinished">inihiwalay: {reason}</translation>
    </message>
    <message>
        <source>set on purpose</source>
        <translation type="unfinished">sinadyang palitan</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">itakda ang tao, PIN at badge</translation>
    </message>
    <message>
        <source>set to {mass} in the settings</source>
        <translation type="unfinished">{mass} sa settings</translation>
    </message>
    <message>
        <source>set unit, interval and capacity under [scale] of station.toml first</source>
        <translation type="unfinished">itakda muna ang yunit, hati at kapasidad sa [scale] ng station.toml</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">inihihiwalay: {reason}</translation>
    </message>
    <message>
        <source>setting bag {serial} aside needs a reason: choose one</source>
        <translation type="unfinished">kailangan ng dahilan para ihiwalay ang bag {serial}: pumili</translation>
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
        <source>shift</source>
        <translation type="unfinished">shift</translation>
    </message>
    <message>
        <source>shift {shift}</source>
        <translation type="unfinished">shift {shift}</translation>
    </message>
    <message>
        <source>ship</source>
        <translation type="unfinished">magpadala</translation>
    </message>
    <message>
        <source>shipment</source>
        <translation type="unfinished">padala</translation>
    </message>
    <message>
        <source>shipment came back</source>
        <translation type="unfinished">bumalik ang padala</translation>
    </message>
    <message>
        <source>shipment withdrawn</source>
        <translation type="unfinished">binawi ang padala</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">pirmahan ang palit ng run</translation>
    </message>
    <message>
        <source>signed with a difference</source>
        <translation type="unfinished">napirmahan na may kaibhan</translation>
    </message>
    <message>
        <source>since</source>
        <translation type="unfinished">mula</translation>
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
        <source>solid: {error} from the first bag on, dashed: growing</source>
        <translation type="unfinished">buo: {error} mula unang bag, putol-putol: lumalaki</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing, step: as dated</source>
        <translation type="unfinished">buo: {error} mula unang bag, putol-putol: lumalaki, lundag: may oras</translation>
    </message>
    <message>
        <source>spoiled ones not counted</source>
        <translation type="unfinished">hindi nabilang ang nasira</translation>
    </message>
    <message>
        <source>spoiled {count}</source>
        <translation type="unfinished">nasira {count}</translation>
    </message>
    <message>
        <source>spooled</source>
        <translation type="unfinished">nakapila</translation>
    </message>
    <message>
        <source>spread of the fills</source>
        <translation type="unfinished">kalat ng laman</translation>
    </message>
    <message>
        <source>spread {spread}: a mean of {mean} or more, by the {what} rule</source>
        <translation type="unfinished">kalat {spread}: mean na {mean} pataas, ayon sa tuntuning {what}</translation>
    </message>
    <message>
        <source>start a run</source>
        <translation type="unfinished">magbukas ng run</translation>
    </message>
    <message>
        <source>state</source>
        <translation type="unfinished">lagay</translation>
    </message>
    <message>
        <source>status {code} with the weight {shown}, it needs ten dashes</source>
        <translation type="unfinished">status {code} na may timbang {shown}: kailangan ng sampung gitling</translation>
    </message>
    <message>
        <source>stood</source>
        <translation type="unfinished">nakahinto</translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished">hinto</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">ihinto ang linya</translation>
    </message>
    <message>
        <source>stops</source>
        <translation type="unfinished">mga hinto</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">nakaimbak na bag</translation>
    </message>
    <message>
        <source>stuck on askew</source>
        <translation type="unfinished">tabingi ang dikit</translation>
    </message>
    <message>
        <source>study of its film lot: {study}</source>
        <translation type="unfinished">tare study ng film lot: {study}</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation type="unfinished">ipinasa</translation>
    </message>
    <message>
        <source>suits</source>
        <translation type="unfinished">bagay</translation>
    </message>
    <message>
        <source>suspect</source>
        <translation type="unfinished">kahina-hinala</translation>
    </message>
    <message>
        <source>suspect window</source>
        <translation type="unfinished">kahina-hinalang yugto</translation>
    </message>
    <message>
        <source>suspect window of {what}</source>
        <translation type="unfinished">kahina-hinalang yugto ng {what}</translation>
    </message>
    <message>
        <source>take it off the line</source>
        <translation type="unfinished">alisin sa linya</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">alisin: {where}</translation>
    </message>
    <message>
        <source>take old files off the disk</source>
        <translation type="unfinished">alisin ang lumang file sa disk</translation>
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
        <source>take the old lot off and load the next in one step, or end the run</source>
        <translation type="unfinished">alisin ang lumang lot at ikarga ang kasunod nang sabay, o tapusin ang run</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation type="unfinished">kinalas</translation>
    </message>
    <message>
        <source>taken by QA</source>
        <translation type="unfinished">kinuha ng QA</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation type="unfinished">inalis</translation>
    </message>
    <message>
        <source>tare</source>
        <translation type="unfinished">tara</translation>
    </message>
    <message>
        <source>tare error</source>
        <translation type="unfinished">mali sa tara</translation>
    </message>
    <message>
        <source>tare {mass}</source>
        <translation type="unfinished">tara {mass}</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">target</translation>
    </message>
    <message>
        <source>target of {product}</source>
        <translation type="unfinished">target ng {product}</translation>
    </message>
    <message>
        <source>target {mass} now</source>
        <translation type="unfinished">target {mass} ngayon</translation>
    </message>
    <message>
        <source>target {mass} proposed</source>
        <translation type="unfinished">target {mass} mungkahi</translation>
    </message>
    <message>
        <source>teach a scale of your own</source>
        <translation type="unfinished">turuan ang sarili mong timbangan</translation>
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
        <source>test weights of class {code} for {mass} may be wrong by {own}, more than a third of the {allowed} the scale may be: use a finer class</source>
        <translation type="unfinished">maaaring mali ng {own} ang panubok na klase {code} para sa {mass}, lampas sa ikatlo ng {allowed} ng timbangan: gumamit ng mas pinong klase</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity ({here})</source>
        <translation type="unfinished">may teksto pero walang bigat ng protocol na ito: ibang aparato ba sa port na ito, o ibang format sa timbangan? Kung hindi, tingnan ang baud rate at parity ({here})</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity of the converter</source>
        <translation type="unfinished">may teksto pero walang bigat ng protocol na ito: ibang aparato ba sa port na ito, o ibang format sa timbangan? Kung hindi, tingnan ang baud rate at parity ng converter</translation>
    </message>
    <message>
        <source>the bag on the pan may hold lot {lot}, which is held: set it aside and lift it, then change the lot</source>
        <translation type="unfinished">ang bag sa pan ay maaaring may lot {lot} na naka-hold: ihiwalay at alisin, tapos palitan ang lot</translation>
    </message>
    <message>
        <source>the bags scatter too much for a mean tare ({study}): use other bags</source>
        <translation type="unfinished">masyadong magkakaiba ang bag para sa mean tare ({study}): gumamit ng iba</translation>
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
        <source>the clock is {time} behind the newest entry of the record</source>
        <translation type="unfinished">nahuhuli ang orasan ng {time} sa huling tala</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}</source>
        <translation type="unfinished">lumundag ang orasan nang {time} {way}</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}, to another day</source>
        <translation type="unfinished">lumundag ang orasan nang {time} {way}, sa ibang araw</translation>
    </message>
    <message>
        <source>the clock was set between the checks: the bags have no sure order in time</source>
        <translation type="unfinished">na-set ang orasan sa pagitan ng mga tsek: hindi tiyak ang ayos ng mga bag</translation>
    </message>
    <message>
        <source>the code holds a character that no code of ours has</source>
        <translation type="unfinished">may karakter ang code na wala sa mga code natin</translation>
    </message>
    <message>
        <source>the code presses keys that are no text</source>
        <translation type="unfinished">pumipindot ang code ng mga key na hindi teksto</translation>
    </message>
    <message>
        <source>the computer slept or was held up: what the scale sent is too old</source>
        <translation type="unfinished">natulog o naantala ang computer: luma na ang ipinadala ng timbangan</translation>
    </message>
    <message>
        <source>the demo's settings stay as they are</source>
        <translation type="unfinished">hindi nagbabago ang settings ng demo</translation>
    </message>
    <message>
        <source>the device is gone, or another program reads the same port</source>
        <translation type="unfinished">wala ang aparato, o may ibang program na nagbabasa ng port na ito</translation>
    </message>
    <message>
        <source>the disk cannot be asked: {why}</source>
        <translation type="unfinished">hindi matanong ang disk: {why}</translation>
    </message>
    <message>
        <source>the disk fills up</source>
        <translation type="unfinished">napupuno ang disk</translation>
    </message>
    <message>
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">puno ang disk: magbakante, saka mag-print muli</translation>
    </message>
    <message>
        <source>the disk is nearly full: free {more} on it, then packing goes on by itself</source>
        <translation type="unfinished">halos puno ang disk: maglibre ng {more}, tapos kusang tutuloy ang pag-iimpake</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: take old files off it, or call maintenance</source>
        <translation type="unfinished">{percent} % puno ang disk, {free} ang libre: alisin ang lumang file, o tawagin ang maintenance</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: {why}</source>
        <translation type="unfinished">{percent} % puno ang disk, {free} ang libre: {why}</translation>
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
        <source>the floor</source>
        <translation type="unfinished">ang floor</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">nawala ang folder ng label: gawin muli ang {folder}</translation>
    </message>
    <message>
        <source>the known fault of older versions is mended in this one</source>
        <translation type="unfinished">naayos na rito ang kilalang depekto ng lumang bersyon</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}, so it was printed: destroy it first</source>
        <translation type="unfinished">{state} ang label ng bag {serial}, kaya na-print na: sirain muna</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: nothing to answer</source>
        <translation type="unfinished">{state} ang label ng bag {serial}: walang sasagutin</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: only one that is {states} is printed again</source>
        <translation type="unfinished">{state} ang label ng bag {serial}: ang {states} lang ang ini-print muli</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: {fate}</source>
        <translation type="unfinished">{state} ang label ng bag {serial}: {fate}</translation>
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
        <source>the line does not stand</source>
        <translation type="unfinished">hindi nakahinto ang linya</translation>
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
        <source>the machine slept for {time}</source>
        <translation type="unfinished">natulog ang makina nang {time}</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">mas mababa sa nominal ang average</translation>
    </message>
    <message>
        <source>the new bag has a serial of its own: scan its label</source>
        <translation type="unfinished">may sariling serial ang bagong bag: i-scan ang label nito</translation>
    </message>
    <message>
        <source>the new film or roll is the right one</source>
        <translation type="unfinished">tama ang bagong film o rolyo</translation>
    </message>
    <message>
        <source>the newest entry of the record is {time} old</source>
        <translation type="unfinished">{time} na ang pinakahuling tala</translation>
    </message>
    <message>
        <source>the offset from UTC changed by {time}, as daylight saving does</source>
        <translation type="unfinished">nagbago ang agwat sa UTC nang {time}, gaya ng daylight saving</translation>
    </message>
    <message>
        <source>the oldest entry has waited for more than 30 minutes</source>
        <translation type="unfinished">mahigit 30 minuto nang naghihintay ang pinakalumang tala</translation>
    </message>
    <message>
        <source>the pan is clean, dry and at zero</source>
        <translation type="unfinished">malinis, tuyo, at zero ang pan</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">dapat walang laman ang pan bago ang susunod na bag</translation>
    </message>
    <message>
        <source>the plan takes {count} packs, the batch will have only {lot}</source>
        <translation type="unfinished">{count} bag ang kailangan ng plano, {lot} lang ang batch</translation>
    </message>
    <message>
        <source>the port is not open yet</source>
        <translation type="unfinished">hindi pa bukas ang port</translation>
    </message>
    <message>
        <source>the port is open, no weight was read yet</source>
        <translation type="unfinished">bukas ang port, wala pang nabasang bigat</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">sumuko ang printer</translation>
    </message>
    <message>
        <source>the printer gives no known job state</source>
        <translation type="unfinished">walang ibinigay na kilalang estado ng trabaho ang printer</translation>
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
        <source>the printer says that it is out, but its reply to the page was lost</source>
        <translation type="unfinished">sabi ng printer ay lumabas na, pero nawala ang sagot nito sa pahina</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">ang printer: {why}</translation>
    </message>
    <message>
        <source>the proposal is for version {number}</source>
        <translation type="unfinished">ang mungkahi ay para sa bersyon {number}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">hindi maabot ang printer: buksan, tingnan ang kable</translation>
    </message>
    <message>
        <source>the record's log takes {size}: another program has been reading the record for long, close it</source>
        <translation type="unfinished">{size} ang log ng tala: matagal nang binabasa ng ibang programa, isara ito</translation>
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
        <source>the run is open</source>
        <translation type="unfinished">bukas ang run</translation>
    </message>
    <message>
        <source>the scale</source>
        <translation type="unfinished">timbangan</translation>
    </message>
    <message>
        <source>the scale came back at zero and a load lay on the pan before: take everything off, then press the pan once with a hand</source>
        <translation type="unfinished">bumalik sa zero ang timbangan at may karga sa pan noon: alisin ang lahat, tapos pindutin ng kamay ang pan nang isang beses</translation>
    </message>
    <message>
        <source>the scale does not do that</source>
        <translation type="unfinished">hindi iyon ginagawa ng timbangan</translation>
    </message>
    <message>
        <source>the scale failed its check</source>
        <translation type="unfinished">bagsak ang timbangan sa tsek</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">bagsak ang timbangan sa tsek: ayusin, tapos suriin muli: {where}</translation>
    </message>
    <message>
        <source>the scale found no zero when it was switched on: empty the pan and switch it on again</source>
        <translation type="unfinished">walang nakitang zero ang timbangan nang buksan: alisan ng laman ang pan at buksan itong muli</translation>
    </message>
    <message>
        <source>the scale gave no answer, look at its display</source>
        <translation type="unfinished">hindi sumagot ang timbangan, tingnan ang display nito</translation>
    </message>
    <message>
        <source>the scale has just come back: its weights count in a moment</source>
        <translation type="unfinished">kababalik lang ng timbangan: bibilang ang timbang maya-maya</translation>
    </message>
    <message>
        <source>the scale is a recording: no bag is taken from it</source>
        <translation type="unfinished">rekording ang timbangan: walang bag na tinatanggap mula rito</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">walang sagot ang timbangan: tingnan ang kable at kuryente</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">walang ipinadala ang timbangan sa {code} nang {number} s: tingnan kung naka-on, ang kable at settings</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">walang ipinadala ang timbangan sa {code} nang {number} s: tingnan kung naka-on, ang kable at settings ({here})</translation>
    </message>
    <message>
        <source>the scale read high at some loads and low at others</source>
        <translation type="unfinished">mataas ang basa sa ilang karga at mababa sa iba</translation>
    </message>
    <message>
        <source>the scale read high: packs may be short</source>
        <translation type="unfinished">mataas ang basa ng timbangan: maaaring kulang ang mga bag</translation>
    </message>
    <message>
        <source>the scale read low: product was given away</source>
        <translation type="unfinished">mababa ang basa ng timbangan: sobra ang naibigay</translation>
    </message>
    <message>
        <source>the scale refused to set zero: empty the pan</source>
        <translation type="unfinished">ayaw mag-zero ng timbangan: alisan ng laman ang pan</translation>
    </message>
    <message>
        <source>the scale reports a tare error: empty the pan and clear the tare</source>
        <translation type="unfinished">may error sa tara ang timbangan: alisan ng laman ang pan at alisin ang tara</translation>
    </message>
    <message>
        <source>the scale reports a zero error: empty the pan and set it to zero</source>
        <translation type="unfinished">may error sa zero ang timbangan: alisan ng laman ang pan at i-zero ito</translation>
    </message>
    <message>
        <source>the scale says centre of zero and shows {mass}</source>
        <translation type="unfinished">gitna ng zero ang sabi ng timbangan pero {mass} ang ipinapakita</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set bits 7 and {same} for this port ({here}), or 8N1 on the scale</source>
        <translation type="unfinished">7 data bits na may {parity} ang ipinadadala ng timbangan: itakda ang bits 7 at {same} sa port na ito ({here}), o 8N1 sa timbangan</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set the same on the converter, or 8N1 on the scale</source>
        <translation type="unfinished">7 data bits na may {parity} ang ipinadadala ng timbangan: itakda rin ito sa converter, o 8N1 sa timbangan</translation>
    </message>
    <message>
        <source>the scale sent dashes instead of a weight</source>
        <translation type="unfinished">gitling ang ipinadala ng timbangan sa halip na bigat</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">net ang basa ng timbangan: alisin ang tara nito, ang station ang nagbabawas ng bag</translation>
    </message>
    <message>
        <source>the scale shows less than zero: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">mas mababa sa zero ang timbangan: tingnan kung tama ang lapat ng pan at walang umaangat dito, alisan ng laman at i-zero ang timbangan</translation>
    </message>
    <message>
        <source>the scale shows no weight</source>
        <translation type="unfinished">walang ipinapakitang bigat ang timbangan</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">naka-{unit} ang timbangan, {other} ang run: ibalik ang timbangan</translation>
    </message>
    <message>
        <source>the scale's line is not open</source>
        <translation type="unfinished">hindi bukas ang linya ng timbangan</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">huli na ang scan ng label: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} did not match</source>
        <translation type="unfinished">hindi tugma ang scan ng label {serial}</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">hindi tugma ang scan ng label {serial}: aayusin ng lead sa {where}</translation>
    </message>
    <message>
        <source>the settings are in {code}</source>
        <translation type="unfinished">nasa {code} ang settings</translation>
    </message>
    <message>
        <source>the settings before are in station.toml.before</source>
        <translation type="unfinished">nasa station.toml.before ang dating settings</translation>
    </message>
    <message>
        <source>the settings say so</source>
        <translation type="unfinished">ayon sa settings</translation>
    </message>
    <message>
        <source>the station ended before the label's fate was recorded</source>
        <translation type="unfinished">nagsara ang istasyon bago naitala ang nangyari sa label</translation>
    </message>
    <message>
        <source>the station fills no cases: customers.toml is missing</source>
        <translation type="unfinished">hindi nagkakahon ang istasyon: wala ang customers.toml</translation>
    </message>
    <message>
        <source>the station has a fault ({what}): call maintenance</source>
        <translation type="unfinished">may sira ang istasyon ({what}): tawagin ang maintenance</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">naiiwan ang station sa timbangan: alisin ang bag at maghintay</translation>
    </message>
    <message>
        <source>the station stood for long</source>
        <translation type="unfinished">matagal na nakahinto ang istasyon</translation>
    </message>
    <message>
        <source>the station writes and checkpoints through one, so it cannot happen here</source>
        <translation type="unfinished">iisa lang ang pinagsusulatan ng istasyon, kaya hindi ito mangyayari rito</translation>
    </message>
    <message>
        <source>the store is closed</source>
        <translation type="unfinished">sarado ang tala</translation>
    </message>
    <message>
        <source>the study has {study}, more than the tare {tare} taken off: raise the tare of {bag}</source>
        <translation type="unfinished">{study} ang tare study, higit sa ibinawas na tare {tare}: taasan ang tare ng {bag}</translation>
    </message>
    <message>
        <source>the test weights come to {total} for the load {load} of {mass}: at least {percent} of it are needed</source>
        <translation type="unfinished">umabot sa {total} ang panubok para sa kargang {load} na {mass}: kailangan ng {percent} man lang</translation>
    </message>
    <message>
        <source>the year {year} is not believed</source>
        <translation type="unfinished">hindi kapani-paniwala ang taong {year}</translation>
    </message>
    <message>
        <source>then its number, its verification and who answers for it</source>
        <translation type="unfinished">tapos ang numero, beripikasyon at kung sino ang mananagot</translation>
    </message>
    <message>
        <source>there is no run before: nothing is to be counted</source>
        <translation type="unfinished">walang naunang run: walang bibilangin</translation>
    </message>
    <message>
        <source>there is nothing to report</source>
        <translation type="unfinished">walang maiuulat</translation>
    </message>
    <message>
        <source>there is room again: {free} free</source>
        <translation type="unfinished">may espasyo na ulit: {free} ang libre</translation>
    </message>
    <message>
        <source>these lines are in {units}</source>
        <translation type="unfinished">nasa {units} ang mga linyang ito</translation>
    </message>
    <message>
        <source>they do not all end with the same control characters</source>
        <translation type="unfinished">hindi pare-pareho ang dulong control character</translation>
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
        <source>this bag in it</source>
        <translation type="unfinished">nandito ang bag na ito</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">hindi naitala at walang label ang bag na ito: {why}</translation>
    </message>
    <message>
        <source>this cannot be shelved, {what}: {answer}</source>
        <translation type="unfinished">hindi ito maipagpapaliban, {what}: {answer}</translation>
    </message>
    <message>
        <source>this hour: all {count} bags</source>
        <translation type="unfinished">oras na ito: lahat ng {count} bag</translation>
    </message>
    <message>
        <source>this hour: {count} of about {all} bags</source>
        <translation type="unfinished">oras na ito: {count} sa mga {all} bag</translation>
    </message>
    <message>
        <source>this one is destroyed</source>
        <translation type="unfinished">sira na ito</translation>
    </message>
    <message>
        <source>this user may not use it: add the user to the group that owns it (on most Linux systems dialout) and sign in again</source>
        <translation type="unfinished">hindi ito magagamit ng user na ito: idagdag siya sa grupong may-ari (dialout sa karamihan ng Linux) at mag-sign in muli</translation>
    </message>
    <message>
        <source>this version can damage a file that two connections write at once</source>
        <translation type="unfinished">maaaring masira ng bersyong ito ang file na sabay sinusulatan ng dalawa</translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished">oras</translation>
    </message>
    <message>
        <source>time, with a lot</source>
        <translation type="unfinished">oras, kasama ang lot</translation>
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
        <source>too warm</source>
        <translation type="unfinished">masyadong mainit</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation type="unfinished">dinagdagan</translation>
    </message>
    <message>
        <source>torn or creased</source>
        <translation type="unfinished">punit o lukot</translation>
    </message>
    <message>
        <source>torn up, seen by me</source>
        <translation type="unfinished">pinunit, nakita ko</translation>
    </message>
    <message>
        <source>touch an alarm first</source>
        <translation type="unfinished">pindutin muna ang alarm</translation>
    </message>
    <message>
        <source>touch and key in all three counts first</source>
        <translation type="unfinished">pindutin at ilagay muna ang tatlong bilang</translation>
    </message>
    <message>
        <source>touch the rejects it is about first</source>
        <translation type="unfinished">pindutin muna ang mga reject</translation>
    </message>
    <message>
        <source>touch to change</source>
        <translation type="unfinished">pindutin para palitan</translation>
    </message>
    <message>
        <source>touch when thrown out</source>
        <translation type="unfinished">pindutin kung tinanggal</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">pindutin muna kung sino ka</translation>
    </message>
    <message>
        <source>two lots overlap for long</source>
        <translation type="unfinished">matagal nang magkapatong ang dalawang lot</translation>
    </message>
    <message>
        <source>two people release: the second one is missing</source>
        <translation type="unfinished">dalawa ang magre-release: kulang ang ikalawa</translation>
    </message>
    <message>
        <source>two people sign</source>
        <translation type="unfinished">dalawa ang pipirma</translation>
    </message>
    <message>
        <source>typed below</source>
        <translation type="unfinished">i-type sa ibaba</translation>
    </message>
    <message>
        <source>under capacity</source>
        <translation type="unfinished">kulang sa kapasidad</translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished">yunit</translation>
    </message>
    <message>
        <source>unit {shown} is not in the description</source>
        <translation type="unfinished">wala sa paglalarawan ang yunit {shown}</translation>
    </message>
    <message>
        <source>unknown command</source>
        <translation type="unfinished">di-kilalang utos</translation>
    </message>
    <message>
        <source>until, such as 09:40</source>
        <translation type="unfinished">hanggang, gaya ng 09:40</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">taas</translation>
    </message>
    <message>
        <source>upper {mass}</source>
        <translation type="unfinished">pinakamataas {mass}</translation>
    </message>
    <message>
        <source>use by</source>
        <translation type="unfinished">gamitin hanggang</translation>
    </message>
    <message>
        <source>use by {day}</source>
        <translation type="unfinished">gamitin hanggang {day}</translation>
    </message>
    <message>
        <source>used to set the printer up</source>
        <translation type="unfinished">ginamit sa pag-set ng printer</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation type="unfinished">vacuum</translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished">halaga</translation>
    </message>
    <message>
        <source>value is {number}, {why}</source>
        <translation type="unfinished">halagang {number}: {why}</translation>
    </message>
    <message>
        <source>value is {shown}, not a number as described</source>
        <translation type="unfinished">halagang {shown}: hindi numerong inilarawan</translation>
    </message>
    <message>
        <source>verified {code}</source>
        <translation type="unfinished">beripikado {code}</translation>
    </message>
    <message>
        <source>verified {day}: give a day from {first} to today, {today}</source>
        <translation type="unfinished">beripikado {day}: araw mula {first} hanggang ngayon, {today}</translation>
    </message>
    <message>
        <source>verified {shown}: give the day as in {day}</source>
        <translation type="unfinished">beripikado {shown}: isulat ang araw gaya ng {day}</translation>
    </message>
    <message>
        <source>verified, as in 2026-03-31</source>
        <translation type="unfinished">beripikado, gaya ng 2026-03-31</translation>
    </message>
    <message>
        <source>version</source>
        <translation type="unfinished">bersyon</translation>
    </message>
    <message>
        <source>voided</source>
        <translation type="unfinished">pinawalang-bisa</translation>
    </message>
    <message>
        <source>wait until the scale shows a steady weight</source>
        <translation type="unfinished">hintaying maging steady ang timbangan</translation>
    </message>
    <message>
        <source>wait until the scale stands still: it is never set to zero in motion</source>
        <translation type="unfinished">hintaying tumigil ang timbangan: hindi ito zine-zero habang gumagalaw</translation>
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
        <source>was wrong, is set right</source>
        <translation type="unfinished">mali noon, itinama na</translation>
    </message>
    <message>
        <source>wash record</source>
        <translation type="unfinished">tala ng paghuhugas</translation>
    </message>
    <message>
        <source>washed where allergens change</source>
        <translation type="unfinished">hinugasan kung nag-iba ang allergen</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished">itinapon</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">magtimbang ng walang lamang bag sa loob ng {count} bag</translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation type="unfinished">timbangin</translation>
    </message>
    <message>
        <source>weigh the rest</source>
        <translation type="unfinished">timbangin ang tira</translation>
    </message>
    <message>
        <source>weighed again</source>
        <translation type="unfinished">tinimbang muli</translation>
    </message>
    <message>
        <source>weighed again, good</source>
        <translation type="unfinished">tinimbang muli, ayos</translation>
    </message>
    <message>
        <source>weighed now</source>
        <translation type="unfinished">timbang ngayon</translation>
    </message>
    <message>
        <source>weight is {shown}, not a number of the standard's form</source>
        <translation type="unfinished">timbang na {shown}: hindi ayon sa pamantayan</translation>
    </message>
    <message>
        <source>weight not displayed</source>
        <translation type="unfinished">hindi ipinakita ang timbang</translation>
    </message>
    <message>
        <source>weighted average {mean}</source>
        <translation type="unfinished">weighted average {mean}</translation>
    </message>
    <message>
        <source>weights arrive and are used</source>
        <translation type="unfinished">dumarating at ginagamit ang mga bigat</translation>
    </message>
    <message>
        <source>weights come {number} s apart, and one counts for {most} s: set the scale, or the converter on its line, to send more often and at once</source>
        <translation type="unfinished">dumarating ang timbang bawat {number} s, at may bisa nang {most} s: itakda ang timbangan, o ang converter sa linya nito, na magpadala nang mas madalas at agad</translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished">ano</translation>
    </message>
    <message>
        <source>what is open</source>
        <translation type="unfinished">nakabinbin</translation>
    </message>
    <message>
        <source>what the station sends comes back in front of the answers: switch the echo of the converter or of the scale off</source>
        <translation type="unfinished">bumabalik ang ipinadadala ng istasyon bago ang mga sagot: patayin ang echo ng converter o ng timbangan</translation>
    </message>
    <message>
        <source>which label?</source>
        <translation type="unfinished">aling label?</translation>
    </message>
    <message>
        <source>which {what}? Scan or type it first</source>
        <translation type="unfinished">aling {what}? I-scan o i-type muna</translation>
    </message>
    <message>
        <source>who decides? Choose a name first</source>
        <translation type="unfinished">sino ang magpapasya? Pumili muna ng pangalan</translation>
    </message>
    <message>
        <source>who says so? Touch WHO and choose your name</source>
        <translation type="unfinished">sino ang nagsasabi? Pindutin ang SINO at piliin ang pangalan</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">buo</translation>
    </message>
    <message>
        <source>whole error</source>
        <translation type="unfinished">buong mali</translation>
    </message>
    <message>
        <source>whole run: all {count} bags</source>
        <translation type="unfinished">buong run: lahat ng {count} bag</translation>
    </message>
    <message>
        <source>whole run: {count} of about {all} bags</source>
        <translation type="unfinished">buong run: {count} sa mga {all} bag</translation>
    </message>
    <message>
        <source>whom does it go to? Choose a customer</source>
        <translation type="unfinished">para kanino? Pumili ng customer</translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished">bakit</translation>
    </message>
    <message>
        <source>why it differs: scan or type</source>
        <translation type="unfinished">bakit naiba: i-scan o i-type</translation>
    </message>
    <message>
        <source>why it may go, or must be dumped</source>
        <translation type="unfinished">bakit puwedeng umalis, o itapon</translation>
    </message>
    <message>
        <source>why: scan or type the reason</source>
        <translation type="unfinished">bakit: i-scan o i-type</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation type="unfinished">punasan</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">punasan ang pan, saka i-zero</translation>
    </message>
    <message>
        <source>with a witness</source>
        <translation type="unfinished">may saksi</translation>
    </message>
    <message>
        <source>with {customer}</source>
        <translation type="unfinished">nasa {customer}</translation>
    </message>
    <message>
        <source>within both bounds</source>
        <translation type="unfinished">nasa loob ng dalawang limit</translation>
    </message>
    <message>
        <source>without it</source>
        <translation type="unfinished">kung wala ito</translation>
    </message>
    <message>
        <source>witness {who}</source>
        <translation type="unfinished">saksi {who}</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">gamitin ang screen na ito</translation>
    </message>
    <message>
        <source>wrong date</source>
        <translation type="unfinished">maling petsa</translation>
    </message>
    <message>
        <source>wrong label</source>
        <translation type="unfinished">maling label</translation>
    </message>
    <message>
        <source>wrong lots</source>
        <translation type="unfinished">maling lot</translation>
    </message>
    <message>
        <source>wrong roll taken out</source>
        <translation type="unfinished">inalis ang maling rolyo</translation>
    </message>
    <message>
        <source>wrong text</source>
        <translation type="unfinished">maling teksto</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">maling timbang</translation>
    </message>
    <message>
        <source>you approve</source>
        <translation type="unfinished">inaaprubahan mo</translation>
    </message>
    <message>
        <source>zero error</source>
        <translation type="unfinished">mali sa zero</translation>
    </message>
    <message>
        <source>{begin_code} to {end_code}</source>
        <translation type="unfinished">{begin_code} hanggang {end_code}</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: FAILS</source>
        <translation type="unfinished">{case}: mean {mean}, {count} ang mababa sa T1: BAGSAK</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: passes</source>
        <translation type="unfinished">{case}: mean {mean}, {count} ang mababa sa T1: pasado</translation>
    </message>
    <message>
        <source>{code} is at {number}</source>
        <translation type="unfinished">nasa {number} ang {code}</translation>
    </message>
    <message>
        <source>{code} is not known: receive it first</source>
        <translation type="unfinished">hindi kilala ang {code}: tanggapin muna</translation>
    </message>
    <message>
        <source>{code} {count} of {whole}</source>
        <translation type="unfinished">{code} {count} ng {whole}</translation>
    </message>
    <message>
        <source>{count} BAGS HELD OR OUT</source>
        <translation type="unfinished">{count} BAG NA HOLD O LABAS</translation>
    </message>
    <message>
        <source>{count} bag is {what}.</source>
        <translation type="unfinished">{count} bag ang {what}.</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} bag</translation>
    </message>
    <message>
        <source>{count} bags an hour</source>
        <translation type="unfinished">{count} bag bawat oras</translation>
    </message>
    <message>
        <source>{count} bags are dumped: they lie in the reject bin. Release the empty hold.</source>
        <translation type="unfinished">{count} bag ang itinapon: nasa reject bin. I-release ang walang lamang hold.</translation>
    </message>
    <message>
        <source>{count} bags are held</source>
        <translation type="unfinished">{count} bag ang naka-hold</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} bag ang naka-hold matapos bumagsak sa tsek: QA ang magpapasya: {where}</translation>
    </message>
    <message>
        <source>{count} bags are in the bin, {expected} by the record: say why they differ</source>
        <translation type="unfinished">{count} bag sa bin, {expected} sa tala: sabihin kung bakit naiba</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} bag na ang tapos: ang lead ang magsasara ng run</translation>
    </message>
    <message>
        <source>{count} bags are released.</source>
        <translation type="unfinished">{count} bag ang na-release.</translation>
    </message>
    <message>
        <source>{count} bags are {what}.</source>
        <translation type="unfinished">{count} bag ang {what}.</translation>
    </message>
    <message>
        <source>{count} bags from {begin} to {end} are held: {why}.</source>
        <translation type="unfinished">{count} bag mula {begin} hanggang {end} ang naka-hold: {why}.</translation>
    </message>
    <message>
        <source>{count} bags held or out</source>
        <translation type="unfinished">{count} bag na naka-hold o labas</translation>
    </message>
    <message>
        <source>{count} bags held, packed after {begin} until {end}</source>
        <translation type="unfinished">{count} bag ang naka-hold, inimpake mula {begin} hanggang {end}</translation>
    </message>
    <message>
        <source>{count} bags in the batch; {plan}</source>
        <translation type="unfinished">{count} bag sa batch; {plan}</translation>
    </message>
    <message>
        <source>{count} bags lie in the bin by the record</source>
        <translation type="unfinished">{count} bag sa bin ayon sa tala</translation>
    </message>
    <message>
        <source>{count} bags of one run</source>
        <translation type="unfinished">{count} bag ng isang run</translation>
    </message>
    <message>
        <source>{count} bags weigh less than {mass} in the mean</source>
        <translation type="unfinished">mas mababa sa {mass} ang mean ng {count} bag</translation>
    </message>
    <message>
        <source>{count} bags {more} than recorded: count again, or say why</source>
        <translation type="unfinished">{more} ng {count} bag sa nakatala: bilangin muli, o sabihin kung bakit</translation>
    </message>
    <message>
        <source>{count} case</source>
        <translation type="unfinished">{count} kahon</translation>
    </message>
    <message>
        <source>{count} cases</source>
        <translation type="unfinished">{count} kahon</translation>
    </message>
    <message>
        <source>{count} cases and pallets stand here</source>
        <translation type="unfinished">{count} kahon at pallet dito</translation>
    </message>
    <message>
        <source>{count} characters, allowed are {least} to {most}</source>
        <translation type="unfinished">{count} karakter, puwede ang {least} hanggang {most}</translation>
    </message>
    <message>
        <source>{count} characters, at most {most}</source>
        <translation type="unfinished">{count} karakter, hanggang {most} lang</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation type="unfinished">{count} araw</translation>
    </message>
    <message>
        <source>{count} days ago</source>
        <translation type="unfinished">{count} araw na</translation>
    </message>
    <message>
        <source>{count} fills are too few for a proposal: weigh {least} or more</source>
        <translation type="unfinished">kulang ang {count} laman para magmungkahi: magtimbang ng {least} pataas</translation>
    </message>
    <message>
        <source>{count} held or set aside</source>
        <translation type="unfinished">{count} hold o inihiwalay</translation>
    </message>
    <message>
        <source>{count} issued, {used} used so far</source>
        <translation type="unfinished">{count} inilabas, {used} na ang nagamit</translation>
    </message>
    <message>
        <source>{count} kept.</source>
        <translation type="unfinished">{count} ang naitago.</translation>
    </message>
    <message>
        <source>{count} labels</source>
        <translation type="unfinished">{count} label</translation>
    </message>
    <message>
        <source>{count} labels are in doubt</source>
        <translation type="unfinished">{count} label ang may duda</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} label ang hindi tiyak, una {serial}: sagutin sa {where}</translation>
    </message>
    <message>
        <source>{count} labels to answer for: look at each bag</source>
        <translation type="unfinished">{count} label ang sasagutin: tingnan ang bawat bag</translation>
    </message>
    <message>
        <source>{count} lines are weights, {number} are not: look at each of them</source>
        <translation type="unfinished">{count} linya ang timbang, {number} ang hindi: tingnan ang bawat isa</translation>
    </message>
    <message>
        <source>{count} minutes</source>
        <translation type="unfinished">{count} minuto</translation>
    </message>
    <message>
        <source>{count} more windows wait.</source>
        <translation type="unfinished">{count} pang yugto ang naghihintay.</translation>
    </message>
    <message>
        <source>{count} of its bags are held</source>
        <translation type="unfinished">{count} sa mga bag nito ang naka-hold</translation>
    </message>
    <message>
        <source>{count} of {draws} rehearsed samples of the stored bags pass (failed: mean {mean}, T1 {t1}, T2 {t2})</source>
        <translation type="unfinished">{count} sa {draws} na rehearsal sample ang pasado (bagsak: mean {mean}, T1 {t1}, T2 {t2})</translation>
    </message>
    <message>
        <source>{count} packs are weighed already, more than the {lot} expected</source>
        <translation type="unfinished">{count} bag na ang natimbang, higit sa inaasahang {lot}</translation>
    </message>
    <message>
        <source>{count} rejects are undecided</source>
        <translation type="unfinished">{count} reject ang hindi pa napapasyahan</translation>
    </message>
    <message>
        <source>{count} rejects of {day} wait for a decision</source>
        <translation type="unfinished">{count} reject ng {day} ang naghihintay ng pasya</translation>
    </message>
    <message>
        <source>{count} runs were purged on {day}, export {folder}</source>
        <translation type="unfinished">{count} run ang binura noong {day}, kopya {folder}</translation>
    </message>
    <message>
        <source>{count} runs were purged, the last on {day}, export {folder}</source>
        <translation type="unfinished">{count} run ang binura, ang huli noong {day}, kopya {folder}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} inihiwalay</translation>
    </message>
    <message>
        <source>{count} stops</source>
        <translation type="unfinished">{count} hinto</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} kahina-hinalang bag ang naka-hold: QA o lead ang magpapasya: {where}</translation>
    </message>
    <message>
        <source>{count} things are open</source>
        <translation type="unfinished">{count} ang nakabinbin</translation>
    </message>
    <message>
        <source>{count} things are open, first: {what}. Settle them, or write why the day is signed all the same</source>
        <translation type="unfinished">{count} ang nakabinbin, una: {what}. Ayusin, o isulat kung bakit pipirmahan pa rin ang araw</translation>
    </message>
    <message>
        <source>{count} things happened on {day}</source>
        <translation type="unfinished">{count} ang nangyari noong {day}</translation>
    </message>
    <message>
        <source>{count} things open, not signed</source>
        <translation type="unfinished">{count} ang nakabinbin, walang pirma</translation>
    </message>
    <message>
        <source>{count} unit</source>
        <translation type="unfinished">{count} yunit</translation>
    </message>
    <message>
        <source>{count} units</source>
        <translation type="unfinished">{count} yunit</translation>
    </message>
    <message>
        <source>{count} with customers</source>
        <translation type="unfinished">{count} nasa customer</translation>
    </message>
    <message>
        <source>{count} {code} free</source>
        <translation type="unfinished">{count} {code} libre</translation>
    </message>
    <message>
        <source>{day} is not reviewed and signed</source>
        <translation type="unfinished">hindi pa nasuri at napirmahan ang {day}</translation>
    </message>
    <message>
        <source>{day} is reviewed and signed.</source>
        <translation type="unfinished">Nasuri at napirmahan ang {day}.</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects, {filter}; {open} open</source>
        <translation type="unfinished">{day}: {shown} sa {all} reject, {filter}; {open} bukas</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects; {open} open</source>
        <translation type="unfinished">{day}: {shown} sa {all} reject; {open} bukas</translation>
    </message>
    <message>
        <source>{digits} is no day: give day and month, like 2411 for 24 November</source>
        <translation type="unfinished">hindi araw ang {digits}: ilagay ang araw at buwan, gaya ng 2411 para sa Nobyembre 24</translation>
    </message>
    <message>
        <source>{error}, beyond {limit}</source>
        <translation type="unfinished">{error}, lampas sa {limit}</translation>
    </message>
    <message>
        <source>{error}, may be {limit}</source>
        <translation type="unfinished">{error}, puwede ang {limit}</translation>
    </message>
    <message>
        <source>{field} is read as {shown}, not {due}</source>
        <translation type="unfinished">{field} ay binasa bilang {shown}, hindi {due}</translation>
    </message>
    <message>
        <source>{field} is {shown}, allowed is {allowed}</source>
        <translation type="unfinished">{field} ay {shown}, puwede ang {allowed}</translation>
    </message>
    <message>
        <source>{first} and {count} more</source>
        <translation type="unfinished">{first} at {count} pa</translation>
    </message>
    <message>
        <source>{first}, and {count} more</source>
        <translation type="unfinished">{first}, at {count} pa</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} bag, hanggang {most} mababa sa T1 ({clause})</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, then {second} more, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} bag, tapos {second} pa, hanggang {most} mababa sa T1 ({clause})</translation>
    </message>
    <message>
        <source>{last} comes before {first}: give the first serial first</source>
        <translation type="unfinished">nauuna ang {last} sa {first}: ibigay muna ang unang serial</translation>
    </message>
    <message>
        <source>{mass} DOES NOT FIT ({against})</source>
        <translation type="unfinished">{mass} HINDI TUGMA ({against})</translation>
    </message>
    <message>
        <source>{mass} FITS ({against})</source>
        <translation type="unfinished">{mass} TUGMA ({against})</translation>
    </message>
    <message>
        <source>{mass} a bag</source>
        <translation type="unfinished">{mass} bawat bag</translation>
    </message>
    <message>
        <source>{mass} g a bag</source>
        <translation type="unfinished">{mass} g bawat bag</translation>
    </message>
    <message>
        <source>{mass} is below what the scale weighs: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">{mass} ay mas mababa sa kaya ng timbangan: tingnan kung tama ang lapat ng pan at walang umaangat dito, alisan ng laman at i-zero ang timbangan</translation>
    </message>
    <message>
        <source>{mass} is in high resolution, which is not the indication</source>
        <translation type="unfinished">nasa mataas na resolusyon ang {mass}, hindi ito ang pinapakitang bigat</translation>
    </message>
    <message>
        <source>{mass} is more than the scale weighs, {most}</source>
        <translation type="unfinished">{mass} ay higit sa kaya ng timbangan, {most}</translation>
    </message>
    <message>
        <source>{mass} is not a multiple of {interval}</source>
        <translation type="unfinished">hindi multiple ng {interval} ang {mass}</translation>
    </message>
    <message>
        <source>{mass} is the tare, not the load</source>
        <translation type="unfinished">{mass} ang tara, hindi ang karga</translation>
    </message>
    <message>
        <source>{mass} now</source>
        <translation type="unfinished">{mass} ngayon</translation>
    </message>
    <message>
        <source>{mass} proposed</source>
        <translation type="unfinished">{mass} mungkahi</translation>
    </message>
    <message>
        <source>{mass} this run</source>
        <translation type="unfinished">{mass} sa run na ito</translation>
    </message>
    <message>
        <source>{mass} this run, {money} in money</source>
        <translation type="unfinished">{mass} sa run na ito, {money} sa pera</translation>
    </message>
    <message>
        <source>{mass}: {count} bags, {percent} %</source>
        <translation type="unfinished">{mass}: {count} bag, {percent} %</translation>
    </message>
    <message>
        <source>{mean} OUTSIDE {least} to {most}</source>
        <translation type="unfinished">{mean} LABAS sa {least} hanggang {most}</translation>
    </message>
    <message>
        <source>{mean} within {least} to {most}</source>
        <translation type="unfinished">{mean} loob ng {least} hanggang {most}</translation>
    </message>
    <message>
        <source>{name} not installed</source>
        <translation type="unfinished">hindi naka-install ang {name}</translation>
    </message>
    <message>
        <source>{name} serial {code}</source>
        <translation type="unfinished">{name} serial {code}</translation>
    </message>
    <message>
        <source>{name} stands for {first} and for {second}: look at the case and keep one</source>
        <translation type="unfinished">{name}: {first} at {second} din: tingnan ang kahon at magtira ng isa</translation>
    </message>
    <message>
        <source>{name} waits: a bag is on the pan</source>
        <translation type="unfinished">naghihintay ang {name}: may bag sa pan</translation>
    </message>
    <message>
        <source>{name} would change what the bags of the open run weigh: end the run</source>
        <translation type="unfinished">babaguhin ng {name} ang timbang ng bukas na run: tapusin ang run</translation>
    </message>
    <message>
        <source>{name}: mean {mean}, spread {spread}</source>
        <translation type="unfinished">{name}: mean {mean}, kalat {spread}</translation>
    </message>
    <message>
        <source>{name}: {code} from {who}</source>
        <translation type="unfinished">{name}: {code} mula {who}</translation>
    </message>
    <message>
        <source>{number} % full</source>
        <translation type="unfinished">{number} % puno</translation>
    </message>
    <message>
        <source>{number} % of nominal</source>
        <translation type="unfinished">{number} % ng nominal</translation>
    </message>
    <message>
        <source>{number} April {count}</source>
        <translation type="unfinished">Abril {number}, {count}</translation>
    </message>
    <message>
        <source>{number} August {count}</source>
        <translation type="unfinished">Agosto {number}, {count}</translation>
    </message>
    <message>
        <source>{number} December {count}</source>
        <translation type="unfinished">Disyembre {number}, {count}</translation>
    </message>
    <message>
        <source>{number} February {count}</source>
        <translation type="unfinished">Pebrero {number}, {count}</translation>
    </message>
    <message>
        <source>{number} January {count}</source>
        <translation type="unfinished">Enero {number}, {count}</translation>
    </message>
    <message>
        <source>{number} July {count}</source>
        <translation type="unfinished">Hulyo {number}, {count}</translation>
    </message>
    <message>
        <source>{number} June {count}</source>
        <translation type="unfinished">Hunyo {number}, {count}</translation>
    </message>
    <message>
        <source>{number} March {count}</source>
        <translation type="unfinished">Marso {number}, {count}</translation>
    </message>
    <message>
        <source>{number} May {count}</source>
        <translation type="unfinished">Mayo {number}, {count}</translation>
    </message>
    <message>
        <source>{number} November {count}</source>
        <translation type="unfinished">Nobyembre {number}, {count}</translation>
    </message>
    <message>
        <source>{number} October {count}</source>
        <translation type="unfinished">Oktubre {number}, {count}</translation>
    </message>
    <message>
        <source>{number} September {count}</source>
        <translation type="unfinished">Setyembre {number}, {count}</translation>
    </message>
    <message>
        <source>{number} bags</source>
        <translation type="unfinished">{number} bag</translation>
    </message>
    <message>
        <source>{number} failed</source>
        <translation type="unfinished">{number} bumagsak</translation>
    </message>
    <message>
        <source>{number} held</source>
        <translation type="unfinished">{number} hold</translation>
    </message>
    <message>
        <source>{number} in money</source>
        <translation type="unfinished">{number} sa pera</translation>
    </message>
    <message>
        <source>{number} missing</source>
        <translation type="unfinished">kulang ng {number}</translation>
    </message>
    <message>
        <source>{number} of {whole}</source>
        <translation type="unfinished">{number} sa {whole}</translation>
    </message>
    <message>
        <source>{number} of {whole} allowed</source>
        <translation type="unfinished">{number} sa {whole} na puwede</translation>
    </message>
    <message>
        <source>{number} of {whole} bags</source>
        <translation type="unfinished">{number} sa {whole} bag</translation>
    </message>
    <message>
        <source>{number} of {whole}: {what}</source>
        <translation type="unfinished">{number} sa {whole}: {what}</translation>
    </message>
    <message>
        <source>{number} to {count} days</source>
        <translation type="unfinished">{number} hanggang {count} araw</translation>
    </message>
    <message>
        <source>{number} to {whole} {unit}</source>
        <translation type="unfinished">{number} hanggang {whole} {unit}</translation>
    </message>
    <message>
        <source>{number} too many</source>
        <translation type="unfinished">sobra ng {number}</translation>
    </message>
    <message>
        <source>{picked} picked, {count} weighed</source>
        <translation type="unfinished">{picked} napili, {count} natimbang</translation>
    </message>
    <message>
        <source>{product}, version {version}</source>
        <translation type="unfinished">{product}, bersyon {version}</translation>
    </message>
    <message>
        <source>{product}, weighed {time}</source>
        <translation type="unfinished">{product}, tinimbang {time}</translation>
    </message>
    <message>
        <source>{product}: {mass} kg net</source>
        <translation type="unfinished">{product}: {mass} kg net</translation>
    </message>
    <message>
        <source>{result} by {code}</source>
        <translation type="unfinished">{result} ni {code}</translation>
    </message>
    <message>
        <source>{seconds} s: {frames} weights, {garbage} not understood ({percent} %, 5 % are allowed), {bytes} bytes</source>
        <translation type="unfinished">{seconds} s: {frames} bigat, {garbage} hindi naintindihan ({percent} %, puwede ang 5 %), {bytes} byte</translation>
    </message>
    <message>
        <source>{serial} must say</source>
        <translation type="unfinished">{serial}: dapat nakasulat</translation>
    </message>
    <message>
        <source>{serial}: as recorded</source>
        <translation type="unfinished">{serial}: ayon sa tala</translation>
    </message>
    <message>
        <source>{sscc} had its use-by date on {day}: it must not leave</source>
        <translation type="unfinished">{sscc}: use-by noong {day}: hindi dapat umalis</translation>
    </message>
    <message>
        <source>{sscc} is a pallet: a pallet holds cases</source>
        <translation type="unfinished">pallet ang {sscc}: kahon ang laman ng pallet</translation>
    </message>
    <message>
        <source>{sscc} is gone with {shipment}</source>
        <translation type="unfinished">umalis na ang {sscc} kasama ng {shipment}</translation>
    </message>
    <message>
        <source>{sscc} is on pallet {pallet}</source>
        <translation type="unfinished">nasa pallet {pallet} ang {sscc}</translation>
    </message>
    <message>
        <source>{sscc} is undone</source>
        <translation type="unfinished">na-undo ang {sscc}</translation>
    </message>
    <message>
        <source>{sscc} is undone.</source>
        <translation type="unfinished">Na-undo ang {sscc}.</translation>
    </message>
    <message>
        <source>{text} is no figure: key in digits, such as 3.4</source>
        <translation type="unfinished">hindi bilang ang {text}: ilagay gaya ng 3.4</translation>
    </message>
    <message>
        <source>{text} is no serial of a bag, such as A1-7K-000042</source>
        <translation type="unfinished">hindi serial ng bag ang {text}, gaya ng A1-7K-000042</translation>
    </message>
    <message>
        <source>{text} is no time: write {form}</source>
        <translation type="unfinished">hindi oras ang {text}: isulat {form}</translation>
    </message>
    <message>
        <source>{time}: {mass}; mean so far {mean}</source>
        <translation type="unfinished">{time}: {mass}; mean sa ngayon {mean}</translation>
    </message>
    <message>
        <source>{value} cannot be: allowed is {low} to {high}</source>
        <translation type="unfinished">hindi puwede ang {value}: {low} hanggang {high}</translation>
    </message>
    <message>
        <source>{what} by {code}: {why}</source>
        <translation type="unfinished">{what} ni {code}: {why}</translation>
    </message>
    <message>
        <source>{what} cannot be released: {why}</source>
        <translation type="unfinished">hindi mai-release ang {what}: {why}</translation>
    </message>
    <message>
        <source>{what} failed its check</source>
        <translation type="unfinished">bagsak sa tsek ang {what}</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">bagsak sa tsek ang {what}: ayusin, tapos suriin muli: {where}</translation>
    </message>
    <message>
        <source>{what} failed its last check</source>
        <translation type="unfinished">bagsak ang {what} sa huling tsek</translation>
    </message>
    <message>
        <source>{what} failed: write what is done about it before it is recorded</source>
        <translation type="unfinished">bagsak ang {what}: isulat ang ginawa bago itala</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} sa loob ng {minutes} min</translation>
    </message>
    <message>
        <source>{what} is on record.</source>
        <translation type="unfinished">Naitala ang {what}.</translation>
    </message>
    <message>
        <source>{what} keeps no bag any more: release the hold</source>
        <translation type="unfinished">wala nang hawak na bag ang {what}: i-release ang hold</translation>
    </message>
    <message>
        <source>{what} lost on {code}</source>
        <translation type="unfinished">{what}: nawala sa {code}</translation>
    </message>
    <message>
        <source>{what} needs {thing}</source>
        <translation type="unfinished">kailangan ng {what} ang {thing}</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} ngayon na</translation>
    </message>
    <message>
        <source>{what} was released already</source>
        <translation type="unfinished">na-release na ang {what}</translation>
    </message>
    <message>
        <source>{what} was scanned already</source>
        <translation type="unfinished">na-scan na ang {what}</translation>
    </message>
    <message>
        <source>{what} was {usual}, now {seen}: is this still the same product?</source>
        <translation type="unfinished">{what}: dati {usual}, ngayon {seen}: parehong produkto pa ba ito?</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: tingnan ang petsa at oras, tapos pumirma sa {where}</translation>
    </message>
    <message>
        <source>{what}: no checks in the settings</source>
        <translation type="unfinished">{what}: walang tsek sa settings</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">hindi puwedeng pirmahan ni {who}</translation>
    </message>
    <message>
        <source>{who} cannot witness a decision of {other}: choose another person</source>
        <translation type="unfinished">hindi puwedeng saksi si {who} sa pasya ni {other}: pumili ng iba</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">hindi pumirma si {who}: para {act}, kailangan ng PIN o badge</translation>
    </message>
    <message>
        <source>{who} does not lead: the lead signs first</source>
        <translation type="unfinished">hindi lead si {who}: ang lead ang unang pipirma</translation>
    </message>
    <message>
        <source>{who} has no PIN: the manager sets one, station people pin {id}</source>
        <translation type="unfinished">walang PIN si {who}: ang manager ang magtatakda, station people pin {id}</translation>
    </message>
    <message>
        <source>{who} is nobody in people.toml</source>
        <translation type="unfinished">wala si {who} sa people.toml</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">hindi puwedeng pumirma rito si {who}</translation>
    </message>
    <message>
        <source>{who} signs first: another person signs second</source>
        <translation type="unfinished">si {who} ang unang pipirma: iba ang ikalawa</translation>
    </message>
    <message>
        <source>{why}, after a page was out</source>
        <translation type="unfinished">{why}, pagkalabas ng isang pahina</translation>
    </message>
    <message>
        <source>{why}, after printing may have begun</source>
        <translation type="unfinished">{why}, pagkatapos na maaaring nagsimula ang pag-print</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: dalawang tao ang mag-aapruba ng label sa {where}</translation>
    </message>
</context>
</TS>
