<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 PRODUCTO</translation>
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
        <source>ADD</source>
        <translation type="unfinished">AÑADA</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">ALARMAS</translation>
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
        <source>BEFORE</source>
        <translation type="unfinished">ANTES</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">CAJÓN</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">Consumir preferentemente antes del</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">PIDA AYUDA</translation>
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
        <source>CHECKS</source>
        <translation type="unfinished">CONTROLES</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">BORRAR</translation>
    </message>
    <message>
        <source>CO2</source>
        <translation type="unfinished">CO2</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">CONTADO</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">CORTADO EL</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">DECIDIR</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">NO FIRMAR</translation>
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
        <source>EMPTY PAN</source>
        <translation type="unfinished">VACÍE PLATO</translation>
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
        <source>FILTER</source>
        <translation type="unfinished">FILTRAR</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">PRIMERA</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">DEJARLO</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">SEGUIR</translation>
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
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">LO HE VISTO</translation>
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
        <source>LABELS</source>
        <translation type="unfinished">ETIQUETAS</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">IDIOMA</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">JEFE</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">ALCE BOLSA</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">LÍNEA</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">CARGAR OTRA VEZ</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">BUSCAR</translation>
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
        <source>Labels in doubt</source>
        <translation type="unfinished">Etiquetas dudosas</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">Idioma de la pantalla del empacador</translation>
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
        <source>MANAGER</source>
        <translation type="unfinished">GERENTE</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">MÁS</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Neto medio {mass}</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">NUEVA RETENCIÓN</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">SIN LECTURA</translation>
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
        <source>No good bag yet</source>
        <translation type="unfinished">Aún ninguna bolsa buena</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">No hay tanda abierta</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">DEL EMPACADOR</translation>
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
        <source>On the scale</source>
        <translation type="unfinished">En la báscula</translation>
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
        <source>PAPER</source>
        <translation type="unfinished">PAPEL</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">IMPRIMIR</translation>
    </message>
    <message>
        <source>QA</source>
        <translation type="unfinished">CALIDAD</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">CALIDAD</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">RECIBIR</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">REGISTRAR</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">REGISTRAR PROPUESTA</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">ENSAYAR</translation>
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
        <source>ROLL</source>
        <translation type="unfinished">ROLLO</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">TANDA</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">TANDA, luego {door} ({key})</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Rechazado. {why}</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Tanda abierta</translation>
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
        <source>SEAL</source>
        <translation type="unfinished">SELLE</translation>
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
        <source>STOP</source>
        <translation type="unfinished">PARADA</translation>
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
        <source>Start a run</source>
        <translation type="unfinished">Abrir una tanda</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, nominal</translation>
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
        <source>TRACE</source>
        <translation type="unfinished">RASTREO</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">PRÁCTICA</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">Vale lo que indica la báscula. Si esta pantalla y la báscula difieren, vale la báscula: pare y llame al jefe.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Toque primero su nombre.</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">Fecha de caducidad</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">ESPERE</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">PESAR UNA BOLSA</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">LIMPIE</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">CALCULAR</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">¿Por qué se aparta?</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">hay una bolsa en el plato: termínela, retírela y cierre la tanda</translation>
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
        <source>a cover is open: close it</source>
        <translation type="unfinished">una tapa está abierta: ciérrela</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">una puerta está abierta: ciérrela</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">hay un lote retenido en la línea</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">una etiqueta no coincide</translation>
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
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">un rollo nuevo empieza con una primera etiqueta</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">una pausa</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">hay una tanda abierta: ciérrela antes de abrir otra</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">tras una parada</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">y {count} más, debajo de estas</translation>
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
        <source>as people.toml says</source>
        <translation type="unfinished">según people.toml</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">preguntando a la línea …</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">al azar</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">bolsa</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">bolsa {code}, lote de film {lot} sin estudio de tara: hágalo: {where}</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">bolsas</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">descanso</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">sello abierto</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">llamar a alguien</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">cambiar o explicar un rollo de etiquetas</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">control de {what}</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">controle la báscula después de {what}: {where}</translation>
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
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">compare la etiqueta y resuelva la lectura</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">confirmar fecha y hora</translation>
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
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">cuente las bolsas de la tanda anterior: {where}</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">fecha u hora dudosa</translation>
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
        <source>decide about suspect bags</source>
        <translation type="unfinished">decidir sobre bolsas sospechosas</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">decidir qué pasa con una bolsa</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">hecho</translation>
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
        <source>expired – take it off the line</source>
        <translation type="unfinished">caducado: sáquelo de la línea</translation>
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
        <source>first label</source>
        <translation type="unfinished">primera etiqueta</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">mínimo, objetivo, máximo</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">cuerpo extraño</translation>
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
        <source>gross weight</source>
        <translation type="unfinished">peso bruto</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">retenido: llame a calidad</translation>
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
        <source>hold, no record</source>
        <translation type="unfinished">retener, sin registro</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">en la bolsa {mass}</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">no responde: ¿está encendida y conectada?</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">no salió en {seconds} s: mire si sale</translation>
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
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">guardar, restaurar o depurar el registro</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">la etiqueta no vale</translation>
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
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">etiqueta {serial} dudosa: {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">la etiqueta {serial} no ha salido: mire la impresora</translation>
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
        <source>last label</source>
        <translation type="unfinished">última etiqueta</translation>
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
        <source>lead, on the scale</source>
        <translation type="unfinished">jefe, en la báscula</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">salir de pantalla completa</translation>
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
        <source>look whether the label is whole</source>
        <translation type="unfinished">mire si la etiqueta está entera</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">lote {lot} retenido: sáquelo y cargue otro: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">lote {lot} desconocido: recíbalo primero</translation>
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
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lote {lot}: {why}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">máquina</translation>
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
        <source>metal detector</source>
        <translation type="unfinished">detector de metales</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">mover un lote en la línea</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">aún sin PIN ni tarjeta</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">ninguna de estas bolsas es producto</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">no hay rollo de etiquetas: lea uno en {where}</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">no quedan etiquetas: cargue un rollo</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">falta producto</translation>
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
        <source>no run is open</source>
        <translation type="unfinished">no hay tanda abierta</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">no hay tanda abierta: la abre el jefe</translation>
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
        <source>not labelled: {reason}</source>
        <translation type="unfinished">sin etiqueta: {reason}</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">sin revisar</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">de {count} bolsas</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">en la báscula: {who}</translation>
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
        <source>over capacity: take the load off</source>
        <translation type="unfinished">sobrecarga: retire la carga</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">empacador</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">planifique el control</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">imprimir otra vez una etiqueta</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">temperatura del producto</translation>
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
        <source>put it right, then check again</source>
        <translation type="unfinished">corríjalo y controle de nuevo</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">calidad</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">recibir una entrega</translation>
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
        <source>refuse a label</source>
        <translation type="unfinished">rechazar una etiqueta</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">liberar lo retenido</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">revisar y firmar un día</translation>
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
        <source>room temperature</source>
        <translation type="unfinished">temperatura de la sala</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">reglas</translation>
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
        <source>say that an alarm is seen</source>
        <translation type="unfinished">decir que se vio una alarma</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">decir qué pasó con una etiqueta</translation>
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
        <source>scale line</source>
        <translation type="unfinished">línea de la báscula</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">la báscula muestra {mass}, vale lo que indica la báscula</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">leer una etiqueta</translation>
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
        <source>scan the last label</source>
        <translation type="unfinished">lea la última etiqueta</translation>
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
        <source>service</source>
        <translation type="unfinished">servicio</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">apartada</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">gestionar personas, PIN y tarjetas</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">se aparta: {reason}</translation>
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
        <source>ship</source>
        <translation type="unfinished">expedir</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">firmar un cambio de tanda</translation>
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
        <source>start a run</source>
        <translation type="unfinished">abrir una tanda</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">parar la línea</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">bolsas guardadas</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">sáquelo: {where}</translation>
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
        <source>tare</source>
        <translation type="unfinished">tara</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">objetivo</translation>
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
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">disco lleno: libere espacio e imprima de nuevo</translation>
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
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">falta la carpeta de etiquetas: cree {folder} otra vez</translation>
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
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">la línea está parada, {reason}: TANDA, luego CAMBIO (F8) para seguir</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">la línea se paró</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">la media está bajo el nominal</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">el plato debe estar vacío antes de la próxima bolsa</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">la impresora desistió</translation>
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
        <source>the printer: {why}</source>
        <translation type="unfinished">la impresora: {why}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">la cola no llega a la impresora: enciéndala, revise el cable</translation>
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
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">la báscula no pasó el control: ajústela y contrólela de nuevo: {where}</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">la báscula no responde: revise cable y corriente</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">la báscula muestra un peso neto: borre su tara, la estación resta la bolsa</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">la báscula está en {unit}, la tanda en {other}: cambie la báscula</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">la lectura de una etiqueta está atrasada: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">la lectura de la etiqueta {serial} no coincide: el jefe la resuelve en {where}</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">la estación va atrasada: retire la bolsa y espere</translation>
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
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">esta bolsa no está registrada ni etiquetada: {why}</translation>
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
        <source>touch an alarm first</source>
        <translation type="unfinished">toque primero una alarma</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">toque primero quién es usted</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">máximo</translation>
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
        <source>wash record</source>
        <translation type="unfinished">registro de lavado</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">pese una bolsa vacía antes de {count} bolsas</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">limpie el plato y ponga a cero</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">trabajar en esta pantalla</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">peso incorrecto</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} bolsas</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} bolsas retenidas tras un control fallido: decide calidad: {where}</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} bolsas listas: el jefe cierra la tanda</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} etiquetas dudosas, primera {serial}: responda en {where}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} apartadas</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} bolsas sospechosas retenidas: decide calidad o el jefe: {where}</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} no pasó el control: corríjalo y contrólelo de nuevo: {where}</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} en {minutes} min</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} ahora</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: mire fecha y hora y firme en {where}</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} no puede firmar esto</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} no firmó: para {act} hace falta PIN o tarjeta</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} no puede firmar aquí</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: dos personas aprueban la etiqueta en {where}</translation>
    </message>
</context>
</TS>
