<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt_PT" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 PRODUTO</translation>
    </message>
    <message>
        <source>2 LOTS</source>
        <translation type="unfinished">2 LOTES</translation>
    </message>
    <message>
        <source>3 CREW</source>
        <translation type="unfinished">3 EQUIPA</translation>
    </message>
    <message>
        <source>A code was scanned, but no field waits for one: open the page it is for</source>
        <translation type="unfinished">Foi lido um código, mas nenhum campo o espera: abra a página certa</translation>
    </message>
    <message>
        <source>ADD</source>
        <translation type="unfinished">PONHA</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">ALARMES</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation type="unfinished">VOLTAR</translation>
    </message>
    <message>
        <source>BAG AGAIN</source>
        <translation type="unfinished">REPETIR SACO</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">PONHA SACO</translation>
    </message>
    <message>
        <source>BEFORE</source>
        <translation type="unfinished">ANTES</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">CAIXA</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">Consumir de preferência antes de</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">PEÇA AJUDA</translation>
    </message>
    <message>
        <source>CHANGE</source>
        <translation type="unfinished">MUDANÇA</translation>
    </message>
    <message>
        <source>CHANGE, CLOCK</source>
        <translation type="unfinished">MUDANÇA, RELÓGIO</translation>
    </message>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished">CONTROLOS</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">APAGAR</translation>
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
        <translation type="unfinished">CORTADO EM</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">DECIDIR</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">NÃO ASSINAR</translation>
    </message>
    <message>
        <source>DRAW</source>
        <translation type="unfinished">SORTEAR</translation>
    </message>
    <message>
        <source>DUMP</source>
        <translation type="unfinished">DEITAR FORA</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">ESVAZIE</translation>
    </message>
    <message>
        <source>END</source>
        <translation type="unfinished">FIM</translation>
    </message>
    <message>
        <source>END RUN</source>
        <translation type="unfinished">FECHAR SÉRIE</translation>
    </message>
    <message>
        <source>ENTER</source>
        <translation type="unfinished">REGISTAR</translation>
    </message>
    <message>
        <source>FILTER</source>
        <translation type="unfinished">FILTRAR</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">PRIMEIRA</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">DESISTIR</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">CONTINUAR</translation>
    </message>
    <message>
        <source>Good bags: {count} of {order}, set aside: {aside}</source>
        <translation type="unfinished">Sacos bons: {count} de {order}, separados: {aside}</translation>
    </message>
    <message>
        <source>Good bags: {count}, set aside: {aside}</source>
        <translation type="unfinished">Sacos bons: {count}, separados: {aside}</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation type="unfinished">RETER</translation>
    </message>
    <message>
        <source>HOLD IT</source>
        <translation type="unfinished">RETÊ-LO</translation>
    </message>
    <message>
        <source>HOLD STAYS</source>
        <translation type="unfinished">FICA RETIDO</translation>
    </message>
    <message>
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">JÁ VI</translation>
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
        <translation type="unfinished">LÍDER</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">LEVE O SACO</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">LINHA</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">CARREGAR DE NOVO</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">PROCURAR</translation>
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
        <translation type="unfinished">Etiquetas em dúvida</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">Idioma do ecrã do embalador</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished">Líder</translation>
    </message>
    <message>
        <source>Lead is wanted at this line</source>
        <translation type="unfinished">O líder é preciso nesta linha</translation>
    </message>
    <message>
        <source>Lead {who}, on the scale {person}</source>
        <translation type="unfinished">Líder {who}, na balança {person}</translation>
    </message>
    <message>
        <source>MANAGER</source>
        <translation type="unfinished">GERENTE</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">MAIS</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Líquido médio {mass}</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">NOVA RETENÇÃO</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">SEM LEITURA</translation>
    </message>
    <message>
        <source>NUMBERS</source>
        <translation type="unfinished">NÚMEROS</translation>
    </message>
    <message>
        <source>Next: {what}</source>
        <translation type="unfinished">A seguir: {what}</translation>
    </message>
    <message>
        <source>No alarm stands. What needs nobody is kept as an event.</source>
        <translation type="unfinished">Nenhum alarme. O que não precisa de ninguém fica como evento.</translation>
    </message>
    <message>
        <source>No good bag yet</source>
        <translation type="unfinished">Ainda nenhum saco bom</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">Nenhuma série aberta</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">DO EMBALADOR</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation type="unfinished">ABRIR</translation>
    </message>
    <message>
        <source>OPEN ONLY</source>
        <translation type="unfinished">SÓ ABERTOS</translation>
    </message>
    <message>
        <source>ORDER DONE</source>
        <translation type="unfinished">TERMINADO</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished">Na balança</translation>
    </message>
    <message>
        <source>Order: open</source>
        <translation type="unfinished">Encomenda: aberta</translation>
    </message>
    <message>
        <source>Order: {count} bags</source>
        <translation type="unfinished">Encomenda: {count} sacos</translation>
    </message>
    <message>
        <source>PACKED ON</source>
        <translation type="unfinished">EMBALADO EM</translation>
    </message>
    <message>
        <source>PACKER</source>
        <translation type="unfinished">EMBALAGEM</translation>
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
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">QUALIDADE</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">RECEBER</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">REGISTAR</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">REGISTAR PROPOSTA</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">ENSAIAR</translation>
    </message>
    <message>
        <source>RELEASE</source>
        <translation type="unfinished">LIBERTAR</translation>
    </message>
    <message>
        <source>RELEASE ALL</source>
        <translation type="unfinished">LIBERTAR TUDO</translation>
    </message>
    <message>
        <source>RELEASE BEFORE STEP</source>
        <translation type="unfinished">LIBERTAR OS DE ANTES</translation>
    </message>
    <message>
        <source>ROLL</source>
        <translation type="unfinished">ROLO</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">SÉRIE</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">SÉRIE, depois {door} ({key})</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Recusado. {why}</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Série aberta</translation>
    </message>
    <message>
        <source>SCALE</source>
        <translation type="unfinished">BALANÇA</translation>
    </message>
    <message>
        <source>SCAN</source>
        <translation type="unfinished">LEITURA</translation>
    </message>
    <message>
        <source>SEAL</source>
        <translation type="unfinished">SELE</translation>
    </message>
    <message>
        <source>SERVICE</source>
        <translation type="unfinished">SERVIÇO</translation>
    </message>
    <message>
        <source>SET ASIDE</source>
        <translation type="unfinished">SEPARE</translation>
    </message>
    <message>
        <source>SHELVE</source>
        <translation type="unfinished">ADIAR</translation>
    </message>
    <message>
        <source>SHIPPING</source>
        <translation type="unfinished">EXPEDIÇÃO</translation>
    </message>
    <message>
        <source>SIGN</source>
        <translation type="unfinished">ASSINAR</translation>
    </message>
    <message>
        <source>SIGN DAY</source>
        <translation type="unfinished">ASSINAR DIA</translation>
    </message>
    <message>
        <source>START CHECK</source>
        <translation type="unfinished">COMEÇAR CONTROLO</translation>
    </message>
    <message>
        <source>START OVER</source>
        <translation type="unfinished">RECOMEÇAR</translation>
    </message>
    <message>
        <source>START RUN</source>
        <translation type="unfinished">ABRIR SÉRIE</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished">PARAGEM</translation>
    </message>
    <message>
        <source>Sign as the second person to {act}</source>
        <translation type="unfinished">Assine como segunda pessoa para {act}</translation>
    </message>
    <message>
        <source>Sign to {act}</source>
        <translation type="unfinished">Assine para {act}</translation>
    </message>
    <message>
        <source>Start a run</source>
        <translation type="unfinished">Abrir uma série</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, nominal</translation>
    </message>
    <message>
        <source>TAKE OUT</source>
        <translation type="unfinished">TIRE</translation>
    </message>
    <message>
        <source>TAKE READING</source>
        <translation type="unfinished">TOMAR LEITURA</translation>
    </message>
    <message>
        <source>TARE</source>
        <translation type="unfinished">TARA</translation>
    </message>
    <message>
        <source>TRACE</source>
        <translation type="unfinished">RASTREIO</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">FORMAÇÃO</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">Vale a indicação da balança. Se este ecrã e a balança diferem, vale a balança: pare e chame o líder.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Toque primeiro no seu nome.</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">Consumir até</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">ESPERE</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">PESAR UM SACO</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">LIMPE</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">CALCULAR</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">Porque é separado?</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">há um saco no prato: termine-o, levante-o e feche a série</translation>
    </message>
    <message>
        <source>a check failed</source>
        <translation type="unfinished">um controlo falhou</translation>
    </message>
    <message>
        <source>a check goes on at the scale: put no bag on it</source>
        <translation type="unfinished">a balança está em controlo: não ponha sacos</translation>
    </message>
    <message>
        <source>a check is due soon</source>
        <translation type="unfinished">controlo em breve</translation>
    </message>
    <message>
        <source>a check is overdue</source>
        <translation type="unfinished">um controlo está atrasado</translation>
    </message>
    <message>
        <source>a cover is open: close it</source>
        <translation type="unfinished">uma tampa está aberta: feche-a</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">uma porta está aberta: feche-a</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">há um lote retido na linha</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">uma etiqueta não confere</translation>
    </message>
    <message>
        <source>a lot ends soon</source>
        <translation type="unfinished">um lote acaba em breve</translation>
    </message>
    <message>
        <source>a lot should be empty</source>
        <translation type="unfinished">um lote devia estar vazio</translation>
    </message>
    <message>
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">um rolo novo começa com uma primeira etiqueta</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">uma pausa</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">há uma série aberta: feche-a antes da próxima</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">após paragem</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">e mais {count}, abaixo destes</translation>
    </message>
    <message>
        <source>approve a label</source>
        <translation type="unfinished">aprovar uma etiqueta</translation>
    </message>
    <message>
        <source>approve a product version</source>
        <translation type="unfinished">aprovar uma versão do produto</translation>
    </message>
    <message>
        <source>approve or refuse a target</source>
        <translation type="unfinished">aprovar ou recusar um alvo</translation>
    </message>
    <message>
        <source>as people.toml says</source>
        <translation type="unfinished">conforme people.toml</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">a perguntar à linha …</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">ao acaso</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">saco</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">saco {code}, lote de filme {lot} sem estudo de tara: faça um: {where}</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">sacos</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">intervalo</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">selagem aberta</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">chamar alguém</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">mudar ou explicar um rolo de etiquetas</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">controlo de {what}</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">controle a balança depois de {what}: {where}</translation>
    </message>
    <message>
        <source>checking …</source>
        <translation type="unfinished">a verificar …</translation>
    </message>
    <message>
        <source>checks made</source>
        <translation type="unfinished">controlos feitos</translation>
    </message>
    <message>
        <source>choose a lot of {component}</source>
        <translation type="unfinished">escolha um lote de {component}</translation>
    </message>
    <message>
        <source>choose a product</source>
        <translation type="unfinished">escolha um produto</translation>
    </message>
    <message>
        <source>choose the product first, then its lots</source>
        <translation type="unfinished">escolha primeiro o produto, depois os lotes</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation type="unfinished">limpeza</translation>
    </message>
    <message>
        <source>clear a scan that differed</source>
        <translation type="unfinished">resolver uma leitura que não confere</translation>
    </message>
    <message>
        <source>clear the line and sign for it: {where}</source>
        <translation type="unfinished">limpe a linha e assine: {where}</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">fechada</translation>
    </message>
    <message>
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">compare a etiqueta e resolva a leitura</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">confirmar data e hora</translation>
    </message>
    <message>
        <source>cooler temperature</source>
        <translation type="unfinished">temperatura da câmara fria</translation>
    </message>
    <message>
        <source>correct what was recorded</source>
        <translation type="unfinished">corrigir o que foi registado</translation>
    </message>
    <message>
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">conte os sacos da série anterior: {where}</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">data ou hora em dúvida</translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished">dia</translation>
    </message>
    <message>
        <source>day after</source>
        <translation type="unfinished">dia seguinte</translation>
    </message>
    <message>
        <source>day before</source>
        <translation type="unfinished">dia anterior</translation>
    </message>
    <message>
        <source>decide about suspect bags</source>
        <translation type="unfinished">decidir sobre sacos suspeitos</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">decidir o destino de um saco</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">feito</translation>
    </message>
    <message>
        <source>end a run</source>
        <translation type="unfinished">fechar uma série</translation>
    </message>
    <message>
        <source>end the run</source>
        <translation type="unfinished">feche a série</translation>
    </message>
    <message>
        <source>enter this</source>
        <translation type="unfinished">registar isto</translation>
    </message>
    <message>
        <source>expired – take it off the line</source>
        <translation type="unfinished">fora de prazo – retire da linha</translation>
    </message>
    <message>
        <source>fetch the next lot</source>
        <translation type="unfinished">traga o próximo lote</translation>
    </message>
    <message>
        <source>fetch the next roll</source>
        <translation type="unfinished">traga o próximo rolo</translation>
    </message>
    <message>
        <source>fill a case or close a pallet</source>
        <translation type="unfinished">encher uma caixa ou fechar uma palete</translation>
    </message>
    <message>
        <source>fill a little more, look at NUMBERS</source>
        <translation type="unfinished">encha um pouco mais, veja NÚMEROS</translation>
    </message>
    <message>
        <source>film or labels</source>
        <translation type="unfinished">filme ou etiquetas</translation>
    </message>
    <message>
        <source>first label</source>
        <translation type="unfinished">primeira etiqueta</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">mínimo, alvo, máximo</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">corpo estranho</translation>
    </message>
    <message>
        <source>go on after a pause</source>
        <translation type="unfinished">continuar após uma pausa</translation>
    </message>
    <message>
        <source>go on after a stop</source>
        <translation type="unfinished">continuar após uma paragem</translation>
    </message>
    <message>
        <source>gross weight</source>
        <translation type="unfinished">peso bruto</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">retido – chame a QA</translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished">reter</translation>
    </message>
    <message>
        <source>hold down</source>
        <translation type="unfinished">manter premido</translation>
    </message>
    <message>
        <source>hold, no record</source>
        <translation type="unfinished">reter, sem registo</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">no saco {mass}</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">não responde: está ligada, o cabo está posto?</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">não saiu em {seconds} s: veja se sai</translation>
    </message>
    <message>
        <source>its run ended before the printer said that it came out</source>
        <translation type="unfinished">a série fechou antes de a impressora confirmar a saída</translation>
    </message>
    <message>
        <source>its use-by {day} is past: end the run</source>
        <translation type="unfinished">a data-limite {day} já passou: feche a série</translation>
    </message>
    <message>
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">guardar, repor ou limpar o registo</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">etiqueta anulada</translation>
    </message>
    <message>
        <source>label of the roll</source>
        <translation type="unfinished">etiqueta do rolo</translation>
    </message>
    <message>
        <source>label on bag</source>
        <translation type="unfinished">etiqueta no saco</translation>
    </message>
    <message>
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">etiqueta {serial} em dúvida: {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">a etiqueta {serial} ainda não saiu: veja a impressora</translation>
    </message>
    <message>
        <source>label {serial} may still come out: cancel it at the printer, or wait</source>
        <translation type="unfinished">a etiqueta {serial} ainda pode sair: anule na impressora ou espere</translation>
    </message>
    <message>
        <source>labels are jammed: clear them</source>
        <translation type="unfinished">etiquetas encravadas: retire-as</translation>
    </message>
    <message>
        <source>labels are not taken away: take them away</source>
        <translation type="unfinished">etiquetas por retirar: retire-as</translation>
    </message>
    <message>
        <source>last label</source>
        <translation type="unfinished">última etiqueta</translation>
    </message>
    <message>
        <source>last {what}</source>
        <translation type="unfinished">último {what}</translation>
    </message>
    <message>
        <source>lead</source>
        <translation type="unfinished">líder</translation>
    </message>
    <message>
        <source>lead, on the scale</source>
        <translation type="unfinished">líder, na balança</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">sair do ecrã inteiro</translation>
    </message>
    <message>
        <source>look at date and time, then sign</source>
        <translation type="unfinished">veja data e hora e assine</translation>
    </message>
    <message>
        <source>look at the bag and its label, then GO ON</source>
        <translation type="unfinished">veja o saco e a etiqueta, depois CONTINUAR</translation>
    </message>
    <message>
        <source>look at the printer</source>
        <translation type="unfinished">veja a impressora</translation>
    </message>
    <message>
        <source>look at the scale's cable and power</source>
        <translation type="unfinished">verifique cabo e corrente da balança</translation>
    </message>
    <message>
        <source>look whether a label came out</source>
        <translation type="unfinished">veja se saiu uma etiqueta</translation>
    </message>
    <message>
        <source>look whether the label is whole</source>
        <translation type="unfinished">veja se a etiqueta está inteira</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">lote {lot} retido: retire-o e carregue outro: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">lote {lot} desconhecido: receba-o primeiro</translation>
    </message>
    <message>
        <source>lot {lot} is on the line and on no label: take it off: {where}</source>
        <translation type="unfinished">lote {lot} está na linha e em nenhuma etiqueta: retire-o: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is {component}, which {product} does not contain: allowed are {allowed}</source>
        <translation type="unfinished">o lote {lot} é {component}, que {product} não leva: permitidos {allowed}</translation>
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
        <translation type="unfinished">faça o controlo</translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished">gerente</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">detetor de metais</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">mover um lote na linha</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">ainda sem PIN nem cartão</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">nenhum destes sacos é produto</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">não há rolo de etiquetas: leia um em {where}</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">sem etiquetas: ponha um rolo</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">falta produto</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished">sem leitura</translation>
    </message>
    <message>
        <source>no reading with a bag on the pan</source>
        <translation type="unfinished">sem leitura com um saco no prato</translation>
    </message>
    <message>
        <source>no run is open</source>
        <translation type="unfinished">nenhuma série aberta</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">nenhuma série aberta: o líder abre uma</translation>
    </message>
    <message>
        <source>nobody signed</source>
        <translation type="unfinished">ninguém assinou</translation>
    </message>
    <message>
        <source>nobody who may sign has a PIN or badge: station people pin</source>
        <translation type="unfinished">ninguém que possa assinar tem PIN ou cartão: station people pin</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">sem etiqueta: {reason}</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">ainda não revisto</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">de {count} sacos</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">na balança: {who}</translation>
    </message>
    <message>
        <source>open order</source>
        <translation type="unfinished">encomenda aberta</translation>
    </message>
    <message>
        <source>or scan a badge</source>
        <translation type="unfinished">ou leia um cartão</translation>
    </message>
    <message>
        <source>or the day</source>
        <translation type="unfinished">ou o dia</translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished">outro</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">excesso de carga: retire a carga</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">embalador</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">planeie o controlo</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">imprimir de novo uma etiqueta</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">temperatura do produto</translation>
    </message>
    <message>
        <source>production day</source>
        <translation type="unfinished">dia de produção</translation>
    </message>
    <message>
        <source>propose a target</source>
        <translation type="unfinished">propor um alvo</translation>
    </message>
    <message>
        <source>put it right, then check again</source>
        <translation type="unfinished">corrija e controle de novo</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">QA</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">receber uma entrega</translation>
    </message>
    <message>
        <source>record a check of quality</source>
        <translation type="unfinished">registar um controlo de qualidade</translation>
    </message>
    <message>
        <source>record a good check of the scale</source>
        <translation type="unfinished">registar um bom controlo da balança</translation>
    </message>
    <message>
        <source>record a study of empty bags</source>
        <translation type="unfinished">registar um estudo de sacos vazios</translation>
    </message>
    <message>
        <source>record an empty bag that fits</source>
        <translation type="unfinished">registar um saco vazio que confere</translation>
    </message>
    <message>
        <source>record that a check failed</source>
        <translation type="unfinished">registar um controlo falhado</translation>
    </message>
    <message>
        <source>refuse a label</source>
        <translation type="unfinished">recusar uma etiqueta</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">libertar o que está retido</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">rever e assinar um dia</translation>
    </message>
    <message>
        <source>ribbon or ink is missing: put it in</source>
        <translation type="unfinished">falta fita ou tinta: ponha</translation>
    </message>
    <message>
        <source>ribbon or ink is used up: change it</source>
        <translation type="unfinished">fita ou tinta acabada: mude</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation type="unfinished">temperatura da sala</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">regras</translation>
    </message>
    <message>
        <source>run of {product} ended</source>
        <translation type="unfinished">série de {product} fechada</translation>
    </message>
    <message>
        <source>run of {product} open, blend lot {lot}</source>
        <translation type="unfinished">série de {product} aberta, lote de mistura {lot}</translation>
    </message>
    <message>
        <source>say that an alarm is seen</source>
        <translation type="unfinished">dizer que um alarme foi visto</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">dizer o que foi feito de uma etiqueta</translation>
    </message>
    <message>
        <source>say which lot is on the line</source>
        <translation type="unfinished">diga que lote está na linha</translation>
    </message>
    <message>
        <source>say who is on the scale</source>
        <translation type="unfinished">diga quem está na balança</translation>
    </message>
    <message>
        <source>say who leads</source>
        <translation type="unfinished">diga quem lidera</translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished">balança</translation>
    </message>
    <message>
        <source>scale check</source>
        <translation type="unfinished">controlo da balança</translation>
    </message>
    <message>
        <source>scale check at the end of the run</source>
        <translation type="unfinished">controlo da balança no fim da série</translation>
    </message>
    <message>
        <source>scale line</source>
        <translation type="unfinished">ligação da balança</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">a balança mostra {mass}, vale a indicação da balança</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">ler uma etiqueta</translation>
    </message>
    <message>
        <source>scan of a label</source>
        <translation type="unfinished">leitura de etiqueta</translation>
    </message>
    <message>
        <source>scan or type a lot code, then Enter</source>
        <translation type="unfinished">leia ou escreva um código de lote e Enter</translation>
    </message>
    <message>
        <source>scan the last label</source>
        <translation type="unfinished">leia a última etiqueta</translation>
    </message>
    <message>
        <source>scan the {what}: {where}</source>
        <translation type="unfinished">leia a {what}: {where}</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">selagem</translation>
    </message>
    <message>
        <source>service</source>
        <translation type="unfinished">serviço</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">separado</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">gerir pessoas, PIN e cartões</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">a separar: {reason}</translation>
    </message>
    <message>
        <source>shelve an alarm</source>
        <translation type="unfinished">adiar um alarme</translation>
    </message>
    <message>
        <source>shelved until {time}</source>
        <translation type="unfinished">adiado até {time}</translation>
    </message>
    <message>
        <source>ship</source>
        <translation type="unfinished">expedir</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">assinar uma mudança de série</translation>
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
        <translation type="unfinished">abrir uma série</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">parar a linha</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">sacos guardados</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">retire-o: {where}</translation>
    </message>
    <message>
        <source>take over changed settings</source>
        <translation type="unfinished">aceitar definições mudadas</translation>
    </message>
    <message>
        <source>take the lot off and load another</source>
        <translation type="unfinished">retire o lote e carregue outro</translation>
    </message>
    <message>
        <source>tare</source>
        <translation type="unfinished">tara</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">alvo</translation>
    </message>
    <message>
        <source>tell maintenance</source>
        <translation type="unfinished">avise a manutenção</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation type="unfinished">décimas</translation>
    </message>
    <message>
        <source>the centre is not reached</source>
        <translation type="unfinished">a central não responde</translation>
    </message>
    <message>
        <source>the centre stops {what} {code} ({reason}): {end}</source>
        <translation type="unfinished">a central para {what} {code} ({reason}): {end}</translation>
    </message>
    <message>
        <source>the check of the scale is overdue: {where}</source>
        <translation type="unfinished">o controlo da balança está atrasado: {where}</translation>
    </message>
    <message>
        <source>the check of {what} is overdue: {where}</source>
        <translation type="unfinished">o controlo de {what} está atrasado: {where}</translation>
    </message>
    <message>
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">disco cheio: liberte espaço e imprima de novo</translation>
    </message>
    <message>
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">o saco vazio de {mass} não confere com {what}: pese outro: {where}</translation>
    </message>
    <message>
        <source>the empty pan does not show zero</source>
        <translation type="unfinished">o prato vazio não mostra zero</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">o prato vazio mostra {mass}: limpe e ponha a zero</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">falta a pasta de etiquetas: crie {folder} de novo</translation>
    </message>
    <message>
        <source>the label roll ends soon</source>
        <translation type="unfinished">o rolo acaba em breve</translation>
    </message>
    <message>
        <source>the label was refused ({why}): end the run, or approve it at {where}</source>
        <translation type="unfinished">etiqueta recusada ({why}): feche a série ou aprove em {where}</translation>
    </message>
    <message>
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">a linha está parada, {reason}: SÉRIE, depois MUDANÇA (F8) para continuar</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">a linha parou</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">a média está abaixo do nominal</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">o prato tem de estar vazio antes do saco seguinte</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">a impressora desistiu</translation>
    </message>
    <message>
        <source>the printer has stopped: see its panel</source>
        <translation type="unfinished">a impressora parou: veja o painel dela</translation>
    </message>
    <message>
        <source>the printer is offline: switch it on, check its cable</source>
        <translation type="unfinished">impressora desligada: ligue-a, verifique o cabo</translation>
    </message>
    <message>
        <source>the printer is paused: press its button to go on</source>
        <translation type="unfinished">impressora em pausa: prima o botão dela</translation>
    </message>
    <message>
        <source>the printer is switched off</source>
        <translation type="unfinished">a impressora está desligada</translation>
    </message>
    <message>
        <source>the printer needs somebody</source>
        <translation type="unfinished">a impressora precisa de alguém</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">a impressora: {why}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">a fila não chega à impressora: ligue-a, verifique o cabo</translation>
    </message>
    <message>
        <source>the run begins with a check of the scale: {where}</source>
        <translation type="unfinished">a série começa com um controlo da balança: {where}</translation>
    </message>
    <message>
        <source>the run begins with a check of {what}: {where}</source>
        <translation type="unfinished">a série começa com um controlo de {what}: {where}</translation>
    </message>
    <message>
        <source>the run begins with a first-off</source>
        <translation type="unfinished">a série começa com uma primeira etiqueta</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">a balança falhou no controlo: ajuste-a e controle de novo: {where}</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">a balança não responde: verifique cabo e corrente</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">a balança mostra peso líquido: apague a tara dela, a estação desconta o saco</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">a balança está em {unit}, a série em {other}: mude a balança</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">a leitura de uma etiqueta está atrasada: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">a leitura da etiqueta {serial} não confere: o líder resolve em {where}</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">a estação está atrasada: levante o saco e espere</translation>
    </message>
    <message>
        <source>this PIN is not right</source>
        <translation type="unfinished">este PIN não está certo</translation>
    </message>
    <message>
        <source>this PIN is not right: wait {time}</source>
        <translation type="unfinished">este PIN não está certo: espere {time}</translation>
    </message>
    <message>
        <source>this badge is not right</source>
        <translation type="unfinished">este cartão não está certo</translation>
    </message>
    <message>
        <source>this badge is not right: wait {time}</source>
        <translation type="unfinished">este cartão não está certo: espere {time}</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">este saco não foi registado nem etiquetado: {why}</translation>
    </message>
    <message>
        <source>too many wrong PINs: wait {time}</source>
        <translation type="unfinished">demasiados PIN errados: espere {time}</translation>
    </message>
    <message>
        <source>too many wrong badges: wait {time}</source>
        <translation type="unfinished">demasiados cartões errados: espere {time}</translation>
    </message>
    <message>
        <source>touch an alarm first</source>
        <translation type="unfinished">toque primeiro num alarme</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">toque primeiro em quem é</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">máximo</translation>
    </message>
    <message>
        <source>waiting for QA</source>
        <translation type="unfinished">à espera da QA</translation>
    </message>
    <message>
        <source>waiting for the scale's first reading</source>
        <translation type="unfinished">à espera da primeira leitura da balança</translation>
    </message>
    <message>
        <source>warm or damaged</source>
        <translation type="unfinished">quente ou danificado</translation>
    </message>
    <message>
        <source>wash record</source>
        <translation type="unfinished">registo de lavagem</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">pese um saco vazio até {count} sacos</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">limpe o prato e ponha a zero</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">trabalhar neste ecrã</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">peso errado</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} sacos</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} sacos retidos após um controlo falhado: a QA decide: {where}</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} sacos embalados: o líder fecha a série</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} etiquetas em dúvida, primeira {serial}: responda em {where}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} separados</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} sacos suspeitos retidos: decide a QA ou o líder: {where}</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} falhou no controlo: corrija e controle de novo: {where}</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} em {minutes} min</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} agora</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: veja data e hora e assine em {where}</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} não pode assinar isto</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} não assinou: para {act} é preciso PIN ou cartão</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} não pode assinar aqui</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: duas pessoas aprovam a etiqueta em {where}</translation>
    </message>
</context>
</TS>
