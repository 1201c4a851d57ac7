<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>% of nominal</source>
        <translation type="unfinished">% del nominal</translation>
    </message>
    <message>
        <source>% of the lot in bags</source>
        <translation type="unfinished">% del lote en bolsas</translation>
    </message>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 PRODUCTO</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation type="unfinished">1 bolsa</translation>
    </message>
    <message>
        <source>1 run was purged on {day}, export {folder}</source>
        <translation type="unfinished">1 tanda borrada el {day}, exportación {folder}</translation>
    </message>
    <message>
        <source>100 % together</source>
        <translation type="unfinished">100 % en total</translation>
    </message>
    <message>
        <source>2 LOTS</source>
        <translation type="unfinished">2 LOTES</translation>
    </message>
    <message>
        <source>3 CREW</source>
        <translation type="unfinished">3 EQUIPO</translation>
    </message>
    <message>
        <source>A code was scanned, but no field waits for one: open the page it is for</source>
        <translation type="unfinished">Se leyó un código, pero ningún campo lo espera: abra su página</translation>
    </message>
    <message>
        <source>A copy of {sscc} comes.</source>
        <translation type="unfinished">Sale una copia de {sscc}.</translation>
    </message>
    <message>
        <source>A manager approves a proposal as a new version of the product.</source>
        <translation type="unfinished">Un gerente aprueba la propuesta como versión nueva del producto.</translation>
    </message>
    <message>
        <source>A new scale: connect it, touch LOOK, then check it with the test weights.</source>
        <translation type="unfinished">Báscula nueva: conéctela, toque MIRAR y contrólela con las pesas.</translation>
    </message>
    <message>
        <source>A scale that is to be asked needs its request above.</source>
        <translation type="unfinished">Una báscula que espera preguntas necesita su pregunta arriba.</translation>
    </message>
    <message>
        <source>ADD</source>
        <translation type="unfinished">AÑADA</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">ALARMAS</translation>
    </message>
    <message>
        <source>ALL</source>
        <translation type="unfinished">TODOS</translation>
    </message>
    <message>
        <source>ALL DAYS</source>
        <translation type="unfinished">TODOS LOS DÍAS</translation>
    </message>
    <message>
        <source>ALL WEIGHED</source>
        <translation type="unfinished">TODAS PESADAS</translation>
    </message>
    <message>
        <source>APPLIED</source>
        <translation type="unfinished">APLICADA</translation>
    </message>
    <message>
        <source>APPROVE</source>
        <translation type="unfinished">APROBAR</translation>
    </message>
    <message>
        <source>ASKED</source>
        <translation type="unfinished">PEDIDO</translation>
    </message>
    <message>
        <source>AT REST</source>
        <translation type="unfinished">EN REPOSO</translation>
    </message>
    <message>
        <source>ATTEND</source>
        <translation type="unfinished">ATENDER</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation type="unfinished">Sumando …</translation>
    </message>
    <message>
        <source>An open run keeps the dates it was opened with.</source>
        <translation type="unfinished">Una tanda abierta conserva las fechas con que se abrió.</translation>
    </message>
    <message>
        <source>Arrived at</source>
        <translation type="unfinished">Llegó a</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation type="unfinished">VOLVER</translation>
    </message>
    <message>
        <source>BAG AGAIN</source>
        <translation type="unfinished">REPETIR BOLSA</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">PONGA BOLSA</translation>
    </message>
    <message>
        <source>BAGS</source>
        <translation type="unfinished">BOLSAS</translation>
    </message>
    <message>
        <source>BEFORE</source>
        <translation type="unfinished">ANTES</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">CUBO</translation>
    </message>
    <message>
        <source>BLEND LOT</source>
        <translation type="unfinished">LOTE DE MEZCLA</translation>
    </message>
    <message>
        <source>BLENDS</source>
        <translation type="unfinished">MEZCLAS</translation>
    </message>
    <message>
        <source>BLOCKED {count}</source>
        <translation type="unfinished">BLOQUEADO {count}</translation>
    </message>
    <message>
        <source>BY DAY</source>
        <translation type="unfinished">POR DÍA</translation>
    </message>
    <message>
        <source>BY HOUR</source>
        <translation type="unfinished">POR HORA</translation>
    </message>
    <message>
        <source>BY POSITION</source>
        <translation type="unfinished">POR PUESTO</translation>
    </message>
    <message>
        <source>BY PRODUCT</source>
        <translation type="unfinished">POR PRODUCTO</translation>
    </message>
    <message>
        <source>Bag {serial} and {count} around it</source>
        <translation type="unfinished">Bolsa {serial} y {count} alrededor</translation>
    </message>
    <message>
        <source>Bag {serial} was not set aside: LOOK UP shows it.</source>
        <translation type="unfinished">La bolsa {serial} no se apartó: BUSCAR la muestra.</translation>
    </message>
    <message>
        <source>Bags since the last good check of the scale before are covered by no check of it any more: QA decides about them.</source>
        <translation type="unfinished">Las bolsas desde el último control bueno de la báscula anterior ya no están cubiertas: Calidad decide.</translation>
    </message>
    <message>
        <source>Below T1</source>
        <translation type="unfinished">Bajo T1</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">Consumir preferentemente antes del</translation>
    </message>
    <message>
        <source>Best before {day}</source>
        <translation type="unfinished">Consumo preferente: {day}</translation>
    </message>
    <message>
        <source>By {what}</source>
        <translation type="unfinished">Por {what}</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">PIDA AYUDA</translation>
    </message>
    <message>
        <source>CAME BACK</source>
        <translation type="unfinished">VOLVIÓ</translation>
    </message>
    <message>
        <source>CASE</source>
        <translation type="unfinished">CAJA</translation>
    </message>
    <message>
        <source>CASES</source>
        <translation type="unfinished">CAJAS</translation>
    </message>
    <message>
        <source>CHANGE</source>
        <translation type="unfinished">CAMBIO</translation>
    </message>
    <message>
        <source>CHANGE, CLOCK</source>
        <translation type="unfinished">CAMBIO, RELOJ</translation>
    </message>
    <message>
        <source>CHECK</source>
        <translation type="unfinished">SUMA</translation>
    </message>
    <message>
        <source>CHECK IT</source>
        <translation type="unfinished">CONTROLARLA</translation>
    </message>
    <message>
        <source>CHECK THE SCALE</source>
        <translation type="unfinished">CONTROLE LA BÁSCULA</translation>
    </message>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished">CONTROLES</translation>
    </message>
    <message>
        <source>CHECKS (F4) settles it.</source>
        <translation type="unfinished">CONTROLES (F4) lo resuelve.</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">BORRAR</translation>
    </message>
    <message>
        <source>CLEAR LINE</source>
        <translation type="unfinished">DESPEJE</translation>
    </message>
    <message>
        <source>CLEAR TARE</source>
        <translation type="unfinished">QUITAR TARA</translation>
    </message>
    <message>
        <source>CLOCK</source>
        <translation type="unfinished">RELOJ</translation>
    </message>
    <message>
        <source>CLOSE PALLET</source>
        <translation type="unfinished">CERRAR PALÉ</translation>
    </message>
    <message>
        <source>COOLER TEMPERATURE</source>
        <translation type="unfinished">TEMPERATURA DE CÁMARA</translation>
    </message>
    <message>
        <source>COUNT</source>
        <translation type="unfinished">CONTAR</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">CONTADO</translation>
    </message>
    <message>
        <source>CUSTOMERS</source>
        <translation type="unfinished">CLIENTES</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">CORTADO EL</translation>
    </message>
    <message>
        <source>Came</source>
        <translation type="unfinished">Llegaron</translation>
    </message>
    <message>
        <source>Case {sscc} is filled; its label comes.</source>
        <translation type="unfinished">Caja {sscc} llena; sale su etiqueta.</translation>
    </message>
    <message>
        <source>Checked {stage}. Bags wait meanwhile.</source>
        <translation type="unfinished">Control: {stage}. Las bolsas esperan mientras tanto.</translation>
    </message>
    <message>
        <source>Choose cells, then say what they are: VALUE and, where they are there, UNIT, FLAG, CHECK. Type the digits of the scale's display, its unit, and what else is true now.</source>
        <translation type="unfinished">Elija celdas y diga qué son: VALOR y, si están, UNIDAD, MARCA, SUMA. Escriba los dígitos de la pantalla de la báscula, su unidad y qué más vale ahora.</translation>
    </message>
    <message>
        <source>Choose the cells first: touch them, or use the arrow keys.</source>
        <translation type="unfinished">Elija primero las celdas: tóquelas o use las flechas.</translation>
    </message>
    <message>
        <source>Commands of level 2</source>
        <translation type="unfinished">Órdenes de nivel 2</translation>
    </message>
    <message>
        <source>Correct the decision about {bags}?</source>
        <translation type="unfinished">¿Corregir la decisión sobre {bags}?</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">DECIDIR</translation>
    </message>
    <message>
        <source>DESTROYED</source>
        <translation type="unfinished">DESTRUIDA</translation>
    </message>
    <message>
        <source>DIAGNOSE</source>
        <translation type="unfinished">DIAGNOSTICAR</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">NO FIRMAR</translation>
    </message>
    <message>
        <source>DOES NOT SUIT</source>
        <translation type="unfinished">NO SIRVE</translation>
    </message>
    <message>
        <source>DOUBT</source>
        <translation type="unfinished">DUDA</translation>
    </message>
    <message>
        <source>DOWNGRADED</source>
        <translation type="unfinished">REBAJADA</translation>
    </message>
    <message>
        <source>DRAW</source>
        <translation type="unfinished">SORTEAR</translation>
    </message>
    <message>
        <source>DUMP</source>
        <translation type="unfinished">TIRAR</translation>
    </message>
    <message>
        <source>DUMPED</source>
        <translation type="unfinished">TIRADA</translation>
    </message>
    <message>
        <source>Decided: {decision}.</source>
        <translation type="unfinished">Decidido: {decision}.</translation>
    </message>
    <message>
        <source>Disk</source>
        <translation type="unfinished">Disco</translation>
    </message>
    <message>
        <source>Due at {time}.</source>
        <translation type="unfinished">Toca a las {time}.</translation>
    </message>
    <message>
        <source>EMPTY</source>
        <translation type="unfinished">VACÍO</translation>
    </message>
    <message>
        <source>EMPTY BAG</source>
        <translation type="unfinished">BOLSA VACÍA</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">VACÍE PLATO</translation>
    </message>
    <message>
        <source>EMPTY THE PAN</source>
        <translation type="unfinished">VACÍE EL PLATO</translation>
    </message>
    <message>
        <source>END</source>
        <translation type="unfinished">FIN</translation>
    </message>
    <message>
        <source>END RUN</source>
        <translation type="unfinished">CERRAR TANDA</translation>
    </message>
    <message>
        <source>ENTER</source>
        <translation type="unfinished">REGISTRAR</translation>
    </message>
    <message>
        <source>EVIDENCE</source>
        <translation type="unfinished">PRUEBAS</translation>
    </message>
    <message>
        <source>Everything the scale sends goes into {file}</source>
        <translation type="unfinished">Todo lo que envía la báscula va a {file}</translation>
    </message>
    <message>
        <source>FAILED</source>
        <translation type="unfinished">FALLÓ</translation>
    </message>
    <message>
        <source>FAILED: check again</source>
        <translation type="unfinished">FALLÓ: controle otra vez</translation>
    </message>
    <message>
        <source>FAILING</source>
        <translation type="unfinished">FALLA</translation>
    </message>
    <message>
        <source>FAILS</source>
        <translation type="unfinished">FALLA</translation>
    </message>
    <message>
        <source>FILL CASE</source>
        <translation type="unfinished">LLENAR CAJA</translation>
    </message>
    <message>
        <source>FILTER</source>
        <translation type="unfinished">FILTRAR</translation>
    </message>
    <message>
        <source>FINISHING</source>
        <translation type="unfinished">ACABANDO</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">PRIMERA</translation>
    </message>
    <message>
        <source>FLAG</source>
        <translation type="unfinished">MARCA</translation>
    </message>
    <message>
        <source>Fri {number}</source>
        <translation type="unfinished">vie {number}</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished">viernes</translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished">De quién</translation>
    </message>
    <message>
        <source>From the recording {file}: TAKE a line.</source>
        <translation type="unfinished">De la grabación {file}: TOME una línea.</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">DEJARLO</translation>
    </message>
    <message>
        <source>GIVEN AWAY</source>
        <translation type="unfinished">REGALADO</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">SEGUIR</translation>
    </message>
    <message>
        <source>GOOD</source>
        <translation type="unfinished">BIEN</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation type="unfinished">Regalado</translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation type="unfinished">Abandonado.</translation>
    </message>
    <message>
        <source>Given up: nothing is recorded.</source>
        <translation type="unfinished">Abandonado: no se registra nada.</translation>
    </message>
    <message>
        <source>Good bags: {count} of {order}, set aside: {aside}</source>
        <translation type="unfinished">Bolsas buenas: {count} de {order}, apartadas: {aside}</translation>
    </message>
    <message>
        <source>Good bags: {count}, set aside: {aside}</source>
        <translation type="unfinished">Bolsas buenas: {count}, apartadas: {aside}</translation>
    </message>
    <message>
        <source>HELD</source>
        <translation type="unfinished">RETENIDO</translation>
    </message>
    <message>
        <source>HISTORY</source>
        <translation type="unfinished">HISTORIAL</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation type="unfinished">RETENER</translation>
    </message>
    <message>
        <source>HOLD IT</source>
        <translation type="unfinished">RETENERLO</translation>
    </message>
    <message>
        <source>HOLD STAYS</source>
        <translation type="unfinished">SIGUE RETENIDO</translation>
    </message>
    <message>
        <source>HOLD STILL</source>
        <translation type="unfinished">CONGELAR</translation>
    </message>
    <message>
        <source>HOLDS</source>
        <translation type="unfinished">RETENCIONES</translation>
    </message>
    <message>
        <source>HOUSE</source>
        <translation type="unfinished">ALMACÉN</translation>
    </message>
    <message>
        <source>Held: {what}</source>
        <translation type="unfinished">Retenido: {what}</translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished">Aquí</translation>
    </message>
    <message>
        <source>How many bags have which net. Touch a bar to read it.</source>
        <translation type="unfinished">Cuántas bolsas tienen cada neto. Toque una barra para leerla.</translation>
    </message>
    <message>
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">LO HE VISTO</translation>
    </message>
    <message>
        <source>I see it there</source>
        <translation type="unfinished">la veo ahí</translation>
    </message>
    <message>
        <source>IN DOUBT</source>
        <translation type="unfinished">DUDOSA</translation>
    </message>
    <message>
        <source>IN USE.</source>
        <translation type="unfinished">EN USO.</translation>
    </message>
    <message>
        <source>INBOX</source>
        <translation type="unfinished">PENDIENTES</translation>
    </message>
    <message>
        <source>INPUT LOT</source>
        <translation type="unfinished">LOTE DE ENTRADA</translation>
    </message>
    <message>
        <source>INPUT LOTS</source>
        <translation type="unfinished">LOTES DE ENTRADA</translation>
    </message>
    <message>
        <source>INSPECTOR</source>
        <translation type="unfinished">INSPECTOR</translation>
    </message>
    <message>
        <source>In the settings</source>
        <translation type="unfinished">En la configuración</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">En uso</translation>
    </message>
    <message>
        <source>Is the scale on, and are baud rate and parity those of its menu?</source>
        <translation type="unfinished">¿Está encendida la báscula, y son los baudios y la paridad los de su menú?</translation>
    </message>
    <message>
        <source>Issued − used − spoiled − samples − returned</source>
        <translation type="unfinished">Entregadas − usadas − dañadas − muestras − devueltas</translation>
    </message>
    <message>
        <source>It cannot be released</source>
        <translation type="unfinished">No se puede liberar</translation>
    </message>
    <message>
        <source>Its lines</source>
        <translation type="unfinished">Sus líneas</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation type="unfinished">GUARDAR</translation>
    </message>
    <message>
        <source>KEEP CHART</source>
        <translation type="unfinished">GUARDAR GRÁFICO</translation>
    </message>
    <message>
        <source>KEEP LINE</source>
        <translation type="unfinished">GUARDAR LÍNEA</translation>
    </message>
    <message>
        <source>Kept as {name} (PNG, SVG, CSV) in {folder}</source>
        <translation type="unfinished">Guardado como {name} (PNG, SVG, CSV) en {folder}</translation>
    </message>
    <message>
        <source>Key in how many bags lie in the bin.</source>
        <translation type="unfinished">Teclee cuántas bolsas hay en el cubo.</translation>
    </message>
    <message>
        <source>LABEL ON BAG</source>
        <translation type="unfinished">ETIQUETA EN BOLSA</translation>
    </message>
    <message>
        <source>LABEL ROLL</source>
        <translation type="unfinished">ROLLO DE ETIQUETAS</translation>
    </message>
    <message>
        <source>LABEL {state}</source>
        <translation type="unfinished">ETIQUETA {state}</translation>
    </message>
    <message>
        <source>LABELS</source>
        <translation type="unfinished">ETIQUETAS</translation>
    </message>
    <message>
        <source>LABELS (F5) settles it.</source>
        <translation type="unfinished">ETIQUETAS (F5) lo resuelve.</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">IDIOMA</translation>
    </message>
    <message>
        <source>LAST</source>
        <translation type="unfinished">ÚLTIMA</translation>
    </message>
    <message>
        <source>LAST 7 DAYS</source>
        <translation type="unfinished">ÚLTIMOS 7 DÍAS</translation>
    </message>
    <message>
        <source>LAST DAY</source>
        <translation type="unfinished">ÚLTIMO DÍA</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">JEFE</translation>
    </message>
    <message>
        <source>LEAVE</source>
        <translation type="unfinished">SALIR</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">ALCE BOLSA</translation>
    </message>
    <message>
        <source>LIFT THE BAG OFF</source>
        <translation type="unfinished">RETIRE LA BOLSA</translation>
    </message>
    <message>
        <source>LIFT THE WEIGHTS OFF</source>
        <translation type="unfinished">RETIRE LAS PESAS</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">LÍNEA</translation>
    </message>
    <message>
        <source>LISTEN</source>
        <translation type="unfinished">ESCUCHAR</translation>
    </message>
    <message>
        <source>LISTEN to the scale, or open a RECORDING; put a known weight on the pan and TAKE a line.</source>
        <translation type="unfinished">Toque ESCUCHAR o abra una GRABACIÓN; ponga un peso conocido y toque TOMAR LÍNEA.</translation>
    </message>
    <message>
        <source>LOAD</source>
        <translation type="unfinished">CARGAR</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">OTRA VEZ</translation>
    </message>
    <message>
        <source>LOAD CLEAN</source>
        <translation type="unfinished">CARGAR LIMPIO</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation type="unfinished">MIRAR</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">BUSCAR</translation>
    </message>
    <message>
        <source>LOSSES</source>
        <translation type="unfinished">PÉRDIDAS</translation>
    </message>
    <message>
        <source>LOT</source>
        <translation type="unfinished">LOTE</translation>
    </message>
    <message>
        <source>LOTS</source>
        <translation type="unfinished">LOTES</translation>
    </message>
    <message>
        <source>Label roll {roll}: a difference of {difference} is open</source>
        <translation type="unfinished">Rollo de etiquetas {roll}: queda una diferencia de {difference}</translation>
    </message>
    <message>
        <source>Label {serial} is in doubt</source>
        <translation type="unfinished">Etiqueta {serial} dudosa</translation>
    </message>
    <message>
        <source>Labels in doubt</source>
        <translation type="unfinished">Etiquetas dudosas</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">Idioma de la pantalla del empacador</translation>
    </message>
    <message>
        <source>Languages</source>
        <translation type="unfinished">Idiomas</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished">Jefe de línea</translation>
    </message>
    <message>
        <source>Lead is wanted at this line</source>
        <translation type="unfinished">Se necesita al jefe en esta línea</translation>
    </message>
    <message>
        <source>Lead {who}, on the scale {person}</source>
        <translation type="unfinished">Jefe {who}, en la báscula {person}</translation>
    </message>
    <message>
        <source>Line stands: {reason}. Look, then touch</source>
        <translation type="unfinished">Línea parada: {reason}. Mire y luego toque</translation>
    </message>
    <message>
        <source>Look, then touch</source>
        <translation type="unfinished">Mire y luego toque</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation type="unfinished">Buscando …</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished">Lote</translation>
    </message>
    <message>
        <source>Lot {lot} is held, and every bag that may hold some of it.</source>
        <translation type="unfinished">Lote {lot} retenido, y toda bolsa que pueda llevar algo de él.</translation>
    </message>
    <message>
        <source>Lot {lot} is released, and the bags that were held with it.</source>
        <translation type="unfinished">Lote {lot} liberado, y las bolsas retenidas con él.</translation>
    </message>
    <message>
        <source>Lot {lot} received and held.</source>
        <translation type="unfinished">Lote {lot} recibido y retenido.</translation>
    </message>
    <message>
        <source>Lot {lot} received.</source>
        <translation type="unfinished">Lote {lot} recibido.</translation>
    </message>
    <message>
        <source>Lot {lot}: {move}, on record.</source>
        <translation type="unfinished">Lote {lot}: {move}, registrado.</translation>
    </message>
    <message>
        <source>MANAGER</source>
        <translation type="unfinished">GERENTE</translation>
    </message>
    <message>
        <source>METAL DETECTOR</source>
        <translation type="unfinished">DETECTOR DE METALES</translation>
    </message>
    <message>
        <source>MISMATCH</source>
        <translation type="unfinished">NO COINCIDE</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">MÁS</translation>
    </message>
    <message>
        <source>MOVING</source>
        <translation type="unfinished">MOVIÉNDOSE</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation type="unfinished">Fabricante y modelo</translation>
    </message>
    <message>
        <source>Max / e = {number}, class {code} allows {least} to {most}</source>
        <translation type="unfinished">Max / e = {number}, la clase {code} admite de {least} a {most}</translation>
    </message>
    <message>
        <source>Mean needed</source>
        <translation type="unfinished">Media necesaria</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Neto medio {mass}</translation>
    </message>
    <message>
        <source>Mean so far</source>
        <translation type="unfinished">Media hasta ahora</translation>
    </message>
    <message>
        <source>Mon {number}</source>
        <translation type="unfinished">lun {number}</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished">lunes</translation>
    </message>
    <message>
        <source>NEAR MAX</source>
        <translation type="unfinished">CERCA DEL MÁXIMO</translation>
    </message>
    <message>
        <source>NEAR THE TARE</source>
        <translation type="unfinished">CERCA DE LA TARA</translation>
    </message>
    <message>
        <source>NET</source>
        <translation type="unfinished">NETO</translation>
    </message>
    <message>
        <source>NEVER CAME OUT</source>
        <translation type="unfinished">NO SALIÓ</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">NUEVA RETENCIÓN</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation type="unfinished">SIGUIENTE</translation>
    </message>
    <message>
        <source>NEXT CASE</source>
        <translation type="unfinished">OTRA CAJA</translation>
    </message>
    <message>
        <source>NO FORECAST</source>
        <translation type="unfinished">SIN PRONÓSTICO</translation>
    </message>
    <message>
        <source>NO MARKS</source>
        <translation type="unfinished">SIN MARCAS</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">SIN LECTURA</translation>
    </message>
    <message>
        <source>NO RUN IS OPEN</source>
        <translation type="unfinished">NO HAY TANDA ABIERTA</translation>
    </message>
    <message>
        <source>NOBODY</source>
        <translation type="unfinished">NADIE</translation>
    </message>
    <message>
        <source>NOMINAL</source>
        <translation type="unfinished">NOMINAL</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation type="unfinished">NINGUNA</translation>
    </message>
    <message>
        <source>NOT MET</source>
        <translation type="unfinished">NO SE CUMPLE</translation>
    </message>
    <message>
        <source>NOW</source>
        <translation type="unfinished">AHORA</translation>
    </message>
    <message>
        <source>NUMBERS</source>
        <translation type="unfinished">CIFRAS</translation>
    </message>
    <message>
        <source>Next: {what}</source>
        <translation type="unfinished">Sigue: {what}</translation>
    </message>
    <message>
        <source>No alarm stands. What needs nobody is kept as an event.</source>
        <translation type="unfinished">No hay alarmas. Lo que no requiere a nadie se guarda como suceso.</translation>
    </message>
    <message>
        <source>No bag is on record yet.</source>
        <translation type="unfinished">Aún no hay bolsas registradas.</translation>
    </message>
    <message>
        <source>No bag is suspect.</source>
        <translation type="unfinished">No hay bolsas sospechosas.</translation>
    </message>
    <message>
        <source>No case stands here</source>
        <translation type="unfinished">Aquí no hay cajas</translation>
    </message>
    <message>
        <source>No description yet</source>
        <translation type="unfinished">Aún sin descripción</translation>
    </message>
    <message>
        <source>No good bag yet</source>
        <translation type="unfinished">Aún ninguna bolsa buena</translation>
    </message>
    <message>
        <source>No label is in doubt</source>
        <translation type="unfinished">No hay etiquetas dudosas</translation>
    </message>
    <message>
        <source>No lot is on the line: scan one.</source>
        <translation type="unfinished">No hay lote en la línea: lea uno.</translation>
    </message>
    <message>
        <source>No roll is in</source>
        <translation type="unfinished">No hay rollo puesto</translation>
    </message>
    <message>
        <source>No run is open</source>
        <translation type="unfinished">No hay tanda abierta</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">No hay tanda abierta</translation>
    </message>
    <message>
        <source>No target can be proposed: {why}.</source>
        <translation type="unfinished">No se puede proponer un objetivo: {why}.</translation>
    </message>
    <message>
        <source>No whole line was heard yet.</source>
        <translation type="unfinished">Aún no se oyó ninguna línea entera.</translation>
    </message>
    <message>
        <source>Not kept: {why}, {folder}</source>
        <translation type="unfinished">No guardado: {why}, {folder}</translation>
    </message>
    <message>
        <source>Not recorded: {why}</source>
        <translation type="unfinished">No registrado: {why}</translation>
    </message>
    <message>
        <source>Nothing is held or packed.</source>
        <translation type="unfinished">No hay nada retenido ni empacado.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">No hay nada pendiente.</translation>
    </message>
    <message>
        <source>Nothing keeps it.</source>
        <translation type="unfinished">Nada lo impide.</translation>
    </message>
    <message>
        <source>Nothing waits for a signature.</source>
        <translation type="unfinished">Nada espera firma.</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">DEL EMPACADOR</translation>
    </message>
    <message>
        <source>OLD ONE DESTROYED</source>
        <translation type="unfinished">LA VIEJA, DESTRUIDA</translation>
    </message>
    <message>
        <source>ON ITS BAG</source>
        <translation type="unfinished">EN SU BOLSA</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation type="unfinished">ABRIR</translation>
    </message>
    <message>
        <source>OPEN ONLY</source>
        <translation type="unfinished">SOLO ABIERTOS</translation>
    </message>
    <message>
        <source>ORDER DONE</source>
        <translation type="unfinished">TERMINADO</translation>
    </message>
    <message>
        <source>OVER</source>
        <translation type="unfinished">EXCESO</translation>
    </message>
    <message>
        <source>OVERDUE {minutes} min</source>
        <translation type="unfinished">ATRASADO {minutes} min</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}</source>
        <translation type="unfinished">Registradas {bags}, contadas {count}</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} fewer. Why?</source>
        <translation type="unfinished">Registradas {bags}, contadas {count}: {difference} menos. ¿Por qué?</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} more. Why?</source>
        <translation type="unfinished">Registradas {bags}, contadas {count}: {difference} más. ¿Por qué?</translation>
    </message>
    <message>
        <source>On record; it holds from the next run on.</source>
        <translation type="unfinished">Registrado; vale desde la próxima tanda.</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished">En la báscula</translation>
    </message>
    <message>
        <source>Open a run first: a check is made at its loads.</source>
        <translation type="unfinished">Abra primero una tanda: el control usa sus cargas.</translation>
    </message>
    <message>
        <source>Order: open</source>
        <translation type="unfinished">Pedido: abierto</translation>
    </message>
    <message>
        <source>Order: {count} bags</source>
        <translation type="unfinished">Pedido: {count} bolsas</translation>
    </message>
    <message>
        <source>PACKED ON</source>
        <translation type="unfinished">EMPACADO EL</translation>
    </message>
    <message>
        <source>PACKER</source>
        <translation type="unfinished">EMPAQUE</translation>
    </message>
    <message>
        <source>PALLET</source>
        <translation type="unfinished">PALÉ</translation>
    </message>
    <message>
        <source>PALLETS</source>
        <translation type="unfinished">PALÉS</translation>
    </message>
    <message>
        <source>PAN WHEN EMPTY</source>
        <translation type="unfinished">PLATO VACÍO</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation type="unfinished">PAPEL</translation>
    </message>
    <message>
        <source>PASSED</source>
        <translation type="unfinished">PASÓ</translation>
    </message>
    <message>
        <source>PEOPLE</source>
        <translation type="unfinished">GENTE</translation>
    </message>
    <message>
        <source>PLUS/MINUS</source>
        <translation type="unfinished">MÁS/MENOS</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">IMPRIMIR</translation>
    </message>
    <message>
        <source>PRINT AGAIN</source>
        <translation type="unfinished">REIMPRIMIR</translation>
    </message>
    <message>
        <source>PRODUCT TEMPERATURE</source>
        <translation type="unfinished">TEMPERATURA DEL PRODUCTO</translation>
    </message>
    <message>
        <source>PROPOSE</source>
        <translation type="unfinished">PROPONER</translation>
    </message>
    <message>
        <source>PROPOSE when they differ enough.</source>
        <translation type="unfinished">PROPONER cuando difieran bastante.</translation>
    </message>
    <message>
        <source>PUT AN EMPTY BAG ON</source>
        <translation type="unfinished">PONGA UNA BOLSA VACÍA</translation>
    </message>
    <message>
        <source>PUT ON {weights}</source>
        <translation type="unfinished">PONGA {weights}</translation>
    </message>
    <message>
        <source>PUT {serial} ON</source>
        <translation type="unfinished">PONGA {serial}</translation>
    </message>
    <message>
        <source>Pallet {sscc} is closed; its label comes.</source>
        <translation type="unfinished">Palé {sscc} cerrado; sale su etiqueta.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished">Partes</translation>
    </message>
    <message>
        <source>Plate in the settings</source>
        <translation type="unfinished">Placa en la configuración</translation>
    </message>
    <message>
        <source>Print again: {what}</source>
        <translation type="unfinished">Reimprimir: {what}</translation>
    </message>
    <message>
        <source>Protocol</source>
        <translation type="unfinished">Protocolo</translation>
    </message>
    <message>
        <source>Put another weight on, and TAKE a line at rest and one in motion too.</source>
        <translation type="unfinished">Ponga otro peso y TOME una línea en reposo y otra en movimiento.</translation>
    </message>
    <message>
        <source>Put its number into station.toml.</source>
        <translation type="unfinished">Ponga su número en station.toml.</translation>
    </message>
    <message>
        <source>QA check</source>
        <translation type="unfinished">control de calidad</translation>
    </message>
    <message>
        <source>QA decides</source>
        <translation type="unfinished">decide calidad</translation>
    </message>
    <message>
        <source>QA decides: release all, or let the hold stay</source>
        <translation type="unfinished">calidad decide: liberar todo o dejar retenido</translation>
    </message>
    <message>
        <source>QA holds the button</source>
        <translation type="unfinished">calidad mantiene pulsado</translation>
    </message>
    <message>
        <source>QA or a manager releases a lot: touch WHO and choose your name</source>
        <translation type="unfinished">calidad o un gerente libera un lote: toque QUIÉN y elija su nombre</translation>
    </message>
    <message>
        <source>QA said go on</source>
        <translation type="unfinished">calidad dijo seguir</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">CALIDAD</translation>
    </message>
    <message>
        <source>READY</source>
        <translation type="unfinished">LISTO</translation>
    </message>
    <message>
        <source>REASON TO REFUSE</source>
        <translation type="unfinished">MOTIVO PARA RECHAZAR</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">RECIBIR</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">GRABAR</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">REGISTRAR PROPUESTA</translation>
    </message>
    <message>
        <source>RECORDED</source>
        <translation type="unfinished">REGISTRADA</translation>
    </message>
    <message>
        <source>RECORDING</source>
        <translation type="unfinished">GRABACIÓN</translation>
    </message>
    <message>
        <source>REFUSE</source>
        <translation type="unfinished">RECHAZAR</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">ENSAYAR</translation>
    </message>
    <message>
        <source>REJECTS</source>
        <translation type="unfinished">RECHAZOS</translation>
    </message>
    <message>
        <source>RELEASE</source>
        <translation type="unfinished">LIBERAR</translation>
    </message>
    <message>
        <source>RELEASE ALL</source>
        <translation type="unfinished">LIBERAR TODO</translation>
    </message>
    <message>
        <source>RELEASE BEFORE STEP</source>
        <translation type="unfinished">LIBERAR LO ANTERIOR</translation>
    </message>
    <message>
        <source>REPORT</source>
        <translation type="unfinished">INFORME</translation>
    </message>
    <message>
        <source>REPRINT</source>
        <translation type="unfinished">OTRA COPIA</translation>
    </message>
    <message>
        <source>RETURN</source>
        <translation type="unfinished">DEVOLVER</translation>
    </message>
    <message>
        <source>RETURNED</source>
        <translation type="unfinished">DEVUELTAS</translation>
    </message>
    <message>
        <source>REWORKED</source>
        <translation type="unfinished">REPROCESADA</translation>
    </message>
    <message>
        <source>ROLL</source>
        <translation type="unfinished">ROLLO</translation>
    </message>
    <message>
        <source>ROLL IN</source>
        <translation type="unfinished">PONER ROLLO</translation>
    </message>
    <message>
        <source>ROLL OUT</source>
        <translation type="unfinished">SACAR ROLLO</translation>
    </message>
    <message>
        <source>ROOM TEMPERATURE</source>
        <translation type="unfinished">TEMPERATURA DE SALA</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">TANDA</translation>
    </message>
    <message>
        <source>RUN, then SERVICE (F9), SWAP</source>
        <translation type="unfinished">TANDA, luego SERVICIO (F9), CAMBIAR</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">TANDA, luego {door} ({key})</translation>
    </message>
    <message>
        <source>RUNS</source>
        <translation type="unfinished">TANDAS</translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished">Rango</translation>
    </message>
    <message>
        <source>Reading the record</source>
        <translation type="unfinished">Leyendo el registro</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Registro</translation>
    </message>
    <message>
        <source>Recorded as refused</source>
        <translation type="unfinished">Registrada como rechazada</translation>
    </message>
    <message>
        <source>Recorded: {file}</source>
        <translation type="unfinished">Grabado: {file}</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation type="unfinished">Rechazado</translation>
    </message>
    <message>
        <source>Refused. Count the bags first.</source>
        <translation type="unfinished">Rechazado. Cuente primero las bolsas.</translation>
    </message>
    <message>
        <source>Refused. Look at another clock and say why first.</source>
        <translation type="unfinished">Rechazado. Mire otro reloj y diga primero por qué.</translation>
    </message>
    <message>
        <source>Refused. No run is open.</source>
        <translation type="unfinished">Rechazado. No hay tanda abierta.</translation>
    </message>
    <message>
        <source>Refused. Say which label, why, and where the old one is.</source>
        <translation type="unfinished">Rechazado. Diga qué etiqueta, por qué y dónde está la vieja.</translation>
    </message>
    <message>
        <source>Refused. Scan the roll and key in its labels first.</source>
        <translation type="unfinished">Rechazado. Lea primero el rollo y teclee sus etiquetas.</translation>
    </message>
    <message>
        <source>Refused. Touch the two who sign, the lead first.</source>
        <translation type="unfinished">Rechazado. Toque a los dos que firman, primero el jefe.</translation>
    </message>
    <message>
        <source>Refused. Touch who signs.</source>
        <translation type="unfinished">Rechazado. Toque quién firma.</translation>
    </message>
    <message>
        <source>Refused. Who signs? Touch WHO and choose your name.</source>
        <translation type="unfinished">Rechazado. ¿Quién firma? Toque QUIÉN y elija su nombre.</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Rechazado. {why}</translation>
    </message>
    <message>
        <source>Rehearsing …</source>
        <translation type="unfinished">Ensayando …</translation>
    </message>
    <message>
        <source>Roll {roll} is in. Count it out</source>
        <translation type="unfinished">Rollo {roll} puesto. Cuéntelo al sacarlo</translation>
    </message>
    <message>
        <source>Roll {roll}: why {difference}?</source>
        <translation type="unfinished">Rollo {roll}: ¿por qué {difference}?</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Tanda abierta</translation>
    </message>
    <message>
        <source>SAFE</source>
        <translation type="unfinished">SEGURO</translation>
    </message>
    <message>
        <source>SAMPLED</source>
        <translation type="unfinished">MUESTRA</translation>
    </message>
    <message>
        <source>SAMPLES</source>
        <translation type="unfinished">MUESTRAS</translation>
    </message>
    <message>
        <source>SAVE</source>
        <translation type="unfinished">GUARDAR</translation>
    </message>
    <message>
        <source>SCALE</source>
        <translation type="unfinished">BÁSCULA</translation>
    </message>
    <message>
        <source>SCAN</source>
        <translation type="unfinished">LECTURA</translation>
    </message>
    <message>
        <source>SCAN A BAG</source>
        <translation type="unfinished">LEA UNA BOLSA</translation>
    </message>
    <message>
        <source>SCAN THE FILM LOT</source>
        <translation type="unfinished">LEA EL LOTE DE FILM</translation>
    </message>
    <message>
        <source>SEAL</source>
        <translation type="unfinished">SELLE</translation>
    </message>
    <message>
        <source>SEAL CHECK</source>
        <translation type="unfinished">SELLADO</translation>
    </message>
    <message>
        <source>SERIALS</source>
        <translation type="unfinished">SERIES</translation>
    </message>
    <message>
        <source>SERVICE</source>
        <translation type="unfinished">SERVICIO</translation>
    </message>
    <message>
        <source>SET ASIDE</source>
        <translation type="unfinished">APARTE</translation>
    </message>
    <message>
        <source>SHELVE</source>
        <translation type="unfinished">APLAZAR</translation>
    </message>
    <message>
        <source>SHIP</source>
        <translation type="unfinished">ENVIAR</translation>
    </message>
    <message>
        <source>SHIPPING</source>
        <translation type="unfinished">ENVÍO</translation>
    </message>
    <message>
        <source>SIGN</source>
        <translation type="unfinished">FIRMAR</translation>
    </message>
    <message>
        <source>SIGN DAY</source>
        <translation type="unfinished">FIRMAR DÍA</translation>
    </message>
    <message>
        <source>SIGNS</source>
        <translation type="unfinished">FIRMA</translation>
    </message>
    <message>
        <source>SMA SCP-0499 level {code}</source>
        <translation type="unfinished">SMA SCP-0499 nivel {code}</translation>
    </message>
    <message>
        <source>SPOILED</source>
        <translation type="unfinished">DAÑADAS</translation>
    </message>
    <message>
        <source>SPOOLED</source>
        <translation type="unfinished">EN COLA</translation>
    </message>
    <message>
        <source>SPREAD</source>
        <translation type="unfinished">DISPERSIÓN</translation>
    </message>
    <message>
        <source>START CHECK</source>
        <translation type="unfinished">EMPEZAR CONTROL</translation>
    </message>
    <message>
        <source>START OVER</source>
        <translation type="unfinished">EMPEZAR DE NUEVO</translation>
    </message>
    <message>
        <source>START RUN</source>
        <translation type="unfinished">ABRIR TANDA</translation>
    </message>
    <message>
        <source>STARTING</source>
        <translation type="unfinished">INICIANDO</translation>
    </message>
    <message>
        <source>STATION</source>
        <translation type="unfinished">ESTACIÓN</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished">PARADA</translation>
    </message>
    <message>
        <source>STOP RECORDING</source>
        <translation type="unfinished">PARAR GRABACIÓN</translation>
    </message>
    <message>
        <source>STOPS</source>
        <translation type="unfinished">PARADAS</translation>
    </message>
    <message>
        <source>STUDY {count} BAGS</source>
        <translation type="unfinished">ESTUDIAR {count} BOLSAS</translation>
    </message>
    <message>
        <source>SUBMITTED</source>
        <translation type="unfinished">ENVIADA</translation>
    </message>
    <message>
        <source>SUSPECT BAGS</source>
        <translation type="unfinished">BOLSAS SOSPECHOSAS</translation>
    </message>
    <message>
        <source>SUSPECT WINDOW</source>
        <translation type="unfinished">VENTANA SOSPECHOSA</translation>
    </message>
    <message>
        <source>SWAP</source>
        <translation type="unfinished">CAMBIAR</translation>
    </message>
    <message>
        <source>Same product?</source>
        <translation type="unfinished">¿Mismo producto?</translation>
    </message>
    <message>
        <source>Sat {number}</source>
        <translation type="unfinished">sáb {number}</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished">sábado</translation>
    </message>
    <message>
        <source>Scale {what} failed its last check</source>
        <translation type="unfinished">La báscula {what} no pasó su último control</translation>
    </message>
    <message>
        <source>Scan a label, or type a serial or a blend lot.</source>
        <translation type="unfinished">Lea una etiqueta, o escriba una serie o un lote de mezcla.</translation>
    </message>
    <message>
        <source>Scan the bags, type first..last, or touch NEXT CASE</source>
        <translation type="unfinished">Lea las bolsas, escriba primera..última o toque OTRA CAJA</translation>
    </message>
    <message>
        <source>Scan the cases of the pallet</source>
        <translation type="unfinished">Lea las cajas del palé</translation>
    </message>
    <message>
        <source>Scan the label on a bag</source>
        <translation type="unfinished">Lea la etiqueta de una bolsa</translation>
    </message>
    <message>
        <source>Scan the pallets and cases that leave</source>
        <translation type="unfinished">Lea los palés y cajas que salen</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation type="unfinished">Número de serie</translation>
    </message>
    <message>
        <source>Settings and record are being read: no bag is taken yet</source>
        <translation type="unfinished">Se están leyendo los ajustes y el registro: todavía no se acepta ninguna bolsa</translation>
    </message>
    <message>
        <source>Shipment {number} is on record.</source>
        <translation type="unfinished">Envío {number} registrado.</translation>
    </message>
    <message>
        <source>Shipments</source>
        <translation type="unfinished">Envíos</translation>
    </message>
    <message>
        <source>Sign as the second person to {act}</source>
        <translation type="unfinished">Firme como segunda persona para {act}</translation>
    </message>
    <message>
        <source>Sign to {act}</source>
        <translation type="unfinished">Firme para {act}</translation>
    </message>
    <message>
        <source>Signed and on record.</source>
        <translation type="unfinished">Firmado y registrado.</translation>
    </message>
    <message>
        <source>Solid: mean so far, dotted: its limits. Dashed: mean of about 40 bags. Touch a bag.</source>
        <translation type="unfinished">Continua: media hasta ahora; puntos: sus límites. A rayas: media de unas 40 bolsas. Toque una bolsa.</translation>
    </message>
    <message>
        <source>Start a run</source>
        <translation type="unfinished">Abrir una tanda</translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished">Estación</translation>
    </message>
    <message>
        <source>Stop and start the station to use it</source>
        <translation type="unfinished">Pare y arranque la estación para usarlo</translation>
    </message>
    <message>
        <source>Study kept: mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">Estudio guardado: media {mean}, s {spread}, {count} bolsas</translation>
    </message>
    <message>
        <source>Sun {number}</source>
        <translation type="unfinished">dom {number}</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished">domingo</translation>
    </message>
    <message>
        <source>Suspect window of {what}: {count} bags are held</source>
        <translation type="unfinished">Ventana sospechosa de {what}: {count} bolsas retenidas</translation>
    </message>
    <message>
        <source>T1 packs in the official sample</source>
        <translation type="unfinished">bolsas T1 en la muestra oficial</translation>
    </message>
    <message>
        <source>T1 packs of the whole batch</source>
        <translation type="unfinished">bolsas T1 de todo el lote</translation>
    </message>
    <message>
        <source>T2 packs in the long run</source>
        <translation type="unfinished">bolsas T2 a la larga</translation>
    </message>
    <message>
        <source>T2 packs in the official sample</source>
        <translation type="unfinished">bolsas T2 en la muestra oficial</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, nominal</translation>
    </message>
    <message>
        <source>TAKE INTO USE</source>
        <translation type="unfinished">PONER EN USO</translation>
    </message>
    <message>
        <source>TAKE LINE</source>
        <translation type="unfinished">TOMAR LÍNEA</translation>
    </message>
    <message>
        <source>TAKE OUT</source>
        <translation type="unfinished">QUITE</translation>
    </message>
    <message>
        <source>TAKE READING</source>
        <translation type="unfinished">TOMAR LECTURA</translation>
    </message>
    <message>
        <source>TARE</source>
        <translation type="unfinished">TARA</translation>
    </message>
    <message>
        <source>TARGET</source>
        <translation type="unfinished">OBJETIVO</translation>
    </message>
    <message>
        <source>TEACH</source>
        <translation type="unfinished">ENSEÑAR</translation>
    </message>
    <message>
        <source>TELL</source>
        <translation type="unfinished">SABER</translation>
    </message>
    <message>
        <source>THE BAG</source>
        <translation type="unfinished">LA BOLSA</translation>
    </message>
    <message>
        <source>THE DAY</source>
        <translation type="unfinished">EL DÍA</translation>
    </message>
    <message>
        <source>THE SCALE FAILS: its bags are held, call maintenance</source>
        <translation type="unfinished">LA BÁSCULA FALLA: sus bolsas quedan retenidas, llame a mantenimiento</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS</source>
        <translation type="unfinished">LA BÁSCULA ESTÁ BIEN</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS, beyond its first limit: have it adjusted soon</source>
        <translation type="unfinished">LA BÁSCULA ESTÁ BIEN, pero pasa su primer límite: hágala ajustar pronto</translation>
    </message>
    <message>
        <source>THIN</source>
        <translation type="unfinished">AL LÍMITE</translation>
    </message>
    <message>
        <source>THIS HOUR</source>
        <translation type="unfinished">ESTA HORA</translation>
    </message>
    <message>
        <source>TIME</source>
        <translation type="unfinished">TIEMPO</translation>
    </message>
    <message>
        <source>TOPPED UP</source>
        <translation type="unfinished">COMPLETADA</translation>
    </message>
    <message>
        <source>TRACE</source>
        <translation type="unfinished">RASTREO</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">PRÁCTICA</translation>
    </message>
    <message>
        <source>TRAINING IS OVER</source>
        <translation type="unfinished">FORMACIÓN CADUCADA</translation>
    </message>
    <message>
        <source>Take a line, mark its value and say the unit first.</source>
        <translation type="unfinished">Tome primero una línea, marque su valor y diga la unidad.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished">Objetivo</translation>
    </message>
    <message>
        <source>Target {target} instead of {now}, held up by {what}: {then} given away a bag instead of {old}.</source>
        <translation type="unfinished">Objetivo {target} en vez de {now}, lo frena {what}: se regalan {then} por bolsa en vez de {old}.</translation>
    </message>
    <message>
        <source>The bin of {day} is counted: {count}.</source>
        <translation type="unfinished">El cubo del {day} está contado: {count}.</translation>
    </message>
    <message>
        <source>The clock</source>
        <translation type="unfinished">El reloj</translation>
    </message>
    <message>
        <source>The line is the lowest mean that holds for a spread. Touch it to read it.</source>
        <translation type="unfinished">La línea es la media mínima que vale para una dispersión. Tóquela para leerla.</translation>
    </message>
    <message>
        <source>The next check is {stage}.</source>
        <translation type="unfinished">El próximo control es {stage}.</translation>
    </message>
    <message>
        <source>The port is opened again. What the scale says of itself stands beside.</source>
        <translation type="unfinished">El puerto se abre otra vez. Al lado está lo que la báscula dice de sí.</translation>
    </message>
    <message>
        <source>The proposal is on record. A manager approves it, as a new version.</source>
        <translation type="unfinished">Propuesta registrada. Un gerente la aprueba, como versión nueva.</translation>
    </message>
    <message>
        <source>The recording ended: {why}</source>
        <translation type="unfinished">La grabación terminó: {why}</translation>
    </message>
    <message>
        <source>The reject bin of {day} was not counted</source>
        <translation type="unfinished">El cubo de rechazos del {day} no se contó</translation>
    </message>
    <message>
        <source>The run ended: nothing is recorded.</source>
        <translation type="unfinished">La tanda terminó: no se registra nada.</translation>
    </message>
    <message>
        <source>The run ended: the check was given up.</source>
        <translation type="unfinished">La tanda terminó: el control se abandonó.</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">Vale lo que indica la báscula. Si esta pantalla y la báscula difieren, vale la báscula: pare y llame al jefe.</translation>
    </message>
    <message>
        <source>The scan of label {serial} does not match</source>
        <translation type="unfinished">La lectura de la etiqueta {serial} no coincide</translation>
    </message>
    <message>
        <source>The test is on record, as {what}.</source>
        <translation type="unfinished">El ensayo queda registrado, como {what}.</translation>
    </message>
    <message>
        <source>There is no chart to keep.</source>
        <translation type="unfinished">No hay gráfico que guardar.</translation>
    </message>
    <message>
        <source>There is no recording: make one on the page WIRE.</source>
        <translation type="unfinished">No hay grabación: haga una en la página CABLE.</translation>
    </message>
    <message>
        <source>There is no run before</source>
        <translation type="unfinished">No hay tanda anterior</translation>
    </message>
    <message>
        <source>There is nothing to keep yet.</source>
        <translation type="unfinished">Aún no hay nada que guardar.</translation>
    </message>
    <message>
        <source>This run stays as it is.</source>
        <translation type="unfinished">Esta tanda queda como está.</translation>
    </message>
    <message>
        <source>This screen is left at RUN, MORE, LEAVE, by somebody who may</source>
        <translation type="unfinished">De esta pantalla se sale en TANDA, MÁS, SALIR, quien tenga derecho</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation type="unfinished">Hilos</translation>
    </message>
    <message>
        <source>Thu {number}</source>
        <translation type="unfinished">jue {number}</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished">jueves</translation>
    </message>
    <message>
        <source>Touch PASSED or FAILED.</source>
        <translation type="unfinished">Toque PASÓ o FALLÓ.</translation>
    </message>
    <message>
        <source>Touch a line.</source>
        <translation type="unfinished">Toque una línea.</translation>
    </message>
    <message>
        <source>Touch the rejects it is about first.</source>
        <translation type="unfinished">Toque primero los rechazos.</translation>
    </message>
    <message>
        <source>Touch what becomes of it first.</source>
        <translation type="unfinished">Toque primero qué se hace.</translation>
    </message>
    <message>
        <source>Touch what is checked first.</source>
        <translation type="unfinished">Toque primero qué se controla.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Toque primero su nombre.</translation>
    </message>
    <message>
        <source>Tue {number}</source>
        <translation type="unfinished">mar {number}</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished">martes</translation>
    </message>
    <message>
        <source>UNDO</source>
        <translation type="unfinished">DESHACER</translation>
    </message>
    <message>
        <source>UNIT</source>
        <translation type="unfinished">UNIDAD</translation>
    </message>
    <message>
        <source>UNIT {code}</source>
        <translation type="unfinished">UNIDAD {code}</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">Fecha de caducidad</translation>
    </message>
    <message>
        <source>Use by {day}</source>
        <translation type="unfinished">Caducidad: {day}</translation>
    </message>
    <message>
        <source>VALUE</source>
        <translation type="unfinished">VALOR</translation>
    </message>
    <message>
        <source>VOIDED</source>
        <translation type="unfinished">ANULADA</translation>
    </message>
    <message>
        <source>Version</source>
        <translation type="unfinished">Versión</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">ESPERE</translation>
    </message>
    <message>
        <source>WARN</source>
        <translation type="unfinished">AVISO</translation>
    </message>
    <message>
        <source>WASH RECORD</source>
        <translation type="unfinished">REGISTRO DE LAVADO</translation>
    </message>
    <message>
        <source>WASTE</source>
        <translation type="unfinished">MERMA</translation>
    </message>
    <message>
        <source>WEIGH AN EMPTY BAG</source>
        <translation type="unfinished">PESE UNA BOLSA VACÍA</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">PESAR UNA BOLSA</translation>
    </message>
    <message>
        <source>WEIGHED AGAIN</source>
        <translation type="unfinished">PESADA DE NUEVO</translation>
    </message>
    <message>
        <source>WEIGHTS</source>
        <translation type="unfinished">PESOS</translation>
    </message>
    <message>
        <source>WHO</source>
        <translation type="unfinished">QUIÉN</translation>
    </message>
    <message>
        <source>WHOLE RUN</source>
        <translation type="unfinished">TODA LA TANDA</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">LIMPIE</translation>
    </message>
    <message>
        <source>WIRE</source>
        <translation type="unfinished">CABLE</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">CALCULAR</translation>
    </message>
    <message>
        <source>WOULD BE ACCEPTED</source>
        <translation type="unfinished">SERÍA ACEPTADO</translation>
    </message>
    <message>
        <source>WOULD NOT BE ACCEPTED</source>
        <translation type="unfinished">NO SERÍA ACEPTADO</translation>
    </message>
    <message>
        <source>Wait until the day is read.</source>
        <translation type="unfinished">Espere a que se lea el día.</translation>
    </message>
    <message>
        <source>Wed {number}</source>
        <translation type="unfinished">mié {number}</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished">miércoles</translation>
    </message>
    <message>
        <source>Weigh again in this order: net as shown, less the whole error, less even growth</source>
        <translation type="unfinished">Pesar de nuevo en este orden: neto mostrado, menos todo el error, menos deriva uniforme</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">Qué</translation>
    </message>
    <message>
        <source>What becomes of the bags?</source>
        <translation type="unfinished">¿Qué pasa con las bolsas?</translation>
    </message>
    <message>
        <source>What becomes of {bags}?</source>
        <translation type="unfinished">¿Qué pasa con {bags}?</translation>
    </message>
    <message>
        <source>Who decides?</source>
        <translation type="unfinished">¿Quién decide?</translation>
    </message>
    <message>
        <source>Who is touched first signs; who is touched second witnesses or releases too</source>
        <translation type="unfinished">El primero que toque firma; el segundo es testigo o también libera</translation>
    </message>
    <message>
        <source>Who leads touches why the line may go on</source>
        <translation type="unfinished">El jefe toca por qué la línea puede seguir</translation>
    </message>
    <message>
        <source>Why does the line stop?</source>
        <translation type="unfinished">¿Por qué para la línea?</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">¿Por qué se aparta?</translation>
    </message>
    <message>
        <source>Why? Choose or type the reason.</source>
        <translation type="unfinished">¿Por qué? Elija o escriba el motivo.</translation>
    </message>
    <message>
        <source>Working a target out from the bags …</source>
        <translation type="unfinished">Calculando un objetivo con las bolsas …</translation>
    </message>
    <message>
        <source>Working a target out from the bags: {count} tried …</source>
        <translation type="unfinished">Calculando un objetivo con las bolsas: {count} probados …</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation type="unfinished">Escribiendo …</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation type="unfinished">Escrito: {file}</translation>
    </message>
    <message>
        <source>Written: {file} and {count} more in {folder}</source>
        <translation type="unfinished">Escritos: {file} y {count} más en {folder}</translation>
    </message>
    <message>
        <source>YIELD OF LOTS</source>
        <translation type="unfinished">RENDIMIENTO DE LOTES</translation>
    </message>
    <message>
        <source>ZERO</source>
        <translation type="unfinished">CERO</translation>
    </message>
    <message>
        <source>Zero stepped by {step} between {before} and {after}.</source>
        <translation type="unfinished">El cero saltó {step} entre {before} y {after}.</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">hay una bolsa en el plato: termínela, retírela y cierre la tanda</translation>
    </message>
    <message>
        <source>a bag that is {what} has no new bag</source>
        <translation type="unfinished">una bolsa {what} no tiene bolsa nueva</translation>
    </message>
    <message>
        <source>a bag that is {what} wants a witness: a second person signs</source>
        <translation type="unfinished">una bolsa {what} pide testigo: firma una segunda persona</translation>
    </message>
    <message>
        <source>a case was packed short or over</source>
        <translation type="unfinished">una caja con bolsas de más o de menos</translation>
    </message>
    <message>
        <source>a check failed</source>
        <translation type="unfinished">falló un control</translation>
    </message>
    <message>
        <source>a check goes on at the scale: put no bag on it</source>
        <translation type="unfinished">la báscula se está comprobando: no ponga bolsas</translation>
    </message>
    <message>
        <source>a check is due soon</source>
        <translation type="unfinished">pronto toca un control</translation>
    </message>
    <message>
        <source>a check is overdue</source>
        <translation type="unfinished">un control está atrasado</translation>
    </message>
    <message>
        <source>a check needs test weights: name at least one</source>
        <translation type="unfinished">un control necesita pesas: nombre al menos una</translation>
    </message>
    <message>
        <source>a copy was printed</source>
        <translation type="unfinished">se imprimió una copia</translation>
    </message>
    <message>
        <source>a cover is open: close it</source>
        <translation type="unfinished">una tapa está abierta: ciérrela</translation>
    </message>
    <message>
        <source>a decision needs a reason: choose or write why</source>
        <translation type="unfinished">una decisión necesita un motivo: elija o escriba</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">una puerta está abierta: ciérrela</translation>
    </message>
    <message>
        <source>a figure</source>
        <translation type="unfinished">una cifra</translation>
    </message>
    <message>
        <source>a forecast needs at least two packs</source>
        <translation type="unfinished">un pronóstico necesita al menos dos bolsas</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">hay un lote retenido en la línea</translation>
    </message>
    <message>
        <source>a hold needs a reason: write why</source>
        <translation type="unfinished">retener necesita un motivo: escríbalo</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">una etiqueta no coincide</translation>
    </message>
    <message>
        <source>a load was taken for zero when the scale came back: with the pan empty set the scale to zero, or switch it off and on</source>
        <translation type="unfinished">una carga se tomó por cero al volver la báscula: con el plato vacío póngala a cero, o apáguela y enciéndala</translation>
    </message>
    <message>
        <source>a lot ends soon</source>
        <translation type="unfinished">un lote se acaba pronto</translation>
    </message>
    <message>
        <source>a lot should be empty</source>
        <translation type="unfinished">un lote debería estar vacío</translation>
    </message>
    <message>
        <source>a new bag</source>
        <translation type="unfinished">una bolsa nueva</translation>
    </message>
    <message>
        <source>a new code is made</source>
        <translation type="unfinished">se crea un código nuevo</translation>
    </message>
    <message>
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">un rollo nuevo empieza con una primera etiqueta</translation>
    </message>
    <message>
        <source>a numbered copy</source>
        <translation type="unfinished">una copia numerada</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">una pausa</translation>
    </message>
    <message>
        <source>a release needs a reason: write why</source>
        <translation type="unfinished">liberar necesita un motivo: escríbalo</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">hay una tanda abierta: ciérrela antes de abrir otra</translation>
    </message>
    <message>
        <source>a run needs a lead and a person on the scale</source>
        <translation type="unfinished">una tanda necesita un jefe y una persona en la báscula</translation>
    </message>
    <message>
        <source>a scale that says nothing</source>
        <translation type="unfinished">una báscula que no dice nada</translation>
    </message>
    <message>
        <source>a suspect window of {what} is open ({count} bags)</source>
        <translation type="unfinished">ventana sospechosa de {what} pendiente ({count} bolsas)</translation>
    </message>
    <message>
        <source>a version is not refused</source>
        <translation type="unfinished">una versión no se rechaza</translation>
    </message>
    <message>
        <source>a weight every {gap} ms</source>
        <translation type="unfinished">un peso cada {gap} ms</translation>
    </message>
    <message>
        <source>a whole run is not dumped: hold its bags first</source>
        <translation type="unfinished">no se tira una tanda entera: retenga antes sus bolsas</translation>
    </message>
    <message>
        <source>about {mass} in bags of {loaded} loaded</source>
        <translation type="unfinished">unos {mass} en bolsas de {loaded} cargados</translation>
    </message>
    <message>
        <source>above the highest of the description, {number}</source>
        <translation type="unfinished">por encima del máximo descrito, {number}</translation>
    </message>
    <message>
        <source>adds up</source>
        <translation type="unfinished">cuadra</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">tras una parada</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation type="unfinished">adelante</translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished">aire</translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished">todos</translation>
    </message>
    <message>
        <source>all 999 lot codes of {day} are used: give a code by hand</source>
        <translation type="unfinished">los 999 códigos de lote del {day} están usados: dé un código a mano</translation>
    </message>
    <message>
        <source>all days</source>
        <translation type="unfinished">todos los días</translation>
    </message>
    <message>
        <source>all found</source>
        <translation type="unfinished">todas halladas</translation>
    </message>
    <message>
        <source>all loads are taken</source>
        <translation type="unfinished">todas las cargas están tomadas</translation>
    </message>
    <message>
        <source>all reviewed</source>
        <translation type="unfinished">todo revisado</translation>
    </message>
    <message>
        <source>all {count} lines are weights: compare them with what the scale showed</source>
        <translation type="unfinished">las {count} líneas son pesos: compárelas con lo que mostró la báscula</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation type="unfinished">permitido</translation>
    </message>
    <message>
        <source>allowed {floor} to {upper}, T1 {t1}, T2 {t2}</source>
        <translation type="unfinished">permitido {floor} a {upper}, T1 {t1}, T2 {t2}</translation>
    </message>
    <message>
        <source>an aid to the inspector, no official result</source>
        <translation type="unfinished">una ayuda al inspector, no un resultado oficial</translation>
    </message>
    <message>
        <source>an alarm is not shelved for {minutes} minutes: allowed are {allowed}</source>
        <translation type="unfinished">una alarma no se aplaza {minutes} minutos: se permiten {allowed}</translation>
    </message>
    <message>
        <source>an empty bag weighs {mass}, {more} more than the tare taken off</source>
        <translation type="unfinished">una bolsa vacía pesa {mass}, {more} más que la tara descontada</translation>
    </message>
    <message>
        <source>an order of {count} bags: give 1 or more, or leave it open</source>
        <translation type="unfinished">un pedido de {count} bolsas: dé 1 o más, o déjelo abierto</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished">y {count} más</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">y {count} más, debajo de estas</translation>
    </message>
    <message>
        <source>another code was scanned</source>
        <translation type="unfinished">se leyó otro código</translation>
    </message>
    <message>
        <source>another device is at {code}</source>
        <translation type="unfinished">hay otro aparato en {code}</translation>
    </message>
    <message>
        <source>another one is set</source>
        <translation type="unfinished">hay otra puesta</translation>
    </message>
    <message>
        <source>another program has it: close that program, or name another port</source>
        <translation type="unfinished">lo tiene otro programa: ciérrelo, o ponga otro puerto</translation>
    </message>
    <message>
        <source>another scale is here, {here}; in use is {known}: take it into use, {where}</source>
        <translation type="unfinished">hay otra báscula, {here}; en uso está {known}: póngala en uso, {where}</translation>
    </message>
    <message>
        <source>any number</source>
        <translation type="unfinished">cualquier número</translation>
    </message>
    <message>
        <source>applied</source>
        <translation type="unfinished">aplicada</translation>
    </message>
    <message>
        <source>approve a label</source>
        <translation type="unfinished">aprobar una etiqueta</translation>
    </message>
    <message>
        <source>approve a product version</source>
        <translation type="unfinished">aprobar una versión de producto</translation>
    </message>
    <message>
        <source>approve or refuse a target</source>
        <translation type="unfinished">aprobar o rechazar un objetivo</translation>
    </message>
    <message>
        <source>approved</source>
        <translation type="unfinished">aprobada</translation>
    </message>
    <message>
        <source>as far as one approval goes</source>
        <translation type="unfinished">hasta donde llega una aprobación</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">como se encontró</translation>
    </message>
    <message>
        <source>as left</source>
        <translation type="unfinished">como se dejó</translation>
    </message>
    <message>
        <source>as left, after its adjustment</source>
        <translation type="unfinished">como se dejó, tras su ajuste</translation>
    </message>
    <message>
        <source>as people.toml says</source>
        <translation type="unfinished">según people.toml</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation type="unfinished">como se pesó</translation>
    </message>
    <message>
        <source>asked by, as in W\r\n</source>
        <translation type="unfinished">se pide con, como W\r\n</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">preguntando a la línea …</translation>
    </message>
    <message>
        <source>at least {least} {unit}</source>
        <translation type="unfinished">mínimo {least} {unit}</translation>
    </message>
    <message>
        <source>at most {most} {unit}</source>
        <translation type="unfinished">máximo {most} {unit}</translation>
    </message>
    <message>
        <source>at once</source>
        <translation type="unfinished">enseguida</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">al azar</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation type="unfinished">en reposo</translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">atrás</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">bolsa</translation>
    </message>
    <message>
        <source>bag of the run</source>
        <translation type="unfinished">bolsa de la tanda</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">bolsa {code}, lote de film {lot} sin estudio de tara: hágalo: {where}</translation>
    </message>
    <message>
        <source>bag {code}: rework of {lot}, last day {day}</source>
        <translation type="unfinished">bolsa {code}: reproceso de {lot}, último día {day}</translation>
    </message>
    <message>
        <source>bag {serial} has had {copies} already: the lead signs for the next one</source>
        <translation type="unfinished">la bolsa {serial} ya tuvo {copies}: el jefe firma la siguiente</translation>
    </message>
    <message>
        <source>bag {serial} has had {count} copies: set it aside</source>
        <translation type="unfinished">la bolsa {serial} ya tuvo {count} copias: apártela</translation>
    </message>
    <message>
        <source>bag {serial} is held: it gets no label before QA has released it</source>
        <translation type="unfinished">bolsa {serial} retenida: no lleva etiqueta hasta que calidad la libere</translation>
    </message>
    <message>
        <source>bag {serial} is of blend lot {lot}, the case of {other}: close this case and begin another</source>
        <translation type="unfinished">la bolsa {serial} es del lote de mezcla {lot}, la caja del {other}: cierre esta caja y empiece otra</translation>
    </message>
    <message>
        <source>bag {serial} is {what}: scan the label of the new bag</source>
        <translation type="unfinished">bolsa {serial} {what}: lea la etiqueta de la nueva</translation>
    </message>
    <message>
        <source>bag {serial} lies under the hold of {what}: have it released first, or dump it</source>
        <translation type="unfinished">la bolsa {serial} está bajo la retención de {what}: haga que la liberen antes, o tírela</translation>
    </message>
    <message>
        <source>bag {serial} was picked already</source>
        <translation type="unfinished">la bolsa {serial} ya se eligió</translation>
    </message>
    <message>
        <source>bag {serial} was scanned already</source>
        <translation type="unfinished">la bolsa {serial} ya se leyó</translation>
    </message>
    <message>
        <source>bag, case, pallet or lot</source>
        <translation type="unfinished">bolsa, caja, palé o lote</translation>
    </message>
    <message>
        <source>bag, record</source>
        <translation type="unfinished">bolsa, registro</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">bolsas</translation>
    </message>
    <message>
        <source>bags are taken again: {why}</source>
        <translation type="unfinished">se toman bolsas de nuevo: {why}</translation>
    </message>
    <message>
        <source>bags left on the line were set aside or cooled</source>
        <translation type="unfinished">las bolsas de la línea se apartaron o enfriaron</translation>
    </message>
    <message>
        <source>bags since then looked at</source>
        <translation type="unfinished">vistas las bolsas desde entonces</translation>
    </message>
    <message>
        <source>before bag {count}</source>
        <translation type="unfinished">antes de la bolsa {count}</translation>
    </message>
    <message>
        <source>below T1</source>
        <translation type="unfinished">bajo T1</translation>
    </message>
    <message>
        <source>below T1: {count} of at most {most}</source>
        <translation type="unfinished">bajo T1: {count} de {most} permitidas</translation>
    </message>
    <message>
        <source>below T2</source>
        <translation type="unfinished">bajo T2</translation>
    </message>
    <message>
        <source>below T2: {count}</source>
        <translation type="unfinished">bajo T2: {count}</translation>
    </message>
    <message>
        <source>below T2: {count} of at most {most}</source>
        <translation type="unfinished">bajo T2: {count} de {most} permitidas</translation>
    </message>
    <message>
        <source>below floor</source>
        <translation type="unfinished">bajo el mínimo</translation>
    </message>
    <message>
        <source>below the lowest of the description, {number}</source>
        <translation type="unfinished">por debajo del mínimo descrito, {number}</translation>
    </message>
    <message>
        <source>between the fields stands {one} and also {other}: mark what changes</source>
        <translation type="unfinished">entre los campos está {one} y también {other}: marque lo que cambia</translation>
    </message>
    <message>
        <source>bin and belt empty</source>
        <translation type="unfinished">tolva y cinta vacías</translation>
    </message>
    <message>
        <source>bin count</source>
        <translation type="unfinished">cuenta del cubo</translation>
    </message>
    <message>
        <source>blend</source>
        <translation type="unfinished">mezcla</translation>
    </message>
    <message>
        <source>blend lot</source>
        <translation type="unfinished">lote de mezcla</translation>
    </message>
    <message>
        <source>blend lot code</source>
        <translation type="unfinished">código del lote de mezcla</translation>
    </message>
    <message>
        <source>blend {lot}, use-by {day}</source>
        <translation type="unfinished">mezcla {lot}, caducidad {day}</translation>
    </message>
    <message>
        <source>both on the label</source>
        <translation type="unfinished">ambos en la etiqueta</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">descanso</translation>
    </message>
    <message>
        <source>burst after its label, destroyed</source>
        <translation type="unfinished">reventó tras su etiqueta, destruida</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">sello abierto</translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished">por</translation>
    </message>
    <message>
        <source>by the record</source>
        <translation type="unfinished">según registro</translation>
    </message>
    <message>
        <source>by {code}</source>
        <translation type="unfinished">por {code}</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity ({here}), and that this is the scale</source>
        <translation type="unfinished">llegan bytes pero ninguna línea empieza ni acaba: mire baudios y paridad ({here}), y que esto sea la báscula</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity of the converter, and that this is the scale</source>
        <translation type="unfinished">llegan bytes pero ninguna línea empieza ni acaba: mire baudios y paridad del convertidor, y que esto sea la báscula</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity ({here})</source>
        <translation type="unfinished">llegan bytes pero ninguno es una trama: mire baudios y paridad ({here})</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity of the converter</source>
        <translation type="unfinished">llegan bytes pero ninguno es una trama: mire baudios y paridad del convertidor</translation>
    </message>
    <message>
        <source>bytes that belong to no frame</source>
        <translation type="unfinished">bytes de ninguna trama</translation>
    </message>
    <message>
        <source>bytes that belong to no line</source>
        <translation type="unfinished">bytes de ninguna línea</translation>
    </message>
    <message>
        <source>call QA</source>
        <translation type="unfinished">llame a calidad</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">llamar a alguien</translation>
    </message>
    <message>
        <source>case</source>
        <translation type="unfinished">caja</translation>
    </message>
    <message>
        <source>case opened</source>
        <translation type="unfinished">caja abierta</translation>
    </message>
    <message>
        <source>case {code}</source>
        <translation type="unfinished">caja {code}</translation>
    </message>
    <message>
        <source>category-b</source>
        <translation type="unfinished">categoría B</translation>
    </message>
    <message>
        <source>centre of zero</source>
        <translation type="unfinished">centro del cero</translation>
    </message>
    <message>
        <source>chance to pass the official test</source>
        <translation type="unfinished">probabilidad de pasar el ensayo oficial</translation>
    </message>
    <message>
        <source>change every {count} ms</source>
        <translation type="unfinished">cambian cada {count} ms</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">cambiar o explicar un rollo de etiquetas</translation>
    </message>
    <message>
        <source>changed after weighing</source>
        <translation type="unfinished">cambió tras pesar</translation>
    </message>
    <message>
        <source>changed after weighing: {net} is recorded, {found} is on the pan</source>
        <translation type="unfinished">cambió tras pesar: registrado {net}, en el plato {found}</translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished">control</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">control de {what}</translation>
    </message>
    <message>
        <source>check the plug</source>
        <translation type="unfinished">mire el enchufe</translation>
    </message>
    <message>
        <source>check the plug, the cable and the {what}'s power</source>
        <translation type="unfinished">mire el enchufe, el cable y la corriente ({what})</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">controle la báscula después de {what}: {where}</translation>
    </message>
    <message>
        <source>checked again, good</source>
        <translation type="unfinished">controlado de nuevo, bien</translation>
    </message>
    <message>
        <source>checked was {known}, here is {found}: CHECK IT again</source>
        <translation type="unfinished">se controló {known}, aquí está {found}: pulse otra vez CONTROLARLA</translation>
    </message>
    <message>
        <source>checking …</source>
        <translation type="unfinished">comprobando …</translation>
    </message>
    <message>
        <source>checks made</source>
        <translation type="unfinished">controles hechos</translation>
    </message>
    <message>
        <source>checksum {code} does not agree</source>
        <translation type="unfinished">la suma {code} no coincide</translation>
    </message>
    <message>
        <source>choose a lot of {component}</source>
        <translation type="unfinished">elija un lote de {component}</translation>
    </message>
    <message>
        <source>choose a product</source>
        <translation type="unfinished">elija un producto</translation>
    </message>
    <message>
        <source>choose the product first, then its lots</source>
        <translation type="unfinished">elija primero el producto, luego sus lotes</translation>
    </message>
    <message>
        <source>class {code}</source>
        <translation type="unfinished">clase {code}</translation>
    </message>
    <message>
        <source>class {code} knows no scale interval of {interval} (R 76 Table 3)</source>
        <translation type="unfinished">la clase {code} no tiene escalón de {interval} (R 76 tabla 3)</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation type="unfinished">limpieza</translation>
    </message>
    <message>
        <source>clear a scan that differed</source>
        <translation type="unfinished">resolver una lectura que no coincide</translation>
    </message>
    <message>
        <source>clear the line and sign for it: {where}</source>
        <translation type="unfinished">despeje la línea y firme: {where}</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">cerrada</translation>
    </message>
    <message>
        <source>code</source>
        <translation type="unfinished">código</translation>
    </message>
    <message>
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">compare la etiqueta y resuelva la lectura</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">completo</translation>
    </message>
    <message>
        <source>component {component} is not known: allowed are {allowed}</source>
        <translation type="unfinished">componente {component} desconocido: se permiten {allowed}</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">confirmar fecha y hora</translation>
    </message>
    <message>
        <source>connected by {device}</source>
        <translation type="unfinished">conectada por {device}</translation>
    </message>
    <message>
        <source>cooler temperature</source>
        <translation type="unfinished">temperatura de la cámara fría</translation>
    </message>
    <message>
        <source>correct what was recorded</source>
        <translation type="unfinished">corregir lo registrado</translation>
    </message>
    <message>
        <source>count on the core was wrong</source>
        <translation type="unfinished">la cuenta del rollo estaba mal</translation>
    </message>
    <message>
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">cuente las bolsas de la tanda anterior: {where}</translation>
    </message>
    <message>
        <source>counted {count}</source>
        <translation type="unfinished">contadas {count}</translation>
    </message>
    <message>
        <source>counted {count}, agrees</source>
        <translation type="unfinished">contadas {count}, cuadra</translation>
    </message>
    <message>
        <source>counted {count}, {difference}</source>
        <translation type="unfinished">contadas {count}, {difference}</translation>
    </message>
    <message>
        <source>counted {count}, {difference}: {why}</source>
        <translation type="unfinished">contadas {count}, {difference}: {why}</translation>
    </message>
    <message>
        <source>customer's own limits</source>
        <translation type="unfinished">límites propios del cliente</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">fecha u hora dudosa</translation>
    </message>
    <message>
        <source>dated step</source>
        <translation type="unfinished">salto fechado</translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished">día</translation>
    </message>
    <message>
        <source>day after</source>
        <translation type="unfinished">día siguiente</translation>
    </message>
    <message>
        <source>day before</source>
        <translation type="unfinished">día anterior</translation>
    </message>
    <message>
        <source>day, month</source>
        <translation type="unfinished">día, mes</translation>
    </message>
    <message>
        <source>decide about suspect bags</source>
        <translation type="unfinished">decidir sobre bolsas sospechosas</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">decidir qué pasa con una bolsa</translation>
    </message>
    <message>
        <source>declared tare {mass}</source>
        <translation type="unfinished">tara declarada {mass}</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation type="unfinished">destruida</translation>
    </message>
    <message>
        <source>destructive</source>
        <translation type="unfinished">destructivo</translation>
    </message>
    <message>
        <source>destructive-e-mark</source>
        <translation type="unfinished">destructivo (℮)</translation>
    </message>
    <message>
        <source>device {code}</source>
        <translation type="unfinished">aparato {code}</translation>
    </message>
    <message>
        <source>differs</source>
        <translation type="unfinished">difiere</translation>
    </message>
    <message>
        <source>digest</source>
        <translation type="unfinished">huella</translation>
    </message>
    <message>
        <source>digits it shows</source>
        <translation type="unfinished">dígitos que muestra</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation type="unfinished">no encaja</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">hecho</translation>
    </message>
    <message>
        <source>double</source>
        <translation type="unfinished">doble</translation>
    </message>
    <message>
        <source>downgraded</source>
        <translation type="unfinished">rebajada</translation>
    </message>
    <message>
        <source>dumped</source>
        <translation type="unfinished">tirada</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation type="unfinished">vaciado</translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished">vacío</translation>
    </message>
    <message>
        <source>empty bag</source>
        <translation type="unfinished">bolsa vacía</translation>
    </message>
    <message>
        <source>empty by now?</source>
        <translation type="unfinished">¿ya vacío?</translation>
    </message>
    <message>
        <source>empty pan</source>
        <translation type="unfinished">plato vacío</translation>
    </message>
    <message>
        <source>end a run</source>
        <translation type="unfinished">cerrar una tanda</translation>
    </message>
    <message>
        <source>end the run</source>
        <translation type="unfinished">cierre la tanda</translation>
    </message>
    <message>
        <source>enter this</source>
        <translation type="unfinished">registrar esto</translation>
    </message>
    <message>
        <source>equal</source>
        <translation type="unfinished">igual</translation>
    </message>
    <message>
        <source>even</source>
        <translation type="unfinished">igual</translation>
    </message>
    <message>
        <source>even growth</source>
        <translation type="unfinished">deriva uniforme</translation>
    </message>
    <message>
        <source>even parity</source>
        <translation type="unfinished">paridad par</translation>
    </message>
    <message>
        <source>event</source>
        <translation type="unfinished">suceso</translation>
    </message>
    <message>
        <source>example {number}, {line}</source>
        <translation type="unfinished">ejemplo {number}, {line}</translation>
    </message>
    <message>
        <source>expired</source>
        <translation type="unfinished">caducado</translation>
    </message>
    <message>
        <source>expired – take it off the line</source>
        <translation type="unfinished">caducado: sáquelo de la línea</translation>
    </message>
    <message>
        <source>explained</source>
        <translation type="unfinished">explicado</translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished">falló</translation>
    </message>
    <message>
        <source>failed: what is done</source>
        <translation type="unfinished">si falla: qué se hace</translation>
    </message>
    <message>
        <source>fetch the next lot</source>
        <translation type="unfinished">traiga el próximo lote</translation>
    </message>
    <message>
        <source>fetch the next roll</source>
        <translation type="unfinished">traiga el próximo rollo</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation type="unfinished">menos</translation>
    </message>
    <message>
        <source>fewer than {count} labels are left</source>
        <translation type="unfinished">quedan menos de {count} etiquetas</translation>
    </message>
    <message>
        <source>field {code}</source>
        <translation type="unfinished">campo {code}</translation>
    </message>
    <message>
        <source>figures do not convince</source>
        <translation type="unfinished">las cifras no convencen</translation>
    </message>
    <message>
        <source>fill a case or close a pallet</source>
        <translation type="unfinished">llenar una caja o cerrar un palé</translation>
    </message>
    <message>
        <source>fill a little more, look at NUMBERS</source>
        <translation type="unfinished">llene un poco más, mire CIFRAS</translation>
    </message>
    <message>
        <source>film or labels</source>
        <translation type="unfinished">film o etiquetas</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation type="unfinished">acabándose</translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished">primera</translation>
    </message>
    <message>
        <source>first label</source>
        <translation type="unfinished">primera etiqueta</translation>
    </message>
    <message>
        <source>first serial</source>
        <translation type="unfinished">primera serie</translation>
    </message>
    <message>
        <source>first-off</source>
        <translation type="unfinished">primera pieza</translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished">encaja</translation>
    </message>
    <message>
        <source>flag</source>
        <translation type="unfinished">marca</translation>
    </message>
    <message>
        <source>flags that contradict</source>
        <translation type="unfinished">marcas que se contradicen</translation>
    </message>
    <message>
        <source>floor {mass}</source>
        <translation type="unfinished">mínimo {mass}</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">mínimo, objetivo, máximo</translation>
    </message>
    <message>
        <source>for every product</source>
        <translation type="unfinished">para cada producto</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">cuerpo extraño</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">hallado</translation>
    </message>
    <message>
        <source>frame cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">trama cortada tras {count} bytes por la siguiente</translation>
    </message>
    <message>
        <source>frame of {count} bytes, a weight has {number}</source>
        <translation type="unfinished">trama de {count} bytes, un peso tiene {number}</translation>
    </message>
    <message>
        <source>frame without an end within {count} bytes</source>
        <translation type="unfinished">trama sin fin en {count} bytes</translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished">libre</translation>
    </message>
    <message>
        <source>from {code}</source>
        <translation type="unfinished">desde {code}</translation>
    </message>
    <message>
        <source>from, such as 09:00</source>
        <translation type="unfinished">desde, como 09:00</translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished">completo</translation>
    </message>
    <message>
        <source>gate</source>
        <translation type="unfinished">firma de paso</translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished">regalado</translation>
    </message>
    <message>
        <source>gives away</source>
        <translation type="unfinished">regala</translation>
    </message>
    <message>
        <source>go on after a pause</source>
        <translation type="unfinished">seguir tras una pausa</translation>
    </message>
    <message>
        <source>go on after a stop</source>
        <translation type="unfinished">seguir tras una parada</translation>
    </message>
    <message>
        <source>gone on after a stop: {why}</source>
        <translation type="unfinished">seguido tras una parada: {why}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">bien</translation>
    </message>
    <message>
        <source>gross</source>
        <translation type="unfinished">bruto</translation>
    </message>
    <message>
        <source>gross weight</source>
        <translation type="unfinished">peso bruto</translation>
    </message>
    <message>
        <source>guards are shut and tools are counted</source>
        <translation type="unfinished">protecciones cerradas, herramientas contadas</translation>
    </message>
    <message>
        <source>hands and tools are washed</source>
        <translation type="unfinished">manos y herramientas lavadas</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation type="unfinished">cosechado</translation>
    </message>
    <message>
        <source>heaviest gross {mass} against Max {most}</source>
        <translation type="unfinished">bruto mayor {mass} frente a Max {most}</translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished">retenido</translation>
    </message>
    <message>
        <source>held at the line</source>
        <translation type="unfinished">retenido en la línea</translation>
    </message>
    <message>
        <source>held up by</source>
        <translation type="unfinished">frenado por</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">retenido: llame a calidad</translation>
    </message>
    <message>
        <source>here: {line}</source>
        <translation type="unfinished">aquí: {line}</translation>
    </message>
    <message>
        <source>high resolution</source>
        <translation type="unfinished">alta resolución</translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished">retener</translation>
    </message>
    <message>
        <source>hold down</source>
        <translation type="unfinished">mantener pulsado</translation>
    </message>
    <message>
        <source>hold stays</source>
        <translation type="unfinished">sigue retenido</translation>
    </message>
    <message>
        <source>hold the button</source>
        <translation type="unfinished">mantener pulsado</translation>
    </message>
    <message>
        <source>hold, no record</source>
        <translation type="unfinished">retener, sin registro</translation>
    </message>
    <message>
        <source>holds</source>
        <translation type="unfinished">retenciones</translation>
    </message>
    <message>
        <source>holds from</source>
        <translation type="unfinished">vale desde</translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished">hora</translation>
    </message>
    <message>
        <source>id of the label roll</source>
        <translation type="unfinished">id del rollo de etiquetas</translation>
    </message>
    <message>
        <source>id of the run</source>
        <translation type="unfinished">id de la tanda</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation type="unfinished">dudosa</translation>
    </message>
    <message>
        <source>in money</source>
        <translation type="unfinished">en dinero</translation>
    </message>
    <message>
        <source>in motion</source>
        <translation type="unfinished">en movimiento</translation>
    </message>
    <message>
        <source>in no case</source>
        <translation type="unfinished">en ninguna caja</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">en la bolsa {mass}</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation type="unfinished">en el almacén</translation>
    </message>
    <message>
        <source>in the printer</source>
        <translation type="unfinished">en la impresora</translation>
    </message>
    <message>
        <source>in window</source>
        <translation type="unfinished">en la ventana</translation>
    </message>
    <message>
        <source>in {number} min</source>
        <translation type="unfinished">en {number} min</translation>
    </message>
    <message>
        <source>in-service error at {gross} gross {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">error en servicio a {gross} bruto: {mass} frente a {share} de {limit} = {most}</translation>
    </message>
    <message>
        <source>initial zero error</source>
        <translation type="unfinished">error de cero inicial</translation>
    </message>
    <message>
        <source>input lot</source>
        <translation type="unfinished">lote de entrada</translation>
    </message>
    <message>
        <source>input lot code</source>
        <translation type="unfinished">código del lote de entrada</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished">instrumento</translation>
    </message>
    <message>
        <source>interval {mass}</source>
        <translation type="unfinished">escalón {mass}</translation>
    </message>
    <message>
        <source>it came too slowly, or was too short, for a scanner</source>
        <translation type="unfinished">llegó muy lento, o fue muy corto, para un lector</translation>
    </message>
    <message>
        <source>it came too warm, or damaged: QA decides</source>
        <translation type="unfinished">llegó muy caliente o dañado: decide calidad</translation>
    </message>
    <message>
        <source>it changes: mark it on each line</source>
        <translation type="unfinished">cambia: márquela en cada línea</translation>
    </message>
    <message>
        <source>it comes back without help</source>
        <translation type="unfinished">la conexión vuelve sola</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">no responde: ¿está encendida y conectada?</translation>
    </message>
    <message>
        <source>it does not end with Enter</source>
        <translation type="unfinished">no termina con Intro</translation>
    </message>
    <message>
        <source>it does not suit {products}: use another scale</source>
        <translation type="unfinished">no sirve para {products}: use otra báscula</translation>
    </message>
    <message>
        <source>it failed its check with test weights: have it adjusted, then check it again</source>
        <translation type="unfinished">falló el control con pesas: hágala ajustar y contrólela otra vez</translation>
    </message>
    <message>
        <source>it is held until a person releases it</source>
        <translation type="unfinished">está retenida hasta que alguien la libere</translation>
    </message>
    <message>
        <source>it is no serial port</source>
        <translation type="unfinished">no es un puerto serie</translation>
    </message>
    <message>
        <source>it is not there: check the plug</source>
        <translation type="unfinished">no está: mire el enchufe</translation>
    </message>
    <message>
        <source>it is {found}, the {what}'s is {known}: plug that one in again, or stop and start the station to take this one</source>
        <translation type="unfinished">es {found}, el conocido ({what}) es {known}: enchúfelo de nuevo, o pare y arranque la estación para aceptar este</translation>
    </message>
    <message>
        <source>it just stays without approval</source>
        <translation type="unfinished">queda sin aprobar</translation>
    </message>
    <message>
        <source>it lacks what the station's scanner types first</source>
        <translation type="unfinished">falta lo que el lector de la estación teclea primero</translation>
    </message>
    <message>
        <source>it never came out</source>
        <translation type="unfinished">nunca salió</translation>
    </message>
    <message>
        <source>it reached the scale damaged, nothing was done</source>
        <translation type="unfinished">llegó dañada a la báscula, no se hizo nada</translation>
    </message>
    <message>
        <source>it was cancelled</source>
        <translation type="unfinished">se canceló</translation>
    </message>
    <message>
        <source>it was cancelled before printing</source>
        <translation type="unfinished">se canceló antes de imprimir</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s</source>
        <translation type="unfinished">no había salido tras {seconds} s</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s ({why})</source>
        <translation type="unfinished">no había salido tras {seconds} s ({why})</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">no salió en {seconds} s: mire si sale</translation>
    </message>
    <message>
        <source>its bag goes out</source>
        <translation type="unfinished">su bolsa se saca</translation>
    </message>
    <message>
        <source>its marks overlap or leave the line</source>
        <translation type="unfinished">sus marcas se pisan o salen de la línea</translation>
    </message>
    <message>
        <source>its run ended before the printer said that it came out</source>
        <translation type="unfinished">la tanda se cerró antes de que la impresora confirmara la salida</translation>
    </message>
    <message>
        <source>its use-by {day} is past: end the run</source>
        <translation type="unfinished">su fecha de caducidad {day} ya pasó: cierre la tanda</translation>
    </message>
    <message>
        <source>jammed in the printer</source>
        <translation type="unfinished">atascada en la impresora</translation>
    </message>
    <message>
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">guardar, restaurar o depurar el registro</translation>
    </message>
    <message>
        <source>kept as {file} and named in station.toml</source>
        <translation type="unfinished">guardado como {file} y puesto en station.toml</translation>
    </message>
    <message>
        <source>knee</source>
        <translation type="unfinished">codo</translation>
    </message>
    <message>
        <source>label</source>
        <translation type="unfinished">etiqueta</translation>
    </message>
    <message>
        <source>label destroyed</source>
        <translation type="unfinished">etiqueta destruida</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">la etiqueta no vale</translation>
    </message>
    <message>
        <source>label never printed</source>
        <translation type="unfinished">etiqueta no impresa</translation>
    </message>
    <message>
        <source>label of another run taken out</source>
        <translation type="unfinished">etiqueta de otra tanda retirada</translation>
    </message>
    <message>
        <source>label of the roll</source>
        <translation type="unfinished">etiqueta del rollo</translation>
    </message>
    <message>
        <source>label on bag</source>
        <translation type="unfinished">etiqueta en la bolsa</translation>
    </message>
    <message>
        <source>label roll</source>
        <translation type="unfinished">rollo de etiquetas</translation>
    </message>
    <message>
        <source>label scan</source>
        <translation type="unfinished">lectura de etiqueta</translation>
    </message>
    <message>
        <source>label spoiled</source>
        <translation type="unfinished">etiqueta estropeada</translation>
    </message>
    <message>
        <source>label {code}</source>
        <translation type="unfinished">etiqueta {code}</translation>
    </message>
    <message>
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">etiqueta {serial} dudosa: {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">la etiqueta {serial} no ha salido: mire la impresora</translation>
    </message>
    <message>
        <source>label {serial} is printed again, marked {mark}</source>
        <translation type="unfinished">la etiqueta {serial} se imprime otra vez, con marca {mark}</translation>
    </message>
    <message>
        <source>label {serial} may still come out: cancel it at the printer, or wait</source>
        <translation type="unfinished">la etiqueta {serial} aún puede salir: anúlela en la impresora o espere</translation>
    </message>
    <message>
        <source>labels are jammed: clear them</source>
        <translation type="unfinished">etiquetas atascadas: sáquelas</translation>
    </message>
    <message>
        <source>labels are not taken away: take them away</source>
        <translation type="unfinished">hay etiquetas sin recoger: recójalas</translation>
    </message>
    <message>
        <source>labels on it {count}</source>
        <translation type="unfinished">etiquetas en él {count}</translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished">última</translation>
    </message>
    <message>
        <source>last 7 days</source>
        <translation type="unfinished">últimos 7 días</translation>
    </message>
    <message>
        <source>last day</source>
        <translation type="unfinished">último día</translation>
    </message>
    <message>
        <source>last day {day}</source>
        <translation type="unfinished">último día {day}</translation>
    </message>
    <message>
        <source>last label</source>
        <translation type="unfinished">última etiqueta</translation>
    </message>
    <message>
        <source>last of it</source>
        <translation type="unfinished">lo último</translation>
    </message>
    <message>
        <source>last serial</source>
        <translation type="unfinished">última serie</translation>
    </message>
    <message>
        <source>last {what}</source>
        <translation type="unfinished">última {what}</translation>
    </message>
    <message>
        <source>lead</source>
        <translation type="unfinished">jefe de línea</translation>
    </message>
    <message>
        <source>lead {code}</source>
        <translation type="unfinished">jefe {code}</translation>
    </message>
    <message>
        <source>lead, on the scale</source>
        <translation type="unfinished">jefe, en la báscula</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">salir de pantalla completa</translation>
    </message>
    <message>
        <source>less the stops</source>
        <translation type="unfinished">sin las paradas</translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished">ligera</translation>
    </message>
    <message>
        <source>line cleared</source>
        <translation type="unfinished">línea despejada</translation>
    </message>
    <message>
        <source>line cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">línea cortada tras {count} bytes por la siguiente</translation>
    </message>
    <message>
        <source>line error</source>
        <translation type="unfinished">error de línea</translation>
    </message>
    <message>
        <source>line that does not fit the pattern of its description</source>
        <translation type="unfinished">línea que no sigue su descripción</translation>
    </message>
    <message>
        <source>line without an end within {count} bytes</source>
        <translation type="unfinished">línea sin fin en {count} bytes</translation>
    </message>
    <message>
        <source>line {code}</source>
        <translation type="unfinished">línea {code}</translation>
    </message>
    <message>
        <source>line {number}</source>
        <translation type="unfinished">línea {number}</translation>
    </message>
    <message>
        <source>lines</source>
        <translation type="unfinished">líneas</translation>
    </message>
    <message>
        <source>loaded</source>
        <translation type="unfinished">cargado</translation>
    </message>
    <message>
        <source>look at date and time, then sign</source>
        <translation type="unfinished">mire fecha y hora y firme</translation>
    </message>
    <message>
        <source>look at the bag and its label, then GO ON</source>
        <translation type="unfinished">mire la bolsa y su etiqueta, luego SEGUIR</translation>
    </message>
    <message>
        <source>look at the printer</source>
        <translation type="unfinished">mire la impresora</translation>
    </message>
    <message>
        <source>look at the scale's cable and power</source>
        <translation type="unfinished">revise cable y corriente de la báscula</translation>
    </message>
    <message>
        <source>look whether a label came out</source>
        <translation type="unfinished">mire si salió una etiqueta</translation>
    </message>
    <message>
        <source>look whether it comes out</source>
        <translation type="unfinished">mire si sale</translation>
    </message>
    <message>
        <source>look whether the label is whole</source>
        <translation type="unfinished">mire si la etiqueta está entera</translation>
    </message>
    <message>
        <source>looked at another clock: right now</source>
        <translation type="unfinished">visto otro reloj: va bien</translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished">lote</translation>
    </message>
    <message>
        <source>lot code {code} cannot be printed: allowed are 1 to 20 of the characters A-Z 0-9 . / - (no blanks, no small letters)</source>
        <translation type="unfinished">el código de lote {code} no se puede imprimir: de 1 a 20 caracteres A-Z 0-9 . / - (sin espacios ni minúsculas)</translation>
    </message>
    <message>
        <source>lot {code}</source>
        <translation type="unfinished">lote {code}</translation>
    </message>
    <message>
        <source>lot {lot} had its last day on {day}: it must not be used</source>
        <translation type="unfinished">el último día del lote {lot} fue {day}: no se debe usar</translation>
    </message>
    <message>
        <source>lot {lot} is already in the record as another delivery ({component} from {supplier}, received {day}): leave the code empty to get a new one</source>
        <translation type="unfinished">el lote {lot} ya está registrado como otra entrega ({component} de {supplier}, recibido {day}): deje el código vacío para obtener otro</translation>
    </message>
    <message>
        <source>lot {lot} is held</source>
        <translation type="unfinished">lote {lot} retenido</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">lote {lot} retenido: sáquelo y cargue otro: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is nearly empty</source>
        <translation type="unfinished">lote {lot} casi vacío</translation>
    </message>
    <message>
        <source>lot {lot} is not in the record: receive it before the run</source>
        <translation type="unfinished">el lote {lot} no está registrado: recíbalo antes de la tanda</translation>
    </message>
    <message>
        <source>lot {lot} is not known: check the code</source>
        <translation type="unfinished">lote {lot} desconocido: mire el código</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">lote {lot} desconocido: recíbalo primero</translation>
    </message>
    <message>
        <source>lot {lot} is not on the line: on it are {lots}</source>
        <translation type="unfinished">el lote {lot} no está en la línea: están {lots}</translation>
    </message>
    <message>
        <source>lot {lot} is on the line and on no label: take it off: {where}</source>
        <translation type="unfinished">lote {lot} está en la línea y en ninguna etiqueta: sáquelo: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is {component}, which {product} does not contain: allowed are {allowed}</source>
        <translation type="unfinished">el lote {lot} es {component}, que {product} no lleva: se admiten {allowed}</translation>
    </message>
    <message>
        <source>lot {lot} is {status}: it must not be used, call QA</source>
        <translation type="unfinished">lote {lot} {status}: no se debe usar, llame a calidad</translation>
    </message>
    <message>
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lote {lot}: {why}</translation>
    </message>
    <message>
        <source>lot {lot} of {supplier} was received already on {day}: load it, do not receive it again</source>
        <translation type="unfinished">el lote {lot} de {supplier} ya se recibió el {day}: cárguelo, no lo reciba otra vez</translation>
    </message>
    <message>
        <source>lot {lot}: harvested {harvested} after it was received {received}</source>
        <translation type="unfinished">lote {lot}: cosechado el {harvested}, después de recibirlo el {received}</translation>
    </message>
    <message>
        <source>lot {lot}: no person holds it; lots.toml says what it is</source>
        <translation type="unfinished">lote {lot}: ninguna persona lo retiene; lo dice lots.toml</translation>
    </message>
    <message>
        <source>lot {lot}: packed {packed} after it was received {received}</source>
        <translation type="unfinished">lote {lot}: empacado el {packed}, después de recibirlo el {received}</translation>
    </message>
    <message>
        <source>lot {lot}: waste needs its mass: weigh it</source>
        <translation type="unfinished">lote {lot}: la merma necesita su peso: pésela</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} came: give more than nothing, or no mass</source>
        <translation type="unfinished">lote {lot}: llegaron {mass}: dé más que nada, o ningún peso</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} is below nothing</source>
        <translation type="unfinished">lote {lot}: {mass} es menos que nada</translation>
    </message>
    <message>
        <source>lot {lot}: {warmth} °C on arrival: allowed are {least} to {most} °C</source>
        <translation type="unfinished">lote {lot}: {warmth} °C al llegar: se permiten {least} a {most} °C</translation>
    </message>
    <message>
        <source>lots</source>
        <translation type="unfinished">lotes</translation>
    </message>
    <message>
        <source>lots changed while a bag was on the pan: lift it before the next change</source>
        <translation type="unfinished">los lotes cambiaron con una bolsa en el plato: levántela antes del próximo cambio</translation>
    </message>
    <message>
        <source>lots {lots}</source>
        <translation type="unfinished">lotes {lots}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">máquina</translation>
    </message>
    <message>
        <source>made by machine, not reviewed: {said}</source>
        <translation type="unfinished">hechas a máquina, sin revisar: {said}</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation type="unfinished">mantenimiento</translation>
    </message>
    <message>
        <source>make the check</source>
        <translation type="unfinished">haga el control</translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished">gerente</translation>
    </message>
    <message>
        <source>many frames arrive damaged: check plug and cable, keep it away from motors, and see that no other program reads this port</source>
        <translation type="unfinished">llegan muchas tramas dañadas: mire enchufe y cable, aléjelo de motores y que ningún otro programa lea este puerto</translation>
    </message>
    <message>
        <source>mark no control characters, and nothing after the end</source>
        <translation type="unfinished">no marque caracteres de control ni nada tras el fin</translation>
    </message>
    <message>
        <source>mark the same fields on each line, in the same order</source>
        <translation type="unfinished">marque los mismos campos en cada línea, en el mismo orden</translation>
    </message>
    <message>
        <source>mark the value on each line</source>
        <translation type="unfinished">marque el valor en cada línea</translation>
    </message>
    <message>
        <source>mark two or more, with different weights on the pan</source>
        <translation type="unfinished">marque dos o más, con pesos distintos en el plato</translation>
    </message>
    <message>
        <source>may be run</source>
        <translation type="unfinished">se puede producir</translation>
    </message>
    <message>
        <source>may not be run</source>
        <translation type="unfinished">no se puede producir</translation>
    </message>
    <message>
        <source>mean + {factor} s ≥ {nominal}: {holds} so far</source>
        <translation type="unfinished">media + {factor} s ≥ {nominal}: {holds} hasta ahora</translation>
    </message>
    <message>
        <source>mean in the official sample</source>
        <translation type="unfinished">media en la muestra oficial</translation>
    </message>
    <message>
        <source>mean net</source>
        <translation type="unfinished">media neta</translation>
    </message>
    <message>
        <source>mean of the whole batch</source>
        <translation type="unfinished">media de todo el lote</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}</source>
        <translation type="unfinished">media {mean}, s {spread}</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">media {mean}, s {spread}, {count} bolsas</translation>
    </message>
    <message>
        <source>mean {number}</source>
        <translation type="unfinished">media {number}</translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished">se cumple</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">detector de metales</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished">minutos</translation>
    </message>
    <message>
        <source>missed {pieces}</source>
        <translation type="unfinished">no halladas {pieces}</translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished">más</translation>
    </message>
    <message>
        <source>more bytes arrive than a scale sends: is this the scale's line?</source>
        <translation type="unfinished">llegan más bytes de los que envía una báscula: ¿es esta su línea?</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">mover un lote en la línea</translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished">nombre</translation>
    </message>
    <message>
        <source>name of the format</source>
        <translation type="unfinished">nombre del formato</translation>
    </message>
    <message>
        <source>name of the inspector</source>
        <translation type="unfinished">nombre del inspector</translation>
    </message>
    <message>
        <source>name the inspector: scan or type who tests</source>
        <translation type="unfinished">nombre al inspector: lea o escriba quién ensaya</translation>
    </message>
    <message>
        <source>name the wash record: tank and number, as the wash step names it</source>
        <translation type="unfinished">nombre el registro de lavado: tanque y número, como en el lavado</translation>
    </message>
    <message>
        <source>near Max</source>
        <translation type="unfinished">cerca del máximo</translation>
    </message>
    <message>
        <source>near the tare</source>
        <translation type="unfinished">cerca de la tara</translation>
    </message>
    <message>
        <source>net</source>
        <translation type="unfinished">neto</translation>
    </message>
    <message>
        <source>net below {mass}</source>
        <translation type="unfinished">neto bajo {mass}</translation>
    </message>
    <message>
        <source>net below {mass}; {count} below T2</source>
        <translation type="unfinished">neto bajo {mass}; {count} bajo T2</translation>
    </message>
    <message>
        <source>net fill</source>
        <translation type="unfinished">llenado neto</translation>
    </message>
    <message>
        <source>net {mass}: {verdict}</source>
        <translation type="unfinished">neto {mass}: {verdict}</translation>
    </message>
    <message>
        <source>never came out</source>
        <translation type="unfinished">nunca salió</translation>
    </message>
    <message>
        <source>never printed</source>
        <translation type="unfinished">nunca impresa</translation>
    </message>
    <message>
        <source>new bag {serial}</source>
        <translation type="unfinished">bolsa nueva {serial}</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">aún sin PIN ni tarjeta</translation>
    </message>
    <message>
        <source>no USB device</source>
        <translation type="unfinished">ningún aparato USB</translation>
    </message>
    <message>
        <source>no bag</source>
        <translation type="unfinished">ninguna bolsa</translation>
    </message>
    <message>
        <source>no bag is expected any more</source>
        <translation type="unfinished">ya no se espera ninguna bolsa</translation>
    </message>
    <message>
        <source>no bag is on record yet</source>
        <translation type="unfinished">aún no hay bolsas registradas</translation>
    </message>
    <message>
        <source>no bag is taken: {why}</source>
        <translation type="unfinished">no se toma ninguna bolsa: {why}</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">ninguna de estas bolsas es producto</translation>
    </message>
    <message>
        <source>no bag of this run is labelled yet: pack one, then scan its label</source>
        <translation type="unfinished">ninguna bolsa de esta tanda tiene etiqueta: empaque una y lea su etiqueta</translation>
    </message>
    <message>
        <source>no bag of {scope} {name} is in the record: nothing is held</source>
        <translation type="unfinished">no hay bolsas de {scope} {name} en el registro: no se retiene nada</translation>
    </message>
    <message>
        <source>no checksum known here agrees on all lines: mark another field, or none</source>
        <translation type="unfinished">ninguna suma conocida coincide en todas: marque otro campo, o ninguno</translation>
    </message>
    <message>
        <source>no copy</source>
        <translation type="unfinished">ninguna copia</translation>
    </message>
    <message>
        <source>no day given</source>
        <translation type="unfinished">sin fecha</translation>
    </message>
    <message>
        <source>no error at any load</source>
        <translation type="unfinished">sin error en ninguna carga</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">ninguna cifra</translation>
    </message>
    <message>
        <source>no good bag yet</source>
        <translation type="unfinished">aún ninguna bolsa buena</translation>
    </message>
    <message>
        <source>no good check of {what} after the last bag</source>
        <translation type="unfinished">sin control bueno de {what} tras la última bolsa</translation>
    </message>
    <message>
        <source>no good check of {what} in the run</source>
        <translation type="unfinished">sin control bueno de {what} en la tanda</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">no hay rollo de etiquetas: lea uno en {where}</translation>
    </message>
    <message>
        <source>no labelled bag of the last run is loose</source>
        <translation type="unfinished">no queda suelta ninguna bolsa con etiqueta de la última tanda</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">no quedan etiquetas: cargue un rollo</translation>
    </message>
    <message>
        <source>no lot of {component} may be used on {day}</source>
        <translation type="unfinished">ningún lote de {component} se puede usar el {day}</translation>
    </message>
    <message>
        <source>no old product on line, pan or floor</source>
        <translation type="unfinished">nada viejo en línea, plato ni suelo</translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished">sin precio</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">falta producto</translation>
    </message>
    <message>
        <source>no product has it</source>
        <translation type="unfinished">ningún producto la tiene</translation>
    </message>
    <message>
        <source>no proposal worked out yet</source>
        <translation type="unfinished">aún sin propuesta calculada</translation>
    </message>
    <message>
        <source>no rate yet</source>
        <translation type="unfinished">aún sin ritmo</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished">sin lectura</translation>
    </message>
    <message>
        <source>no reading with a bag on the pan</source>
        <translation type="unfinished">sin lectura con una bolsa en el plato</translation>
    </message>
    <message>
        <source>no roll is in</source>
        <translation type="unfinished">no hay rollo puesto</translation>
    </message>
    <message>
        <source>no run is open</source>
        <translation type="unfinished">no hay tanda abierta</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">no hay tanda abierta: la abre el jefe</translation>
    </message>
    <message>
        <source>no run yet</source>
        <translation type="unfinished">aún sin tanda</translation>
    </message>
    <message>
        <source>no scale yet</source>
        <translation type="unfinished">aún sin báscula</translation>
    </message>
    <message>
        <source>no scan differed: there is nothing to clear</source>
        <translation type="unfinished">ninguna lectura difirió: no hay nada que resolver</translation>
    </message>
    <message>
        <source>no single test weight of {mass}: use 1, 2 or 5 times a power of ten from 1 g to 20 kg</source>
        <translation type="unfinished">no hay pesa única de {mass}: use 1, 2 o 5 por una potencia de diez de 1 g a 20 kg</translation>
    </message>
    <message>
        <source>no target meets every clause: the fills scatter too much</source>
        <translation type="unfinished">ningún objetivo cumple todo: los llenados varían demasiado</translation>
    </message>
    <message>
        <source>no time service has kept the clock right for {time}</source>
        <translation type="unfinished">ningún servicio horario ha ajustado el reloj desde hace {time}</translation>
    </message>
    <message>
        <source>no weight</source>
        <translation type="unfinished">sin peso</translation>
    </message>
    <message>
        <source>nobody may ship them</source>
        <translation type="unfinished">nadie puede enviarlas</translation>
    </message>
    <message>
        <source>nobody signed</source>
        <translation type="unfinished">nadie firmó</translation>
    </message>
    <message>
        <source>nobody who may sign has a PIN or badge: station people pin</source>
        <translation type="unfinished">nadie que pueda firmar tiene PIN o tarjeta: station people pin</translation>
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
        <translation type="unfinished">nominal {mass} frente a Min {least}</translation>
    </message>
    <message>
        <source>nominal {mass} against {count} intervals of {interval}</source>
        <translation type="unfinished">nominal {mass} frente a {count} escalones de {interval}</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">ninguna</translation>
    </message>
    <message>
        <source>none left on line</source>
        <translation type="unfinished">no queda en la línea</translation>
    </message>
    <message>
        <source>none of what was heard is a weight by this description</source>
        <translation type="unfinished">nada de lo oído es un peso según esta descripción</translation>
    </message>
    <message>
        <source>none was taken into use on record yet</source>
        <translation type="unfinished">aún no hay ninguna puesta en uso registrada</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">aún ninguno</translation>
    </message>
    <message>
        <source>not a multiple of {number}</source>
        <translation type="unfinished">no es múltiplo de {number}</translation>
    </message>
    <message>
        <source>not clear yet: {point}</source>
        <translation type="unfinished">aún sin despejar: {point}</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation type="unfinished">aún sin contar</translation>
    </message>
    <message>
        <source>not due</source>
        <translation type="unfinished">no toca</translation>
    </message>
    <message>
        <source>not fit to sell</source>
        <translation type="unfinished">no apto para la venta</translation>
    </message>
    <message>
        <source>not found: QA decides</source>
        <translation type="unfinished">no se halló: decide calidad</translation>
    </message>
    <message>
        <source>not judged: {why}</source>
        <translation type="unfinished">no evaluado: {why}</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">sin etiqueta: {reason}</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">ahora no</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">no impresa</translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished">no dicho</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation type="unfinished">sin pesar</translation>
    </message>
    <message>
        <source>not weighed in</source>
        <translation type="unfinished">no se pesó al entrar</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">sin revisar</translation>
    </message>
    <message>
        <source>not yet: {what}</source>
        <translation type="unfinished">todavía no: {what}</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">nota</translation>
    </message>
    <message>
        <source>nothing about the clock is open</source>
        <translation type="unfinished">no hay nada pendiente del reloj</translation>
    </message>
    <message>
        <source>nothing on the pan</source>
        <translation type="unfinished">nada en el plato</translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished">ahora</translation>
    </message>
    <message>
        <source>now {number}</source>
        <translation type="unfinished">ahora {number}</translation>
    </message>
    <message>
        <source>odd parity</source>
        <translation type="unfinished">paridad impar</translation>
    </message>
    <message>
        <source>of everything the version says</source>
        <translation type="unfinished">de todo lo que dice la versión</translation>
    </message>
    <message>
        <source>of the last bag</source>
        <translation type="unfinished">de la última bolsa</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">de {count} bolsas</translation>
    </message>
    <message>
        <source>old labels and film are off the line</source>
        <translation type="unfinished">etiquetas y film viejos fuera de la línea</translation>
    </message>
    <message>
        <source>old lots are closed or returned</source>
        <translation type="unfinished">lotes viejos cerrados o devueltos</translation>
    </message>
    <message>
        <source>on another pallet</source>
        <translation type="unfinished">en otro palé</translation>
    </message>
    <message>
        <source>on no label</source>
        <translation type="unfinished">en ninguna etiqueta</translation>
    </message>
    <message>
        <source>on the line</source>
        <translation type="unfinished">en la línea</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">en la báscula: {who}</translation>
    </message>
    <message>
        <source>on the {count} bags to come</source>
        <translation type="unfinished">en las {count} bolsas que faltan</translation>
    </message>
    <message>
        <source>on the {count} bags to come, any above the floor will do</source>
        <translation type="unfinished">en las {count} bolsas que faltan, basta pasar el mínimo</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">en {code} solo vuelve lo que envía la estación: mire que la báscula esté encendida, su cable y sus ajustes</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">en {code} solo vuelve lo que envía la estación: mire que la báscula esté encendida, su cable y sus ajustes ({here})</translation>
    </message>
    <message>
        <source>one line comes again and again and is no weight ({why}): see what the scale shows, such as an error, another unit or another mode, and set it back</source>
        <translation type="unfinished">llega siempre la misma línea y no es un peso ({why}): mire qué muestra la báscula (error, otra unidad, otro modo) y póngala como antes</translation>
    </message>
    <message>
        <source>one new bag stands for one reject: touch one alone</source>
        <translation type="unfinished">una bolsa nueva vale por un rechazo: toque uno solo</translation>
    </message>
    <message>
        <source>one of {count} bags</source>
        <translation type="unfinished">una de {count} bolsas</translation>
    </message>
    <message>
        <source>only a lead goes on after a mismatch</source>
        <translation type="unfinished">tras una diferencia solo sigue un jefe</translation>
    </message>
    <message>
        <source>only just suits</source>
        <translation type="unfinished">apenas sirve</translation>
    </message>
    <message>
        <source>only where in doubt</source>
        <translation type="unfinished">solo si está dudosa</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">pendiente</translation>
    </message>
    <message>
        <source>open order</source>
        <translation type="unfinished">pedido abierto</translation>
    </message>
    <message>
        <source>or scan a badge</source>
        <translation type="unfinished">o lea una tarjeta</translation>
    </message>
    <message>
        <source>or the day</source>
        <translation type="unfinished">o el día</translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished">otro</translation>
    </message>
    <message>
        <source>other unit {found}, the line runs in {unit}: set the scale back</source>
        <translation type="unfinished">otra unidad, {found}; la línea trabaja en {unit}: cambie la báscula</translation>
    </message>
    <message>
        <source>out of bags</source>
        <translation type="unfinished">de bolsas</translation>
    </message>
    <message>
        <source>over capacity</source>
        <translation type="unfinished">sobre la capacidad</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">sobrecarga: retire la carga</translation>
    </message>
    <message>
        <source>over capacity: take the load off the pan</source>
        <translation type="unfinished">sobrecarga: retire la carga del plato</translation>
    </message>
    <message>
        <source>packed</source>
        <translation type="unfinished">empacado</translation>
    </message>
    <message>
        <source>packed {day}</source>
        <translation type="unfinished">empacado {day}</translation>
    </message>
    <message>
        <source>packed {time} by {who}, production day {day}</source>
        <translation type="unfinished">empacada {time} por {who}, día de producción {day}</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">empacador</translation>
    </message>
    <message>
        <source>pallet</source>
        <translation type="unfinished">palé</translation>
    </message>
    <message>
        <source>pallet broken up</source>
        <translation type="unfinished">palé deshecho</translation>
    </message>
    <message>
        <source>pallet {code}</source>
        <translation type="unfinished">palé {code}</translation>
    </message>
    <message>
        <source>pan, chute and tools are clean and dry</source>
        <translation type="unfinished">plato, tolva y útiles limpios y secos</translation>
    </message>
    <message>
        <source>paper: delivery note 12</source>
        <translation type="unfinished">papel: albarán 12</translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished">pasó</translation>
    </message>
    <message>
        <source>pause</source>
        <translation type="unfinished">pausa</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">planifique el control</translation>
    </message>
    <message>
        <source>plate {code}</source>
        <translation type="unfinished">placa {code}</translation>
    </message>
    <message>
        <source>plus or minus</source>
        <translation type="unfinished">más o menos</translation>
    </message>
    <message>
        <source>poor print</source>
        <translation type="unfinished">mala impresión</translation>
    </message>
    <message>
        <source>port {code}</source>
        <translation type="unfinished">puerto {code}</translation>
    </message>
    <message>
        <source>position</source>
        <translation type="unfinished">puesto</translation>
    </message>
    <message>
        <source>present are</source>
        <translation type="unfinished">hay</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">imprimir otra vez una etiqueta</translation>
    </message>
    <message>
        <source>print unreadable</source>
        <translation type="unfinished">impresión ilegible</translation>
    </message>
    <message>
        <source>product</source>
        <translation type="unfinished">producto</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">temperatura del producto</translation>
    </message>
    <message>
        <source>product {product} cannot run on this scale: {why}</source>
        <translation type="unfinished">el producto {product} no puede ir en esta báscula: {why}</translation>
    </message>
    <message>
        <source>product {product} is at version {version} now, not {other}: choose it again</source>
        <translation type="unfinished">el producto {product} está ahora en la versión {version}, no {other}: elíjalo otra vez</translation>
    </message>
    <message>
        <source>product {product} is not known: choose one of {allowed}</source>
        <translation type="unfinished">producto {product} desconocido: elija uno de {allowed}</translation>
    </message>
    <message>
        <source>product {product} version {version}, as it is set</source>
        <translation type="unfinished">producto {product} versión {version}, como está</translation>
    </message>
    <message>
        <source>production day</source>
        <translation type="unfinished">día de producción</translation>
    </message>
    <message>
        <source>propose a target</source>
        <translation type="unfinished">proponer un objetivo</translation>
    </message>
    <message>
        <source>proposed</source>
        <translation type="unfinished">propuesto</translation>
    </message>
    <message>
        <source>purge old runs</source>
        <translation type="unfinished">borrar tandas viejas</translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished">puesto</translation>
    </message>
    <message>
        <source>put it right, then check again</source>
        <translation type="unfinished">corríjalo y controle de nuevo</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">calidad</translation>
    </message>
    <message>
        <source>qa check</source>
        <translation type="unfinished">control de calidad</translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished">ritmo</translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished">leído</translation>
    </message>
    <message>
        <source>reason</source>
        <translation type="unfinished">motivo</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">recibir una entrega</translation>
    </message>
    <message>
        <source>received {day}</source>
        <translation type="unfinished">recibido {day}</translation>
    </message>
    <message>
        <source>record a check of quality</source>
        <translation type="unfinished">registrar un control de calidad</translation>
    </message>
    <message>
        <source>record a good check of the scale</source>
        <translation type="unfinished">registrar un buen control de báscula</translation>
    </message>
    <message>
        <source>record a study of empty bags</source>
        <translation type="unfinished">registrar un estudio de bolsas vacías</translation>
    </message>
    <message>
        <source>record an empty bag that fits</source>
        <translation type="unfinished">registrar una bolsa vacía que cuadra</translation>
    </message>
    <message>
        <source>record that a check failed</source>
        <translation type="unfinished">registrar un control fallido</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation type="unfinished">registrado</translation>
    </message>
    <message>
        <source>recounted, stays open</source>
        <translation type="unfinished">recontadas, queda pendiente</translation>
    </message>
    <message>
        <source>reference</source>
        <translation type="unfinished">referencia</translation>
    </message>
    <message>
        <source>refuse a label</source>
        <translation type="unfinished">rechazar una etiqueta</translation>
    </message>
    <message>
        <source>refused</source>
        <translation type="unfinished">rechazado</translation>
    </message>
    <message>
        <source>refused: {why}</source>
        <translation type="unfinished">rechazado: {why}</translation>
    </message>
    <message>
        <source>reject</source>
        <translation type="unfinished">rechazo</translation>
    </message>
    <message>
        <source>reject ticket</source>
        <translation type="unfinished">vale de rechazo</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">liberar lo retenido</translation>
    </message>
    <message>
        <source>released</source>
        <translation type="unfinished">liberado</translation>
    </message>
    <message>
        <source>released at the line by QA</source>
        <translation type="unfinished">liberado en la línea por calidad</translation>
    </message>
    <message>
        <source>released before the step</source>
        <translation type="unfinished">liberado lo anterior al salto</translation>
    </message>
    <message>
        <source>remark on what is open</source>
        <translation type="unfinished">nota sobre lo pendiente</translation>
    </message>
    <message>
        <source>repacked</source>
        <translation type="unfinished">reempacada</translation>
    </message>
    <message>
        <source>rest N2</source>
        <translation type="unfinished">resto N2</translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished">resultado</translation>
    </message>
    <message>
        <source>returned</source>
        <translation type="unfinished">devuelto</translation>
    </message>
    <message>
        <source>returned {count}</source>
        <translation type="unfinished">devueltas {count}</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">revisar y firmar un día</translation>
    </message>
    <message>
        <source>reviewed</source>
        <translation type="unfinished">revisado</translation>
    </message>
    <message>
        <source>reviewed with exceptions</source>
        <translation type="unfinished">revisado con excepciones</translation>
    </message>
    <message>
        <source>rework</source>
        <translation type="unfinished">reproceso</translation>
    </message>
    <message>
        <source>rework of {lot} was packed {time} ago: it may go back on the line for {most}</source>
        <translation type="unfinished">el reproceso de {lot} se empacó hace {time}: puede volver a la línea durante {most}</translation>
    </message>
    <message>
        <source>reworked</source>
        <translation type="unfinished">reprocesada</translation>
    </message>
    <message>
        <source>ribbon or ink is missing: put it in</source>
        <translation type="unfinished">falta cinta o tinta: póngala</translation>
    </message>
    <message>
        <source>ribbon or ink is used up: change it</source>
        <translation type="unfinished">cinta o tinta agotada: cámbiela</translation>
    </message>
    <message>
        <source>roll {code}</source>
        <translation type="unfinished">rollo {code}</translation>
    </message>
    <message>
        <source>roll {roll} is in: take it out first</source>
        <translation type="unfinished">el rollo {roll} está puesto: sáquelo primero</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation type="unfinished">temperatura de la sala</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">reglas</translation>
    </message>
    <message>
        <source>run</source>
        <translation type="unfinished">tanda</translation>
    </message>
    <message>
        <source>run of {product} ended</source>
        <translation type="unfinished">tanda de {product} cerrada</translation>
    </message>
    <message>
        <source>run of {product} open, blend lot {lot}</source>
        <translation type="unfinished">tanda de {product} abierta, lote de mezcla {lot}</translation>
    </message>
    <message>
        <source>run reconciled</source>
        <translation type="unfinished">tanda conciliada</translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished">muestra</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation type="unfinished">muestra</translation>
    </message>
    <message>
        <source>samples {count}</source>
        <translation type="unfinished">muestras {count}</translation>
    </message>
    <message>
        <source>say that an alarm is seen</source>
        <translation type="unfinished">decir que se vio una alarma</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">decir qué pasó con una etiqueta</translation>
    </message>
    <message>
        <source>say which lot is empty</source>
        <translation type="unfinished">diga qué lote está vacío</translation>
    </message>
    <message>
        <source>say which lot is on the line</source>
        <translation type="unfinished">diga qué lote está en la línea</translation>
    </message>
    <message>
        <source>say who is on the scale</source>
        <translation type="unfinished">diga quién está en la báscula</translation>
    </message>
    <message>
        <source>say who leads</source>
        <translation type="unfinished">diga quién dirige</translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished">báscula</translation>
    </message>
    <message>
        <source>scale check</source>
        <translation type="unfinished">control de báscula</translation>
    </message>
    <message>
        <source>scale check at the end of the run</source>
        <translation type="unfinished">control de báscula al final de la tanda</translation>
    </message>
    <message>
        <source>scale interval {mass} against at most {most} for {nominal}</source>
        <translation type="unfinished">escalón {mass} frente a {most} como mucho para {nominal}</translation>
    </message>
    <message>
        <source>scale interval {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">escalón {mass} frente a {share} de {limit} = {most}</translation>
    </message>
    <message>
        <source>scale line</source>
        <translation type="unfinished">línea de la báscula</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">la báscula muestra {mass}, vale lo que indica la báscula</translation>
    </message>
    <message>
        <source>scale's port {code} cannot be opened</source>
        <translation type="unfinished">no se abre el puerto {code} de la báscula</translation>
    </message>
    <message>
        <source>scan a case or pallet</source>
        <translation type="unfinished">lea una caja o palé</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">leer una etiqueta</translation>
    </message>
    <message>
        <source>scan a label or lot</source>
        <translation type="unfinished">lea una etiqueta o lote</translation>
    </message>
    <message>
        <source>scan a lot</source>
        <translation type="unfinished">lea un lote</translation>
    </message>
    <message>
        <source>scan a lot, or touch one</source>
        <translation type="unfinished">lea un lote, o toque uno</translation>
    </message>
    <message>
        <source>scan a picked bag</source>
        <translation type="unfinished">lea una bolsa elegida</translation>
    </message>
    <message>
        <source>scan a ticket or label</source>
        <translation type="unfinished">lea un vale o etiqueta</translation>
    </message>
    <message>
        <source>scan back</source>
        <translation type="unfinished">lectura de etiqueta</translation>
    </message>
    <message>
        <source>scan of a label</source>
        <translation type="unfinished">lectura de etiqueta</translation>
    </message>
    <message>
        <source>scan or type a lot code, then Enter</source>
        <translation type="unfinished">lea o teclee un código de lote y pulse Intro</translation>
    </message>
    <message>
        <source>scan or type the film lot</source>
        <translation type="unfinished">lea o escriba el lote de film</translation>
    </message>
    <message>
        <source>scan pallets and cases</source>
        <translation type="unfinished">lea palés y cajas</translation>
    </message>
    <message>
        <source>scan the bags</source>
        <translation type="unfinished">lea las bolsas</translation>
    </message>
    <message>
        <source>scan the bags of the case first</source>
        <translation type="unfinished">lea primero las bolsas de la caja</translation>
    </message>
    <message>
        <source>scan the case label</source>
        <translation type="unfinished">lea la etiqueta de caja</translation>
    </message>
    <message>
        <source>scan the cases</source>
        <translation type="unfinished">lea las cajas</translation>
    </message>
    <message>
        <source>scan the cases of the pallet first</source>
        <translation type="unfinished">lea primero las cajas del palé</translation>
    </message>
    <message>
        <source>scan the label</source>
        <translation type="unfinished">lea la etiqueta</translation>
    </message>
    <message>
        <source>scan the label of the new bag</source>
        <translation type="unfinished">lea la etiqueta de la bolsa nueva</translation>
    </message>
    <message>
        <source>scan the label, or type its serial</source>
        <translation type="unfinished">lea la etiqueta, o escriba su serie</translation>
    </message>
    <message>
        <source>scan the last label</source>
        <translation type="unfinished">lea la última etiqueta</translation>
    </message>
    <message>
        <source>scan the pallets and cases that leave</source>
        <translation type="unfinished">lea los palés y cajas que salen</translation>
    </message>
    <message>
        <source>scan the roll, then Enter</source>
        <translation type="unfinished">lea el rollo, luego Intro</translation>
    </message>
    <message>
        <source>scan the {what}: {where}</source>
        <translation type="unfinished">lea la {what}: {where}</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">sello</translation>
    </message>
    <message>
        <source>seal in doubt</source>
        <translation type="unfinished">sellado dudoso</translation>
    </message>
    <message>
        <source>seal open</source>
        <translation type="unfinished">sellado abierto</translation>
    </message>
    <message>
        <source>seen on its bag</source>
        <translation type="unfinished">vista en su bolsa</translation>
    </message>
    <message>
        <source>sent to the laboratory</source>
        <translation type="unfinished">enviada al laboratorio</translation>
    </message>
    <message>
        <source>sent to the scale</source>
        <translation type="unfinished">enviado a la báscula</translation>
    </message>
    <message>
        <source>serial</source>
        <translation type="unfinished">serie</translation>
    </message>
    <message>
        <source>serial number on its plate</source>
        <translation type="unfinished">número de serie de su placa</translation>
    </message>
    <message>
        <source>serial number {shown}: give the 1 to 40 characters of the plate</source>
        <translation type="unfinished">número de serie {shown}: escriba los 1 a 40 caracteres de la placa</translation>
    </message>
    <message>
        <source>serial {code}</source>
        <translation type="unfinished">serie {code}</translation>
    </message>
    <message>
        <source>serials</source>
        <translation type="unfinished">series</translation>
    </message>
    <message>
        <source>service</source>
        <translation type="unfinished">servicio</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">apartada</translation>
    </message>
    <message>
        <source>set aside: {reason}</source>
        <translation type="unfinished">apartada: {reason}</translation>
    </message>
    <message>
        <source>set on purpose</source>
        <translation type="unfinished">cambiada a propósito</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">gestionar personas, PIN y tarjetas</translation>
    </message>
    <message>
        <source>set to {mass} in the settings</source>
        <translation type="unfinished">{mass} en los ajustes</translation>
    </message>
    <message>
        <source>set unit, interval and capacity under [scale] of station.toml first</source>
        <translation type="unfinished">ponga antes unidad, escalón y capacidad en [scale] de station.toml</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">se aparta: {reason}</translation>
    </message>
    <message>
        <source>setting bag {serial} aside needs a reason: choose one</source>
        <translation type="unfinished">apartar la bolsa {serial} necesita un motivo: elija uno</translation>
    </message>
    <message>
        <source>shelve an alarm</source>
        <translation type="unfinished">aplazar una alarma</translation>
    </message>
    <message>
        <source>shelved until {time}</source>
        <translation type="unfinished">aplazada hasta {time}</translation>
    </message>
    <message>
        <source>shift</source>
        <translation type="unfinished">turno</translation>
    </message>
    <message>
        <source>shift {shift}</source>
        <translation type="unfinished">turno {shift}</translation>
    </message>
    <message>
        <source>ship</source>
        <translation type="unfinished">expedir</translation>
    </message>
    <message>
        <source>shipment</source>
        <translation type="unfinished">envío</translation>
    </message>
    <message>
        <source>shipment came back</source>
        <translation type="unfinished">envío devuelto</translation>
    </message>
    <message>
        <source>shipment withdrawn</source>
        <translation type="unfinished">envío retirado</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">firmar un cambio de tanda</translation>
    </message>
    <message>
        <source>signed with a difference</source>
        <translation type="unfinished">firmado con diferencia</translation>
    </message>
    <message>
        <source>since</source>
        <translation type="unfinished">desde</translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation type="unfinished">desde {time}</translation>
    </message>
    <message>
        <source>since {time}, seen by {who}</source>
        <translation type="unfinished">desde {time}, visto por {who}</translation>
    </message>
    <message>
        <source>software</source>
        <translation type="unfinished">programa</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing</source>
        <translation type="unfinished">continua: {error} desde la primera bolsa; a rayas: creciendo</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing, step: as dated</source>
        <translation type="unfinished">continua: {error} desde la primera bolsa; a rayas: creciendo; salto: fechado</translation>
    </message>
    <message>
        <source>spoiled ones not counted</source>
        <translation type="unfinished">dañadas sin contar</translation>
    </message>
    <message>
        <source>spoiled {count}</source>
        <translation type="unfinished">dañadas {count}</translation>
    </message>
    <message>
        <source>spooled</source>
        <translation type="unfinished">en cola</translation>
    </message>
    <message>
        <source>spread of the fills</source>
        <translation type="unfinished">dispersión del llenado</translation>
    </message>
    <message>
        <source>spread {spread}: a mean of {mean} or more, by the {what} rule</source>
        <translation type="unfinished">dispersión {spread}: media de {mean} o más, por la regla {what}</translation>
    </message>
    <message>
        <source>start a run</source>
        <translation type="unfinished">abrir una tanda</translation>
    </message>
    <message>
        <source>state</source>
        <translation type="unfinished">estado</translation>
    </message>
    <message>
        <source>status {code} with the weight {shown}, it needs ten dashes</source>
        <translation type="unfinished">estado {code} con peso {shown}: exige diez guiones</translation>
    </message>
    <message>
        <source>stood</source>
        <translation type="unfinished">parado</translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished">parar</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">parar la línea</translation>
    </message>
    <message>
        <source>stops</source>
        <translation type="unfinished">paradas</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">bolsas guardadas</translation>
    </message>
    <message>
        <source>stuck on askew</source>
        <translation type="unfinished">pegada torcida</translation>
    </message>
    <message>
        <source>study of its film lot: {study}</source>
        <translation type="unfinished">estudio de su lote de film: {study}</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation type="unfinished">enviada</translation>
    </message>
    <message>
        <source>suits</source>
        <translation type="unfinished">sirve</translation>
    </message>
    <message>
        <source>suspect</source>
        <translation type="unfinished">sospechoso</translation>
    </message>
    <message>
        <source>suspect window</source>
        <translation type="unfinished">ventana sospechosa</translation>
    </message>
    <message>
        <source>suspect window of {what}</source>
        <translation type="unfinished">ventana sospechosa de {what}</translation>
    </message>
    <message>
        <source>take it off the line</source>
        <translation type="unfinished">sáquelo de la línea</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">sáquelo: {where}</translation>
    </message>
    <message>
        <source>take old files off the disk</source>
        <translation type="unfinished">quite archivos viejos del disco</translation>
    </message>
    <message>
        <source>take over changed settings</source>
        <translation type="unfinished">aceptar ajustes cambiados</translation>
    </message>
    <message>
        <source>take the lot off and load another</source>
        <translation type="unfinished">saque el lote y cargue otro</translation>
    </message>
    <message>
        <source>take the old lot off and load the next in one step, or end the run</source>
        <translation type="unfinished">saque el lote viejo y cargue el siguiente de una vez, o termine la tanda</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation type="unfinished">desarmadas</translation>
    </message>
    <message>
        <source>taken by QA</source>
        <translation type="unfinished">tomadas por calidad</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation type="unfinished">sacado</translation>
    </message>
    <message>
        <source>tare</source>
        <translation type="unfinished">tara</translation>
    </message>
    <message>
        <source>tare error</source>
        <translation type="unfinished">error de tara</translation>
    </message>
    <message>
        <source>tare {mass}</source>
        <translation type="unfinished">tara {mass}</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">objetivo</translation>
    </message>
    <message>
        <source>target of {product}</source>
        <translation type="unfinished">objetivo de {product}</translation>
    </message>
    <message>
        <source>target {mass} now</source>
        <translation type="unfinished">objetivo {mass} ahora</translation>
    </message>
    <message>
        <source>target {mass} proposed</source>
        <translation type="unfinished">objetivo {mass} propuesto</translation>
    </message>
    <message>
        <source>teach a scale of your own</source>
        <translation type="unfinished">enseñe una báscula propia</translation>
    </message>
    <message>
        <source>tell maintenance</source>
        <translation type="unfinished">avise a mantenimiento</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation type="unfinished">décimas</translation>
    </message>
    <message>
        <source>test weights of class {code} for {mass} may be wrong by {own}, more than a third of the {allowed} the scale may be: use a finer class</source>
        <translation type="unfinished">las pesas de clase {code} para {mass} pueden errar {own}, más de un tercio de los {allowed} de la báscula: use una clase mejor</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity ({here})</source>
        <translation type="unfinished">llega texto pero nada es un peso de este protocolo: ¿hay otro aparato en este puerto, u otro formato en la báscula? Si no, mire baudios y paridad ({here})</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity of the converter</source>
        <translation type="unfinished">llega texto pero nada es un peso de este protocolo: ¿hay otro aparato en este puerto, u otro formato en la báscula? Si no, mire baudios y paridad del convertidor</translation>
    </message>
    <message>
        <source>the bag on the pan may hold lot {lot}, which is held: set it aside and lift it, then change the lot</source>
        <translation type="unfinished">la bolsa en el plato puede llevar el lote {lot}, retenido: apártela y levántela, luego cambie el lote</translation>
    </message>
    <message>
        <source>the bags scatter too much for a mean tare ({study}): use other bags</source>
        <translation type="unfinished">las bolsas varían demasiado para una tara media ({study}): use otras bolsas</translation>
    </message>
    <message>
        <source>the centre is not reached</source>
        <translation type="unfinished">no se llega a la central</translation>
    </message>
    <message>
        <source>the centre stops {what} {code} ({reason}): {end}</source>
        <translation type="unfinished">la central detiene {what} {code} ({reason}): {end}</translation>
    </message>
    <message>
        <source>the check of the scale is overdue: {where}</source>
        <translation type="unfinished">el control de la báscula está atrasado: {where}</translation>
    </message>
    <message>
        <source>the check of {what} is overdue: {where}</source>
        <translation type="unfinished">el control de {what} está atrasado: {where}</translation>
    </message>
    <message>
        <source>the clock is {time} behind the newest entry of the record</source>
        <translation type="unfinished">el reloj va {time} detrás del último registro</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}</source>
        <translation type="unfinished">el reloj saltó {time} hacia {way}</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}, to another day</source>
        <translation type="unfinished">el reloj saltó {time} hacia {way}, a otro día</translation>
    </message>
    <message>
        <source>the clock was set between the checks: the bags have no sure order in time</source>
        <translation type="unfinished">el reloj se cambió entre los controles: las bolsas no tienen orden seguro</translation>
    </message>
    <message>
        <source>the code holds a character that no code of ours has</source>
        <translation type="unfinished">el código lleva un carácter que ningún código nuestro tiene</translation>
    </message>
    <message>
        <source>the code presses keys that are no text</source>
        <translation type="unfinished">el código pulsa teclas que no son texto</translation>
    </message>
    <message>
        <source>the computer slept or was held up: what the scale sent is too old</source>
        <translation type="unfinished">el ordenador durmió o se detuvo: lo que envió la báscula es demasiado viejo</translation>
    </message>
    <message>
        <source>the demo's settings stay as they are</source>
        <translation type="unfinished">los ajustes de la demo no cambian</translation>
    </message>
    <message>
        <source>the device is gone, or another program reads the same port</source>
        <translation type="unfinished">el aparato no está, u otro programa lee el mismo puerto</translation>
    </message>
    <message>
        <source>the disk cannot be asked: {why}</source>
        <translation type="unfinished">no se puede consultar el disco: {why}</translation>
    </message>
    <message>
        <source>the disk fills up</source>
        <translation type="unfinished">el disco se llena</translation>
    </message>
    <message>
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">disco lleno: libere espacio e imprima de nuevo</translation>
    </message>
    <message>
        <source>the disk is nearly full: free {more} on it, then packing goes on by itself</source>
        <translation type="unfinished">el disco está casi lleno: libere {more} más y el empaque sigue solo</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: take old files off it, or call maintenance</source>
        <translation type="unfinished">disco lleno al {percent} %, {free} libres: quite archivos viejos o llame a mantenimiento</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: {why}</source>
        <translation type="unfinished">disco lleno al {percent} %, {free} libres: {why}</translation>
    </message>
    <message>
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">la bolsa vacía de {mass} no cuadra con {what}: pese otra: {where}</translation>
    </message>
    <message>
        <source>the empty pan does not show zero</source>
        <translation type="unfinished">el plato vacío no marca cero</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">el plato vacío marca {mass}: límpielo y ponga a cero</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation type="unfinished">el mínimo</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">falta la carpeta de etiquetas: cree {folder} otra vez</translation>
    </message>
    <message>
        <source>the known fault of older versions is mended in this one</source>
        <translation type="unfinished">el fallo conocido de versiones viejas está corregido en esta</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}, so it was printed: destroy it first</source>
        <translation type="unfinished">la etiqueta de la bolsa {serial} está {state}, así que se imprimió: destrúyala primero</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: nothing to answer</source>
        <translation type="unfinished">la etiqueta de la bolsa {serial} está {state}: nada que responder</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: only one that is {states} is printed again</source>
        <translation type="unfinished">la etiqueta de la bolsa {serial} está {state}: solo se reimprime si está {states}</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: {fate}</source>
        <translation type="unfinished">la etiqueta de la bolsa {serial} está {state}: {fate}</translation>
    </message>
    <message>
        <source>the label roll ends soon</source>
        <translation type="unfinished">el rollo de etiquetas se acaba</translation>
    </message>
    <message>
        <source>the label was refused ({why}): end the run, or approve it at {where}</source>
        <translation type="unfinished">etiqueta rechazada ({why}): cierre la tanda o apruébela en {where}</translation>
    </message>
    <message>
        <source>the line does not stand</source>
        <translation type="unfinished">la línea no está parada</translation>
    </message>
    <message>
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">la línea está parada, {reason}: TANDA, luego CAMBIO (F8) para seguir</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">la línea se paró</translation>
    </message>
    <message>
        <source>the machine slept for {time}</source>
        <translation type="unfinished">la máquina durmió {time}</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">la media está bajo el nominal</translation>
    </message>
    <message>
        <source>the new bag has a serial of its own: scan its label</source>
        <translation type="unfinished">la bolsa nueva tiene serie propia: lea su etiqueta</translation>
    </message>
    <message>
        <source>the new film or roll is the right one</source>
        <translation type="unfinished">el film o rollo nuevo es el correcto</translation>
    </message>
    <message>
        <source>the newest entry of the record is {time} old</source>
        <translation type="unfinished">el último registro tiene {time}</translation>
    </message>
    <message>
        <source>the offset from UTC changed by {time}, as daylight saving does</source>
        <translation type="unfinished">la hora respecto a UTC cambió {time}, como al cambiar de horario</translation>
    </message>
    <message>
        <source>the oldest entry has waited for more than 30 minutes</source>
        <translation type="unfinished">el registro más viejo espera desde hace más de 30 minutos</translation>
    </message>
    <message>
        <source>the pan is clean, dry and at zero</source>
        <translation type="unfinished">el plato está limpio, seco y en cero</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">el plato debe estar vacío antes de la próxima bolsa</translation>
    </message>
    <message>
        <source>the plan takes {count} packs, the batch will have only {lot}</source>
        <translation type="unfinished">el plan toma {count} bolsas, el lote tendrá solo {lot}</translation>
    </message>
    <message>
        <source>the port is not open yet</source>
        <translation type="unfinished">el puerto aún no está abierto</translation>
    </message>
    <message>
        <source>the port is open, no weight was read yet</source>
        <translation type="unfinished">el puerto está abierto, aún no se leyó ningún peso</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">la impresora desistió</translation>
    </message>
    <message>
        <source>the printer gives no known job state</source>
        <translation type="unfinished">la impresora no da un estado conocido del trabajo</translation>
    </message>
    <message>
        <source>the printer has stopped: see its panel</source>
        <translation type="unfinished">la impresora se paró: mire su panel</translation>
    </message>
    <message>
        <source>the printer is offline: switch it on, check its cable</source>
        <translation type="unfinished">impresora desconectada: enciéndala, revise el cable</translation>
    </message>
    <message>
        <source>the printer is paused: press its button to go on</source>
        <translation type="unfinished">impresora en pausa: pulse su botón</translation>
    </message>
    <message>
        <source>the printer is switched off</source>
        <translation type="unfinished">la impresora está apagada</translation>
    </message>
    <message>
        <source>the printer needs somebody</source>
        <translation type="unfinished">la impresora necesita a alguien</translation>
    </message>
    <message>
        <source>the printer says that it is out, but its reply to the page was lost</source>
        <translation type="unfinished">la impresora dice que salió, pero se perdió su respuesta a la página</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">la impresora: {why}</translation>
    </message>
    <message>
        <source>the proposal is for version {number}</source>
        <translation type="unfinished">la propuesta es para la versión {number}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">la cola no llega a la impresora: enciéndala, revise el cable</translation>
    </message>
    <message>
        <source>the record's log takes {size}: another program has been reading the record for long, close it</source>
        <translation type="unfinished">el diario del registro ocupa {size}: otro programa lo lee desde hace mucho, ciérrelo</translation>
    </message>
    <message>
        <source>the run begins with a check of the scale: {where}</source>
        <translation type="unfinished">la tanda empieza con un control de la báscula: {where}</translation>
    </message>
    <message>
        <source>the run begins with a check of {what}: {where}</source>
        <translation type="unfinished">la tanda empieza con un control de {what}: {where}</translation>
    </message>
    <message>
        <source>the run begins with a first-off</source>
        <translation type="unfinished">la tanda empieza con una primera etiqueta</translation>
    </message>
    <message>
        <source>the run is open</source>
        <translation type="unfinished">la tanda está abierta</translation>
    </message>
    <message>
        <source>the scale</source>
        <translation type="unfinished">la báscula</translation>
    </message>
    <message>
        <source>the scale came back at zero and a load lay on the pan before: take everything off, then press the pan once with a hand</source>
        <translation type="unfinished">la báscula volvió en cero y antes había carga en el plato: retírelo todo y presione el plato una vez con la mano</translation>
    </message>
    <message>
        <source>the scale does not do that</source>
        <translation type="unfinished">la báscula no hace eso</translation>
    </message>
    <message>
        <source>the scale failed its check</source>
        <translation type="unfinished">la báscula no pasó el control</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">la báscula no pasó el control: ajústela y contrólela de nuevo: {where}</translation>
    </message>
    <message>
        <source>the scale found no zero when it was switched on: empty the pan and switch it on again</source>
        <translation type="unfinished">la báscula no halló el cero al encenderse: vacíe el plato y enciéndala de nuevo</translation>
    </message>
    <message>
        <source>the scale gave no answer, look at its display</source>
        <translation type="unfinished">la báscula no contestó, mire su pantalla</translation>
    </message>
    <message>
        <source>the scale has just come back: its weights count in a moment</source>
        <translation type="unfinished">la báscula acaba de volver: sus pesos contarán enseguida</translation>
    </message>
    <message>
        <source>the scale is a recording: no bag is taken from it</source>
        <translation type="unfinished">la báscula es una grabación: no se toma ninguna bolsa de ella</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">la báscula no responde: revise cable y corriente</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">la báscula en {code} no envía nada desde hace {number} s: mire que esté encendida, su cable y sus ajustes</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">la báscula en {code} no envía nada desde hace {number} s: mire que esté encendida, su cable y sus ajustes ({here})</translation>
    </message>
    <message>
        <source>the scale read high at some loads and low at others</source>
        <translation type="unfinished">la báscula marcó de más en unas cargas y de menos en otras</translation>
    </message>
    <message>
        <source>the scale read high: packs may be short</source>
        <translation type="unfinished">la báscula marcó de más: puede faltar producto</translation>
    </message>
    <message>
        <source>the scale read low: product was given away</source>
        <translation type="unfinished">la báscula marcó de menos: se regaló producto</translation>
    </message>
    <message>
        <source>the scale refused to set zero: empty the pan</source>
        <translation type="unfinished">la báscula no se puso a cero: vacíe el plato</translation>
    </message>
    <message>
        <source>the scale reports a tare error: empty the pan and clear the tare</source>
        <translation type="unfinished">la báscula avisa de un error de tara: vacíe el plato y borre la tara</translation>
    </message>
    <message>
        <source>the scale reports a zero error: empty the pan and set it to zero</source>
        <translation type="unfinished">la báscula avisa de un error de cero: vacíe el plato y póngala a cero</translation>
    </message>
    <message>
        <source>the scale says centre of zero and shows {mass}</source>
        <translation type="unfinished">la báscula dice centro de cero y muestra {mass}</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set bits 7 and {same} for this port ({here}), or 8N1 on the scale</source>
        <translation type="unfinished">la báscula envía 7 bits de datos con {parity}: ponga bits 7 y {same} en este puerto ({here}), o 8N1 en la báscula</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set the same on the converter, or 8N1 on the scale</source>
        <translation type="unfinished">la báscula envía 7 bits de datos con {parity}: ponga lo mismo en el convertidor, o 8N1 en la báscula</translation>
    </message>
    <message>
        <source>the scale sent dashes instead of a weight</source>
        <translation type="unfinished">la báscula envió rayas en lugar de un peso</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">la báscula muestra un peso neto: borre su tara, la estación resta la bolsa</translation>
    </message>
    <message>
        <source>the scale shows less than zero: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">la báscula muestra menos de cero: mire que el plato asiente bien y nada lo levante, vacíelo y ponga la báscula a cero</translation>
    </message>
    <message>
        <source>the scale shows no weight</source>
        <translation type="unfinished">la báscula no muestra ningún peso</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">la báscula está en {unit}, la tanda en {other}: cambie la báscula</translation>
    </message>
    <message>
        <source>the scale's line is not open</source>
        <translation type="unfinished">la línea de la báscula no está abierta</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">la lectura de una etiqueta está atrasada: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} did not match</source>
        <translation type="unfinished">la lectura de la etiqueta {serial} no coincidió</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">la lectura de la etiqueta {serial} no coincide: el jefe la resuelve en {where}</translation>
    </message>
    <message>
        <source>the settings are in {code}</source>
        <translation type="unfinished">los ajustes están en {code}</translation>
    </message>
    <message>
        <source>the settings before are in station.toml.before</source>
        <translation type="unfinished">los ajustes de antes están en station.toml.before</translation>
    </message>
    <message>
        <source>the settings say so</source>
        <translation type="unfinished">lo dicen los ajustes</translation>
    </message>
    <message>
        <source>the station ended before the label's fate was recorded</source>
        <translation type="unfinished">la estación se cerró antes de registrar qué fue de la etiqueta</translation>
    </message>
    <message>
        <source>the station fills no cases: customers.toml is missing</source>
        <translation type="unfinished">la estación no llena cajas: falta customers.toml</translation>
    </message>
    <message>
        <source>the station has a fault ({what}): call maintenance</source>
        <translation type="unfinished">la estación tiene una avería ({what}): llame a mantenimiento</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">la estación va atrasada: retire la bolsa y espere</translation>
    </message>
    <message>
        <source>the station stood for long</source>
        <translation type="unfinished">la estación estuvo parada mucho tiempo</translation>
    </message>
    <message>
        <source>the station writes and checkpoints through one, so it cannot happen here</source>
        <translation type="unfinished">la estación escribe por una sola, así que aquí no puede pasar</translation>
    </message>
    <message>
        <source>the store is closed</source>
        <translation type="unfinished">el registro está cerrado</translation>
    </message>
    <message>
        <source>the study has {study}, more than the tare {tare} taken off: raise the tare of {bag}</source>
        <translation type="unfinished">el estudio da {study}, más que la tara descontada {tare}: suba la tara de {bag}</translation>
    </message>
    <message>
        <source>the test weights come to {total} for the load {load} of {mass}: at least {percent} of it are needed</source>
        <translation type="unfinished">las pesas suman {total} para la carga {load} de {mass}: hace falta al menos el {percent}</translation>
    </message>
    <message>
        <source>the year {year} is not believed</source>
        <translation type="unfinished">no se cree el año {year}</translation>
    </message>
    <message>
        <source>then its number, its verification and who answers for it</source>
        <translation type="unfinished">luego su número, su verificación y quién responde</translation>
    </message>
    <message>
        <source>there is no run before: nothing is to be counted</source>
        <translation type="unfinished">no hay tanda anterior: no hay nada que contar</translation>
    </message>
    <message>
        <source>there is nothing to report</source>
        <translation type="unfinished">no hay nada que informar</translation>
    </message>
    <message>
        <source>there is room again: {free} free</source>
        <translation type="unfinished">vuelve a haber espacio: {free} libres</translation>
    </message>
    <message>
        <source>these lines are in {units}</source>
        <translation type="unfinished">estas líneas están en {units}</translation>
    </message>
    <message>
        <source>they do not all end with the same control characters</source>
        <translation type="unfinished">no todas acaban con los mismos caracteres de control</translation>
    </message>
    <message>
        <source>this PIN is not right</source>
        <translation type="unfinished">este PIN no es correcto</translation>
    </message>
    <message>
        <source>this PIN is not right: wait {time}</source>
        <translation type="unfinished">este PIN no es correcto: espere {time}</translation>
    </message>
    <message>
        <source>this badge is not right</source>
        <translation type="unfinished">esta tarjeta no es correcta</translation>
    </message>
    <message>
        <source>this badge is not right: wait {time}</source>
        <translation type="unfinished">esta tarjeta no es correcta: espere {time}</translation>
    </message>
    <message>
        <source>this bag in it</source>
        <translation type="unfinished">esta bolsa está dentro</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">esta bolsa no está registrada ni etiquetada: {why}</translation>
    </message>
    <message>
        <source>this cannot be shelved, {what}: {answer}</source>
        <translation type="unfinished">esto no se puede aplazar, {what}: {answer}</translation>
    </message>
    <message>
        <source>this hour: all {count} bags</source>
        <translation type="unfinished">esta hora: las {count} bolsas</translation>
    </message>
    <message>
        <source>this hour: {count} of about {all} bags</source>
        <translation type="unfinished">esta hora: {count} de unas {all} bolsas</translation>
    </message>
    <message>
        <source>this one is destroyed</source>
        <translation type="unfinished">esta está destruida</translation>
    </message>
    <message>
        <source>this user may not use it: add the user to the group that owns it (on most Linux systems dialout) and sign in again</source>
        <translation type="unfinished">este usuario no puede usarlo: añádalo al grupo dueño (en la mayoría de Linux dialout) y entre de nuevo</translation>
    </message>
    <message>
        <source>this version can damage a file that two connections write at once</source>
        <translation type="unfinished">esta versión puede dañar un archivo si dos conexiones escriben a la vez</translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished">hora</translation>
    </message>
    <message>
        <source>time, with a lot</source>
        <translation type="unfinished">hora, con un lote</translation>
    </message>
    <message>
        <source>too many wrong PINs: wait {time}</source>
        <translation type="unfinished">demasiados PIN erróneos: espere {time}</translation>
    </message>
    <message>
        <source>too many wrong badges: wait {time}</source>
        <translation type="unfinished">demasiadas tarjetas erróneas: espere {time}</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation type="unfinished">demasiado caliente</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation type="unfinished">completada</translation>
    </message>
    <message>
        <source>torn or creased</source>
        <translation type="unfinished">rota o arrugada</translation>
    </message>
    <message>
        <source>torn up, seen by me</source>
        <translation type="unfinished">rota, vista por mí</translation>
    </message>
    <message>
        <source>touch an alarm first</source>
        <translation type="unfinished">toque primero una alarma</translation>
    </message>
    <message>
        <source>touch and key in all three counts first</source>
        <translation type="unfinished">toque y teclee primero las tres cuentas</translation>
    </message>
    <message>
        <source>touch the rejects it is about first</source>
        <translation type="unfinished">toque primero los rechazos</translation>
    </message>
    <message>
        <source>touch to change</source>
        <translation type="unfinished">toque para cambiar</translation>
    </message>
    <message>
        <source>touch when thrown out</source>
        <translation type="unfinished">toque si se expulsó</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">toque primero quién es usted</translation>
    </message>
    <message>
        <source>two lots overlap for long</source>
        <translation type="unfinished">dos lotes se solapan mucho tiempo</translation>
    </message>
    <message>
        <source>two people release: the second one is missing</source>
        <translation type="unfinished">liberan dos personas: falta la segunda</translation>
    </message>
    <message>
        <source>two people sign</source>
        <translation type="unfinished">firman dos personas</translation>
    </message>
    <message>
        <source>typed below</source>
        <translation type="unfinished">escrito abajo</translation>
    </message>
    <message>
        <source>under capacity</source>
        <translation type="unfinished">bajo la capacidad</translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished">unidad</translation>
    </message>
    <message>
        <source>unit {shown} is not in the description</source>
        <translation type="unfinished">la unidad {shown} no está descrita</translation>
    </message>
    <message>
        <source>unknown command</source>
        <translation type="unfinished">orden desconocida</translation>
    </message>
    <message>
        <source>until, such as 09:40</source>
        <translation type="unfinished">hasta, como 09:40</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">máximo</translation>
    </message>
    <message>
        <source>upper {mass}</source>
        <translation type="unfinished">máximo {mass}</translation>
    </message>
    <message>
        <source>use by</source>
        <translation type="unfinished">caducidad</translation>
    </message>
    <message>
        <source>use by {day}</source>
        <translation type="unfinished">caducidad {day}</translation>
    </message>
    <message>
        <source>used to set the printer up</source>
        <translation type="unfinished">usadas para ajustar la impresora</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation type="unfinished">vacío</translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished">valor</translation>
    </message>
    <message>
        <source>value is {number}, {why}</source>
        <translation type="unfinished">valor {number}: {why}</translation>
    </message>
    <message>
        <source>value is {shown}, not a number as described</source>
        <translation type="unfinished">valor {shown}: no es número según la descripción</translation>
    </message>
    <message>
        <source>verified {code}</source>
        <translation type="unfinished">verificada {code}</translation>
    </message>
    <message>
        <source>verified {day}: give a day from {first} to today, {today}</source>
        <translation type="unfinished">verificada {day}: un día de {first} a hoy, {today}</translation>
    </message>
    <message>
        <source>verified {shown}: give the day as in {day}</source>
        <translation type="unfinished">verificada {shown}: escriba el día como {day}</translation>
    </message>
    <message>
        <source>verified, as in 2026-03-31</source>
        <translation type="unfinished">verificada, como 2026-03-31</translation>
    </message>
    <message>
        <source>version</source>
        <translation type="unfinished">versión</translation>
    </message>
    <message>
        <source>voided</source>
        <translation type="unfinished">anulada</translation>
    </message>
    <message>
        <source>wait until the scale shows a steady weight</source>
        <translation type="unfinished">espere a que la báscula muestre un peso estable</translation>
    </message>
    <message>
        <source>wait until the scale stands still: it is never set to zero in motion</source>
        <translation type="unfinished">espere a que la báscula esté quieta: nunca se pone a cero en movimiento</translation>
    </message>
    <message>
        <source>waiting for QA</source>
        <translation type="unfinished">esperando a calidad</translation>
    </message>
    <message>
        <source>waiting for the scale's first reading</source>
        <translation type="unfinished">esperando la primera lectura de la báscula</translation>
    </message>
    <message>
        <source>warm or damaged</source>
        <translation type="unfinished">caliente o dañado</translation>
    </message>
    <message>
        <source>was wrong, is set right</source>
        <translation type="unfinished">iba mal, ya está bien</translation>
    </message>
    <message>
        <source>wash record</source>
        <translation type="unfinished">registro de lavado</translation>
    </message>
    <message>
        <source>washed where allergens change</source>
        <translation type="unfinished">lavado si cambian los alérgenos</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished">desechado</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">pese una bolsa vacía antes de {count} bolsas</translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation type="unfinished">péselo</translation>
    </message>
    <message>
        <source>weigh the rest</source>
        <translation type="unfinished">pese el resto</translation>
    </message>
    <message>
        <source>weighed again</source>
        <translation type="unfinished">pesadas de nuevo</translation>
    </message>
    <message>
        <source>weighed again, good</source>
        <translation type="unfinished">pesado de nuevo, bien</translation>
    </message>
    <message>
        <source>weighed now</source>
        <translation type="unfinished">pesado ahora</translation>
    </message>
    <message>
        <source>weight is {shown}, not a number of the standard's form</source>
        <translation type="unfinished">peso {shown}: no es número de la norma</translation>
    </message>
    <message>
        <source>weight not displayed</source>
        <translation type="unfinished">peso no mostrado</translation>
    </message>
    <message>
        <source>weighted average {mean}</source>
        <translation type="unfinished">media ponderada {mean}</translation>
    </message>
    <message>
        <source>weights arrive and are used</source>
        <translation type="unfinished">los pesos llegan y se usan</translation>
    </message>
    <message>
        <source>weights come {number} s apart, and one counts for {most} s: set the scale, or the converter on its line, to send more often and at once</source>
        <translation type="unfinished">los pesos llegan cada {number} s y uno vale {most} s: ajuste la báscula, o el convertidor de su línea, para que envíe más a menudo y al momento</translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished">qué</translation>
    </message>
    <message>
        <source>what is open</source>
        <translation type="unfinished">lo pendiente</translation>
    </message>
    <message>
        <source>what the station sends comes back in front of the answers: switch the echo of the converter or of the scale off</source>
        <translation type="unfinished">lo que envía la estación vuelve delante de las respuestas: apague el eco del convertidor o de la báscula</translation>
    </message>
    <message>
        <source>which label?</source>
        <translation type="unfinished">¿qué etiqueta?</translation>
    </message>
    <message>
        <source>which {what}? Scan or type it first</source>
        <translation type="unfinished">¿qué {what}? Léalo o escríbalo primero</translation>
    </message>
    <message>
        <source>who decides? Choose a name first</source>
        <translation type="unfinished">¿quién decide? Elija primero un nombre</translation>
    </message>
    <message>
        <source>who says so? Touch WHO and choose your name</source>
        <translation type="unfinished">¿quién lo dice? Toque QUIÉN y elija su nombre</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">todo</translation>
    </message>
    <message>
        <source>whole error</source>
        <translation type="unfinished">todo el error</translation>
    </message>
    <message>
        <source>whole run: all {count} bags</source>
        <translation type="unfinished">toda la tanda: las {count} bolsas</translation>
    </message>
    <message>
        <source>whole run: {count} of about {all} bags</source>
        <translation type="unfinished">toda la tanda: {count} de unas {all} bolsas</translation>
    </message>
    <message>
        <source>whom does it go to? Choose a customer</source>
        <translation type="unfinished">¿para quién es? Elija un cliente</translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished">por qué</translation>
    </message>
    <message>
        <source>why it differs: scan or type</source>
        <translation type="unfinished">por qué difiere: lea o escriba</translation>
    </message>
    <message>
        <source>why it may go, or must be dumped</source>
        <translation type="unfinished">por qué puede salir o tirarse</translation>
    </message>
    <message>
        <source>why: scan or type the reason</source>
        <translation type="unfinished">por qué: lea o escriba</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation type="unfinished">limpiar</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">limpie el plato y ponga a cero</translation>
    </message>
    <message>
        <source>with a witness</source>
        <translation type="unfinished">con testigo</translation>
    </message>
    <message>
        <source>with {customer}</source>
        <translation type="unfinished">con {customer}</translation>
    </message>
    <message>
        <source>within both bounds</source>
        <translation type="unfinished">dentro de ambos límites</translation>
    </message>
    <message>
        <source>without it</source>
        <translation type="unfinished">sin ella</translation>
    </message>
    <message>
        <source>witness {who}</source>
        <translation type="unfinished">testigo {who}</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">trabajar en esta pantalla</translation>
    </message>
    <message>
        <source>wrong date</source>
        <translation type="unfinished">fecha mala</translation>
    </message>
    <message>
        <source>wrong label</source>
        <translation type="unfinished">etiqueta equivocada</translation>
    </message>
    <message>
        <source>wrong lots</source>
        <translation type="unfinished">lotes malos</translation>
    </message>
    <message>
        <source>wrong roll taken out</source>
        <translation type="unfinished">rollo equivocado retirado</translation>
    </message>
    <message>
        <source>wrong text</source>
        <translation type="unfinished">texto malo</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">peso incorrecto</translation>
    </message>
    <message>
        <source>you approve</source>
        <translation type="unfinished">usted aprueba</translation>
    </message>
    <message>
        <source>zero error</source>
        <translation type="unfinished">error de cero</translation>
    </message>
    <message>
        <source>{begin_code} to {end_code}</source>
        <translation type="unfinished">{begin_code} a {end_code}</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: FAILS</source>
        <translation type="unfinished">{case}: media {mean}, {count} bajo T1: FALLA</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: passes</source>
        <translation type="unfinished">{case}: media {mean}, {count} bajo T1: pasa</translation>
    </message>
    <message>
        <source>{code} is at {number}</source>
        <translation type="unfinished">{code} está en {number}</translation>
    </message>
    <message>
        <source>{code} is not known: receive it first</source>
        <translation type="unfinished">{code} desconocido: recíbalo primero</translation>
    </message>
    <message>
        <source>{code} {count} of {whole}</source>
        <translation type="unfinished">{code} {count} de {whole}</translation>
    </message>
    <message>
        <source>{count} BAGS HELD OR OUT</source>
        <translation type="unfinished">{count} BOLSAS RETENIDAS O FUERA</translation>
    </message>
    <message>
        <source>{count} bag is {what}.</source>
        <translation type="unfinished">{count} bolsa {what}.</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} bolsas</translation>
    </message>
    <message>
        <source>{count} bags an hour</source>
        <translation type="unfinished">{count} bolsas por hora</translation>
    </message>
    <message>
        <source>{count} bags are dumped: they lie in the reject bin. Release the empty hold.</source>
        <translation type="unfinished">{count} bolsas tiradas: están en el cubo de rechazos. Libere la retención vacía.</translation>
    </message>
    <message>
        <source>{count} bags are held</source>
        <translation type="unfinished">{count} bolsas retenidas</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} bolsas retenidas tras un control fallido: decide calidad: {where}</translation>
    </message>
    <message>
        <source>{count} bags are in the bin, {expected} by the record: say why they differ</source>
        <translation type="unfinished">{count} bolsas en el cubo, {expected} según registro: diga por qué difieren</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} bolsas listas: el jefe cierra la tanda</translation>
    </message>
    <message>
        <source>{count} bags are released.</source>
        <translation type="unfinished">{count} bolsas liberadas.</translation>
    </message>
    <message>
        <source>{count} bags are {what}.</source>
        <translation type="unfinished">{count} bolsas: {what}.</translation>
    </message>
    <message>
        <source>{count} bags from {begin} to {end} are held: {why}.</source>
        <translation type="unfinished">{count} bolsas de {begin} a {end} retenidas: {why}.</translation>
    </message>
    <message>
        <source>{count} bags held or out</source>
        <translation type="unfinished">{count} bolsas retenidas o fuera</translation>
    </message>
    <message>
        <source>{count} bags held, packed after {begin} until {end}</source>
        <translation type="unfinished">{count} bolsas retenidas, empacadas de {begin} a {end}</translation>
    </message>
    <message>
        <source>{count} bags in the batch; {plan}</source>
        <translation type="unfinished">{count} bolsas en el lote; {plan}</translation>
    </message>
    <message>
        <source>{count} bags lie in the bin by the record</source>
        <translation type="unfinished">{count} bolsas en el cubo según registro</translation>
    </message>
    <message>
        <source>{count} bags of one run</source>
        <translation type="unfinished">{count} bolsas de una tanda</translation>
    </message>
    <message>
        <source>{count} bags weigh less than {mass} in the mean</source>
        <translation type="unfinished">{count} bolsas pesan de media menos de {mass}</translation>
    </message>
    <message>
        <source>{count} bags {more} than recorded: count again, or say why</source>
        <translation type="unfinished">{count} bolsas {more} que las registradas: cuente otra vez, o diga por qué</translation>
    </message>
    <message>
        <source>{count} case</source>
        <translation type="unfinished">{count} caja</translation>
    </message>
    <message>
        <source>{count} cases</source>
        <translation type="unfinished">{count} cajas</translation>
    </message>
    <message>
        <source>{count} cases and pallets stand here</source>
        <translation type="unfinished">{count} cajas y palés aquí</translation>
    </message>
    <message>
        <source>{count} characters, allowed are {least} to {most}</source>
        <translation type="unfinished">{count} caracteres, se permiten {least} a {most}</translation>
    </message>
    <message>
        <source>{count} characters, at most {most}</source>
        <translation type="unfinished">{count} caracteres, máximo {most}</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation type="unfinished">{count} días</translation>
    </message>
    <message>
        <source>{count} days ago</source>
        <translation type="unfinished">hace {count} días</translation>
    </message>
    <message>
        <source>{count} fills are too few for a proposal: weigh {least} or more</source>
        <translation type="unfinished">{count} llenados son pocos para proponer: pese {least} o más</translation>
    </message>
    <message>
        <source>{count} held or set aside</source>
        <translation type="unfinished">{count} retenidas o apartadas</translation>
    </message>
    <message>
        <source>{count} issued, {used} used so far</source>
        <translation type="unfinished">{count} entregadas, {used} usadas hasta ahora</translation>
    </message>
    <message>
        <source>{count} kept.</source>
        <translation type="unfinished">{count} guardadas.</translation>
    </message>
    <message>
        <source>{count} labels</source>
        <translation type="unfinished">{count} etiquetas</translation>
    </message>
    <message>
        <source>{count} labels are in doubt</source>
        <translation type="unfinished">{count} etiquetas dudosas</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} etiquetas dudosas, primera {serial}: responda en {where}</translation>
    </message>
    <message>
        <source>{count} labels to answer for: look at each bag</source>
        <translation type="unfinished">{count} etiquetas por responder: mire cada bolsa</translation>
    </message>
    <message>
        <source>{count} lines are weights, {number} are not: look at each of them</source>
        <translation type="unfinished">{count} líneas son pesos, {number} no: mire cada una</translation>
    </message>
    <message>
        <source>{count} minutes</source>
        <translation type="unfinished">{count} minutos</translation>
    </message>
    <message>
        <source>{count} more windows wait.</source>
        <translation type="unfinished">Esperan {count} ventanas más.</translation>
    </message>
    <message>
        <source>{count} of its bags are held</source>
        <translation type="unfinished">{count} de sus bolsas retenidas</translation>
    </message>
    <message>
        <source>{count} of {draws} rehearsed samples of the stored bags pass (failed: mean {mean}, T1 {t1}, T2 {t2})</source>
        <translation type="unfinished">{count} de {draws} muestras ensayadas de las bolsas pasan (fallan: media {mean}, T1 {t1}, T2 {t2})</translation>
    </message>
    <message>
        <source>{count} packs are weighed already, more than the {lot} expected</source>
        <translation type="unfinished">ya se pesaron {count} bolsas, más que las {lot} esperadas</translation>
    </message>
    <message>
        <source>{count} rejects are undecided</source>
        <translation type="unfinished">{count} rechazos sin decidir</translation>
    </message>
    <message>
        <source>{count} rejects of {day} wait for a decision</source>
        <translation type="unfinished">{count} rechazos del {day} esperan decisión</translation>
    </message>
    <message>
        <source>{count} runs were purged on {day}, export {folder}</source>
        <translation type="unfinished">{count} tandas borradas el {day}, exportación {folder}</translation>
    </message>
    <message>
        <source>{count} runs were purged, the last on {day}, export {folder}</source>
        <translation type="unfinished">{count} tandas borradas, la última el {day}, exportación {folder}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} apartadas</translation>
    </message>
    <message>
        <source>{count} stops</source>
        <translation type="unfinished">{count} paradas</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} bolsas sospechosas retenidas: decide calidad o el jefe: {where}</translation>
    </message>
    <message>
        <source>{count} things are open</source>
        <translation type="unfinished">{count} cosas pendientes</translation>
    </message>
    <message>
        <source>{count} things are open, first: {what}. Settle them, or write why the day is signed all the same</source>
        <translation type="unfinished">{count} cosas pendientes, primera: {what}. Resuélvalas, o escriba por qué se firma el día igual</translation>
    </message>
    <message>
        <source>{count} things happened on {day}</source>
        <translation type="unfinished">{count} cosas pasaron el {day}</translation>
    </message>
    <message>
        <source>{count} things open, not signed</source>
        <translation type="unfinished">{count} cosas pendientes, sin firmar</translation>
    </message>
    <message>
        <source>{count} unit</source>
        <translation type="unfinished">{count} unidad</translation>
    </message>
    <message>
        <source>{count} units</source>
        <translation type="unfinished">{count} unidades</translation>
    </message>
    <message>
        <source>{count} with customers</source>
        <translation type="unfinished">{count} con clientes</translation>
    </message>
    <message>
        <source>{count} {code} free</source>
        <translation type="unfinished">{count} {code} libres</translation>
    </message>
    <message>
        <source>{day} is not reviewed and signed</source>
        <translation type="unfinished">el {day} no está revisado ni firmado</translation>
    </message>
    <message>
        <source>{day} is reviewed and signed.</source>
        <translation type="unfinished">{day} revisado y firmado.</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects, {filter}; {open} open</source>
        <translation type="unfinished">{day}: {shown} de {all} rechazos, {filter}; {open} pendientes</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects; {open} open</source>
        <translation type="unfinished">{day}: {shown} de {all} rechazos; {open} pendientes</translation>
    </message>
    <message>
        <source>{digits} is no day: give day and month, like 2411 for 24 November</source>
        <translation type="unfinished">{digits} no es un día: dé día y mes, como 2411 para el 24 de noviembre</translation>
    </message>
    <message>
        <source>{error}, beyond {limit}</source>
        <translation type="unfinished">{error}, pasa de {limit}</translation>
    </message>
    <message>
        <source>{error}, may be {limit}</source>
        <translation type="unfinished">{error}, se permite {limit}</translation>
    </message>
    <message>
        <source>{field} is read as {shown}, not {due}</source>
        <translation type="unfinished">{field} se lee {shown}, no {due}</translation>
    </message>
    <message>
        <source>{field} is {shown}, allowed is {allowed}</source>
        <translation type="unfinished">{field} es {shown}, se admite {allowed}</translation>
    </message>
    <message>
        <source>{first} and {count} more</source>
        <translation type="unfinished">{first} y {count} más</translation>
    </message>
    <message>
        <source>{first}, and {count} more</source>
        <translation type="unfinished">{first}, y {count} más</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} bolsas, máximo {most} bajo T1 ({clause})</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, then {second} more, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} bolsas, luego {second} más, máximo {most} bajo T1 ({clause})</translation>
    </message>
    <message>
        <source>{last} comes before {first}: give the first serial first</source>
        <translation type="unfinished">{last} va antes que {first}: dé primero la primera serie</translation>
    </message>
    <message>
        <source>{mass} DOES NOT FIT ({against})</source>
        <translation type="unfinished">{mass} NO CUADRA ({against})</translation>
    </message>
    <message>
        <source>{mass} FITS ({against})</source>
        <translation type="unfinished">{mass} CUADRA ({against})</translation>
    </message>
    <message>
        <source>{mass} a bag</source>
        <translation type="unfinished">{mass} por bolsa</translation>
    </message>
    <message>
        <source>{mass} g a bag</source>
        <translation type="unfinished">{mass} g por bolsa</translation>
    </message>
    <message>
        <source>{mass} is below what the scale weighs: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">{mass} está por debajo de lo que pesa la báscula: mire que el plato asiente bien y nada lo levante, vacíelo y ponga la báscula a cero</translation>
    </message>
    <message>
        <source>{mass} is in high resolution, which is not the indication</source>
        <translation type="unfinished">{mass} está en alta resolución, que no es la indicación</translation>
    </message>
    <message>
        <source>{mass} is more than the scale weighs, {most}</source>
        <translation type="unfinished">{mass} es más de lo que pesa la báscula, {most}</translation>
    </message>
    <message>
        <source>{mass} is not a multiple of {interval}</source>
        <translation type="unfinished">{mass} no es múltiplo de {interval}</translation>
    </message>
    <message>
        <source>{mass} is the tare, not the load</source>
        <translation type="unfinished">{mass} es la tara, no la carga</translation>
    </message>
    <message>
        <source>{mass} now</source>
        <translation type="unfinished">{mass} ahora</translation>
    </message>
    <message>
        <source>{mass} proposed</source>
        <translation type="unfinished">{mass} propuesto</translation>
    </message>
    <message>
        <source>{mass} this run</source>
        <translation type="unfinished">{mass} esta tanda</translation>
    </message>
    <message>
        <source>{mass} this run, {money} in money</source>
        <translation type="unfinished">{mass} esta tanda, {money} en dinero</translation>
    </message>
    <message>
        <source>{mass}: {count} bags, {percent} %</source>
        <translation type="unfinished">{mass}: {count} bolsas, {percent} %</translation>
    </message>
    <message>
        <source>{mean} OUTSIDE {least} to {most}</source>
        <translation type="unfinished">{mean} FUERA de {least} a {most}</translation>
    </message>
    <message>
        <source>{mean} within {least} to {most}</source>
        <translation type="unfinished">{mean} dentro de {least} a {most}</translation>
    </message>
    <message>
        <source>{name} not installed</source>
        <translation type="unfinished">{name} no instalado</translation>
    </message>
    <message>
        <source>{name} serial {code}</source>
        <translation type="unfinished">{name} serie {code}</translation>
    </message>
    <message>
        <source>{name} stands for {first} and for {second}: look at the case and keep one</source>
        <translation type="unfinished">{name} es {first} y también {second}: mire la caja y deje uno</translation>
    </message>
    <message>
        <source>{name} waits: a bag is on the pan</source>
        <translation type="unfinished">{name} espera: hay una bolsa en el plato</translation>
    </message>
    <message>
        <source>{name} would change what the bags of the open run weigh: end the run</source>
        <translation type="unfinished">{name} cambiaría el peso de las bolsas de la tanda abierta: cierre la tanda</translation>
    </message>
    <message>
        <source>{name}: mean {mean}, spread {spread}</source>
        <translation type="unfinished">{name}: media {mean}, dispersión {spread}</translation>
    </message>
    <message>
        <source>{name}: {code} from {who}</source>
        <translation type="unfinished">{name}: {code} de {who}</translation>
    </message>
    <message>
        <source>{number} % full</source>
        <translation type="unfinished">{number} % lleno</translation>
    </message>
    <message>
        <source>{number} % of nominal</source>
        <translation type="unfinished">{number} % del nominal</translation>
    </message>
    <message>
        <source>{number} April {count}</source>
        <translation type="unfinished">{number} de abril de {count}</translation>
    </message>
    <message>
        <source>{number} August {count}</source>
        <translation type="unfinished">{number} de agosto de {count}</translation>
    </message>
    <message>
        <source>{number} December {count}</source>
        <translation type="unfinished">{number} de diciembre de {count}</translation>
    </message>
    <message>
        <source>{number} February {count}</source>
        <translation type="unfinished">{number} de febrero de {count}</translation>
    </message>
    <message>
        <source>{number} January {count}</source>
        <translation type="unfinished">{number} de enero de {count}</translation>
    </message>
    <message>
        <source>{number} July {count}</source>
        <translation type="unfinished">{number} de julio de {count}</translation>
    </message>
    <message>
        <source>{number} June {count}</source>
        <translation type="unfinished">{number} de junio de {count}</translation>
    </message>
    <message>
        <source>{number} March {count}</source>
        <translation type="unfinished">{number} de marzo de {count}</translation>
    </message>
    <message>
        <source>{number} May {count}</source>
        <translation type="unfinished">{number} de mayo de {count}</translation>
    </message>
    <message>
        <source>{number} November {count}</source>
        <translation type="unfinished">{number} de noviembre de {count}</translation>
    </message>
    <message>
        <source>{number} October {count}</source>
        <translation type="unfinished">{number} de octubre de {count}</translation>
    </message>
    <message>
        <source>{number} September {count}</source>
        <translation type="unfinished">{number} de septiembre de {count}</translation>
    </message>
    <message>
        <source>{number} bags</source>
        <translation type="unfinished">{number} bolsas</translation>
    </message>
    <message>
        <source>{number} failed</source>
        <translation type="unfinished">falló a las {number}</translation>
    </message>
    <message>
        <source>{number} held</source>
        <translation type="unfinished">retenido desde {number}</translation>
    </message>
    <message>
        <source>{number} in money</source>
        <translation type="unfinished">{number} en dinero</translation>
    </message>
    <message>
        <source>{number} missing</source>
        <translation type="unfinished">faltan {number}</translation>
    </message>
    <message>
        <source>{number} of {whole}</source>
        <translation type="unfinished">{number} de {whole}</translation>
    </message>
    <message>
        <source>{number} of {whole} allowed</source>
        <translation type="unfinished">{number} de {whole} permitidas</translation>
    </message>
    <message>
        <source>{number} of {whole} bags</source>
        <translation type="unfinished">{number} de {whole} bolsas</translation>
    </message>
    <message>
        <source>{number} of {whole}: {what}</source>
        <translation type="unfinished">{number} de {whole}: {what}</translation>
    </message>
    <message>
        <source>{number} to {count} days</source>
        <translation type="unfinished">{number} a {count} días</translation>
    </message>
    <message>
        <source>{number} to {whole} {unit}</source>
        <translation type="unfinished">{number} a {whole} {unit}</translation>
    </message>
    <message>
        <source>{number} too many</source>
        <translation type="unfinished">sobran {number}</translation>
    </message>
    <message>
        <source>{picked} picked, {count} weighed</source>
        <translation type="unfinished">{picked} elegidas, {count} pesadas</translation>
    </message>
    <message>
        <source>{product}, version {version}</source>
        <translation type="unfinished">{product}, versión {version}</translation>
    </message>
    <message>
        <source>{product}, weighed {time}</source>
        <translation type="unfinished">{product}, pesada {time}</translation>
    </message>
    <message>
        <source>{product}: {mass} kg net</source>
        <translation type="unfinished">{product}: {mass} kg netos</translation>
    </message>
    <message>
        <source>{result} by {code}</source>
        <translation type="unfinished">{result} por {code}</translation>
    </message>
    <message>
        <source>{seconds} s: {frames} weights, {garbage} not understood ({percent} %, 5 % are allowed), {bytes} bytes</source>
        <translation type="unfinished">{seconds} s: {frames} pesos, {garbage} no entendidos ({percent} %, se permite 5 %), {bytes} bytes</translation>
    </message>
    <message>
        <source>{serial} must say</source>
        <translation type="unfinished">{serial} debe decir</translation>
    </message>
    <message>
        <source>{serial}: as recorded</source>
        <translation type="unfinished">{serial}: como está registrada</translation>
    </message>
    <message>
        <source>{sscc} had its use-by date on {day}: it must not leave</source>
        <translation type="unfinished">{sscc}: su fecha de caducidad fue {day}; no debe salir</translation>
    </message>
    <message>
        <source>{sscc} is a pallet: a pallet holds cases</source>
        <translation type="unfinished">{sscc} es un palé: un palé lleva cajas</translation>
    </message>
    <message>
        <source>{sscc} is gone with {shipment}</source>
        <translation type="unfinished">{sscc} salió con {shipment}</translation>
    </message>
    <message>
        <source>{sscc} is on pallet {pallet}</source>
        <translation type="unfinished">{sscc} está en el palé {pallet}</translation>
    </message>
    <message>
        <source>{sscc} is undone</source>
        <translation type="unfinished">{sscc} está deshecho</translation>
    </message>
    <message>
        <source>{sscc} is undone.</source>
        <translation type="unfinished">{sscc} deshecho.</translation>
    </message>
    <message>
        <source>{text} is no figure: key in digits, such as 3.4</source>
        <translation type="unfinished">{text} no es una cifra: teclee números, como 3.4</translation>
    </message>
    <message>
        <source>{text} is no serial of a bag, such as A1-7K-000042</source>
        <translation type="unfinished">{text} no es serie de bolsa, como A1-7K-000042</translation>
    </message>
    <message>
        <source>{text} is no time: write {form}</source>
        <translation type="unfinished">{text} no es una hora: escriba {form}</translation>
    </message>
    <message>
        <source>{time}: {mass}; mean so far {mean}</source>
        <translation type="unfinished">{time}: {mass}; media hasta ahora {mean}</translation>
    </message>
    <message>
        <source>{value} cannot be: allowed is {low} to {high}</source>
        <translation type="unfinished">{value} no puede ser: se permite {low} a {high}</translation>
    </message>
    <message>
        <source>{what} by {code}: {why}</source>
        <translation type="unfinished">{what} por {code}: {why}</translation>
    </message>
    <message>
        <source>{what} cannot be released: {why}</source>
        <translation type="unfinished">{what} no se puede liberar: {why}</translation>
    </message>
    <message>
        <source>{what} failed its check</source>
        <translation type="unfinished">{what}: no pasó el control</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} no pasó el control: corríjalo y contrólelo de nuevo: {where}</translation>
    </message>
    <message>
        <source>{what} failed its last check</source>
        <translation type="unfinished">{what}: falló su último control</translation>
    </message>
    <message>
        <source>{what} failed: write what is done about it before it is recorded</source>
        <translation type="unfinished">{what} falló: escriba qué se hace antes de registrarlo</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} en {minutes} min</translation>
    </message>
    <message>
        <source>{what} is on record.</source>
        <translation type="unfinished">{what} registrado.</translation>
    </message>
    <message>
        <source>{what} keeps no bag any more: release the hold</source>
        <translation type="unfinished">{what} ya no retiene bolsas: libere la retención</translation>
    </message>
    <message>
        <source>{what} lost on {code}</source>
        <translation type="unfinished">{what}: sin conexión en {code}</translation>
    </message>
    <message>
        <source>{what} needs {thing}</source>
        <translation type="unfinished">{what} necesita {thing}</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} ahora</translation>
    </message>
    <message>
        <source>{what} was released already</source>
        <translation type="unfinished">{what} ya se liberó</translation>
    </message>
    <message>
        <source>{what} was scanned already</source>
        <translation type="unfinished">{what} ya se leyó</translation>
    </message>
    <message>
        <source>{what} was {usual}, now {seen}: is this still the same product?</source>
        <translation type="unfinished">{what} era {usual}, ahora {seen}: ¿sigue siendo el mismo producto?</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: mire fecha y hora y firme en {where}</translation>
    </message>
    <message>
        <source>{what}: no checks in the settings</source>
        <translation type="unfinished">{what}: sin controles en la configuración</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} no puede firmar esto</translation>
    </message>
    <message>
        <source>{who} cannot witness a decision of {other}: choose another person</source>
        <translation type="unfinished">{who} no puede ser testigo de una decisión de {other}: elija otra persona</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} no firmó: para {act} hace falta PIN o tarjeta</translation>
    </message>
    <message>
        <source>{who} does not lead: the lead signs first</source>
        <translation type="unfinished">{who} no es jefe: el jefe firma primero</translation>
    </message>
    <message>
        <source>{who} has no PIN: the manager sets one, station people pin {id}</source>
        <translation type="unfinished">{who} no tiene PIN: lo pone el gerente, station people pin {id}</translation>
    </message>
    <message>
        <source>{who} is nobody in people.toml</source>
        <translation type="unfinished">{who} no está en people.toml</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} no puede firmar aquí</translation>
    </message>
    <message>
        <source>{who} signs first: another person signs second</source>
        <translation type="unfinished">{who} firma primero: otra persona firma después</translation>
    </message>
    <message>
        <source>{why}, after a page was out</source>
        <translation type="unfinished">{why}, después de salir una página</translation>
    </message>
    <message>
        <source>{why}, after printing may have begun</source>
        <translation type="unfinished">{why}, cuando la impresión quizá ya había empezado</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: dos personas aprueban la etiqueta en {where}</translation>
    </message>
</context>
</TS>
