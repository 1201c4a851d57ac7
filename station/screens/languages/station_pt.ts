<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt_PT" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>% of nominal</source>
        <translation type="unfinished">% do nominal</translation>
    </message>
    <message>
        <source>% of the lot in bags</source>
        <translation type="unfinished">% do lote em sacos</translation>
    </message>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 PRODUTO</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation type="unfinished">1 saco</translation>
    </message>
    <message>
        <source>1 run was purged on {day}, export {folder}</source>
        <translation type="unfinished">1 série apagada em {day}, exportação {folder}</translation>
    </message>
    <message>
        <source>100 % together</source>
        <translation type="unfinished">100 % no total</translation>
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
        <source>A copy of {sscc} comes.</source>
        <translation type="unfinished">Sai uma cópia de {sscc}.</translation>
    </message>
    <message>
        <source>A manager approves a proposal as a new version of the product.</source>
        <translation type="unfinished">Um gestor aprova a proposta como nova versão do produto.</translation>
    </message>
    <message>
        <source>A new scale: connect it, touch LOOK, then check it with the test weights.</source>
        <translation type="unfinished">Balança nova: ligue-a, toque em VER e controle-a com os pesos.</translation>
    </message>
    <message>
        <source>A scale that is to be asked needs its request above.</source>
        <translation type="unfinished">Uma balança que se pergunta precisa da pergunta acima.</translation>
    </message>
    <message>
        <source>ADD</source>
        <translation type="unfinished">JUNTE</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">ALARMES</translation>
    </message>
    <message>
        <source>ALL</source>
        <translation type="unfinished">TODOS</translation>
    </message>
    <message>
        <source>ALL DAYS</source>
        <translation type="unfinished">TODOS OS DIAS</translation>
    </message>
    <message>
        <source>ALL WEIGHED</source>
        <translation type="unfinished">TODOS PESADOS</translation>
    </message>
    <message>
        <source>APPLIED</source>
        <translation type="unfinished">APLICADA</translation>
    </message>
    <message>
        <source>APPROVE</source>
        <translation type="unfinished">APROVAR</translation>
    </message>
    <message>
        <source>ASKED</source>
        <translation type="unfinished">PEDIDO</translation>
    </message>
    <message>
        <source>AT REST</source>
        <translation type="unfinished">EM REPOUSO</translation>
    </message>
    <message>
        <source>ATTEND</source>
        <translation type="unfinished">ATENDER</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation type="unfinished">A somar …</translation>
    </message>
    <message>
        <source>An open run keeps the dates it was opened with.</source>
        <translation type="unfinished">Uma série aberta mantém as datas com que foi aberta.</translation>
    </message>
    <message>
        <source>Arrived at</source>
        <translation type="unfinished">Chegou a</translation>
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
        <source>BAGS</source>
        <translation type="unfinished">SACOS</translation>
    </message>
    <message>
        <source>BEFORE</source>
        <translation type="unfinished">ANTES</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">CESTO</translation>
    </message>
    <message>
        <source>BLEND LOT</source>
        <translation type="unfinished">LOTE DE MISTURA</translation>
    </message>
    <message>
        <source>BLENDS</source>
        <translation type="unfinished">MISTURAS</translation>
    </message>
    <message>
        <source>BLOCKED {count}</source>
        <translation type="unfinished">IMPEDIDO {count}</translation>
    </message>
    <message>
        <source>BY DAY</source>
        <translation type="unfinished">POR DIA</translation>
    </message>
    <message>
        <source>BY HOUR</source>
        <translation type="unfinished">POR HORA</translation>
    </message>
    <message>
        <source>BY POSITION</source>
        <translation type="unfinished">POR POSTO</translation>
    </message>
    <message>
        <source>BY PRODUCT</source>
        <translation type="unfinished">POR PRODUTO</translation>
    </message>
    <message>
        <source>Bag {serial} and {count} around it</source>
        <translation type="unfinished">Saco {serial} e {count} à volta</translation>
    </message>
    <message>
        <source>Bag {serial} was not set aside: LOOK UP shows it.</source>
        <translation type="unfinished">O saco {serial} não foi separado: PROCURAR mostra-o.</translation>
    </message>
    <message>
        <source>Bags since the last good check of the scale before are covered by no check of it any more: QA decides about them.</source>
        <translation type="unfinished">Os sacos desde o último controlo bom da balança anterior já não estão cobertos: a Qualidade decide.</translation>
    </message>
    <message>
        <source>Below T1</source>
        <translation type="unfinished">Abaixo de T1</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">Consumir de preferência antes de</translation>
    </message>
    <message>
        <source>Best before {day}</source>
        <translation type="unfinished">Consumir de preferência antes de {day}</translation>
    </message>
    <message>
        <source>By {what}</source>
        <translation type="unfinished">Por {what}</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">PEÇA AJUDA</translation>
    </message>
    <message>
        <source>CAME BACK</source>
        <translation type="unfinished">VOLTOU</translation>
    </message>
    <message>
        <source>CASE</source>
        <translation type="unfinished">CAIXA</translation>
    </message>
    <message>
        <source>CASES</source>
        <translation type="unfinished">CAIXAS</translation>
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
        <source>CHECK</source>
        <translation type="unfinished">VERIFICAÇÃO</translation>
    </message>
    <message>
        <source>CHECK IT</source>
        <translation type="unfinished">CONTROLÁ-LA</translation>
    </message>
    <message>
        <source>CHECK THE SCALE</source>
        <translation type="unfinished">CONTROLE A BALANÇA</translation>
    </message>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished">CONTROLOS</translation>
    </message>
    <message>
        <source>CHECKS (F4) settles it.</source>
        <translation type="unfinished">CONTROLOS (F4) resolve-o.</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">APAGAR</translation>
    </message>
    <message>
        <source>CLEAR LINE</source>
        <translation type="unfinished">LIMPAR LINHA</translation>
    </message>
    <message>
        <source>CLEAR TARE</source>
        <translation type="unfinished">LIMPAR TARA</translation>
    </message>
    <message>
        <source>CLOCK</source>
        <translation type="unfinished">RELÓGIO</translation>
    </message>
    <message>
        <source>CLOSE PALLET</source>
        <translation type="unfinished">FECHAR PALETE</translation>
    </message>
    <message>
        <source>COOLER TEMPERATURE</source>
        <translation type="unfinished">TEMPERATURA DA CÂMARA</translation>
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
        <translation type="unfinished">CORTADO EM</translation>
    </message>
    <message>
        <source>Came</source>
        <translation type="unfinished">Chegaram</translation>
    </message>
    <message>
        <source>Case {sscc} is filled; its label comes.</source>
        <translation type="unfinished">Caixa {sscc} cheia; sai a sua etiqueta.</translation>
    </message>
    <message>
        <source>Checked {stage}. Bags wait meanwhile.</source>
        <translation type="unfinished">Controlo: {stage}. Os sacos esperam.</translation>
    </message>
    <message>
        <source>Choose cells, then say what they are: VALUE and, where they are there, UNIT, FLAG, CHECK. Type the digits of the scale's display, its unit, and what else is true now.</source>
        <translation type="unfinished">Escolha células e diga o que são: VALOR e, se existirem, UNIDADE, SINALIZADOR, VERIFICAÇÃO. Escreva os dígitos do mostrador, a unidade e o que mais é verdade agora.</translation>
    </message>
    <message>
        <source>Choose the cells first: touch them, or use the arrow keys.</source>
        <translation type="unfinished">Escolha primeiro as células: toque-lhes ou use as setas.</translation>
    </message>
    <message>
        <source>Commands of level 2</source>
        <translation type="unfinished">Comandos de nível 2</translation>
    </message>
    <message>
        <source>Correct the decision about {bags}?</source>
        <translation type="unfinished">Corrigir a decisão sobre {bags}?</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">DECIDIR</translation>
    </message>
    <message>
        <source>DESTROYED</source>
        <translation type="unfinished">DESTRUÍDA</translation>
    </message>
    <message>
        <source>DIAGNOSE</source>
        <translation type="unfinished">DIAGNOSTICAR</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">NÃO ASSINAR</translation>
    </message>
    <message>
        <source>DOES NOT SUIT</source>
        <translation type="unfinished">NÃO SERVE</translation>
    </message>
    <message>
        <source>DOUBT</source>
        <translation type="unfinished">DÚVIDA</translation>
    </message>
    <message>
        <source>DOWNGRADED</source>
        <translation type="unfinished">DESCLASSIFICADO</translation>
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
        <source>DUMPED</source>
        <translation type="unfinished">DEITADO FORA</translation>
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
        <translation type="unfinished">Prevista às {time}.</translation>
    </message>
    <message>
        <source>EMPTY</source>
        <translation type="unfinished">VAZIO</translation>
    </message>
    <message>
        <source>EMPTY BAG</source>
        <translation type="unfinished">SACO VAZIO</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">ESVAZIE</translation>
    </message>
    <message>
        <source>EMPTY THE PAN</source>
        <translation type="unfinished">ESVAZIE O PRATO</translation>
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
        <source>EVIDENCE</source>
        <translation type="unfinished">PROVAS</translation>
    </message>
    <message>
        <source>Everything the scale sends goes into {file}</source>
        <translation type="unfinished">Tudo o que a balança envia vai para {file}</translation>
    </message>
    <message>
        <source>FAILED</source>
        <translation type="unfinished">FALHOU</translation>
    </message>
    <message>
        <source>FAILED: check again</source>
        <translation type="unfinished">FALHOU: controle de novo</translation>
    </message>
    <message>
        <source>FAILING</source>
        <translation type="unfinished">FALHA</translation>
    </message>
    <message>
        <source>FAILS</source>
        <translation type="unfinished">FALHA</translation>
    </message>
    <message>
        <source>FILL CASE</source>
        <translation type="unfinished">ENCHER CAIXA</translation>
    </message>
    <message>
        <source>FILTER</source>
        <translation type="unfinished">FILTRAR</translation>
    </message>
    <message>
        <source>FINISHING</source>
        <translation type="unfinished">A ACABAR</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">PRIMEIRA</translation>
    </message>
    <message>
        <source>FLAG</source>
        <translation type="unfinished">SINALIZADOR</translation>
    </message>
    <message>
        <source>Fri {number}</source>
        <translation type="unfinished">sexta {number}</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished">sexta-feira</translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished">De quem</translation>
    </message>
    <message>
        <source>From the recording {file}: TAKE a line.</source>
        <translation type="unfinished">Da gravação {file}: TOME uma linha.</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">DESISTIR</translation>
    </message>
    <message>
        <source>GIVEN AWAY</source>
        <translation type="unfinished">DADO A MAIS</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">CONTINUAR</translation>
    </message>
    <message>
        <source>GOOD</source>
        <translation type="unfinished">CERTA</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation type="unfinished">Dado a mais</translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation type="unfinished">Desistiu.</translation>
    </message>
    <message>
        <source>Given up: nothing is recorded.</source>
        <translation type="unfinished">Desistiu: nada fica registado.</translation>
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
        <source>HELD</source>
        <translation type="unfinished">RETIDO</translation>
    </message>
    <message>
        <source>HISTORY</source>
        <translation type="unfinished">HISTÓRICO</translation>
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
        <source>HOLD STILL</source>
        <translation type="unfinished">CONGELAR</translation>
    </message>
    <message>
        <source>HOLDS</source>
        <translation type="unfinished">RETENÇÕES</translation>
    </message>
    <message>
        <source>HOUSE</source>
        <translation type="unfinished">ARMAZÉM</translation>
    </message>
    <message>
        <source>Held: {what}</source>
        <translation type="unfinished">Retido: {what}</translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished">Aqui</translation>
    </message>
    <message>
        <source>How many bags have which net. Touch a bar to read it.</source>
        <translation type="unfinished">Quantos sacos têm cada líquido. Toque numa barra para a ler.</translation>
    </message>
    <message>
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">JÁ VI</translation>
    </message>
    <message>
        <source>I see it there</source>
        <translation type="unfinished">vejo-a lá</translation>
    </message>
    <message>
        <source>IN DOUBT</source>
        <translation type="unfinished">EM DÚVIDA</translation>
    </message>
    <message>
        <source>IN USE.</source>
        <translation type="unfinished">EM USO.</translation>
    </message>
    <message>
        <source>INBOX</source>
        <translation type="unfinished">PENDENTES</translation>
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
        <translation type="unfinished">INSPETOR</translation>
    </message>
    <message>
        <source>In the settings</source>
        <translation type="unfinished">Nas definições</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">Em uso</translation>
    </message>
    <message>
        <source>Is the scale on, and are baud rate and parity those of its menu?</source>
        <translation type="unfinished">A balança está ligada, e a velocidade e a paridade são as do menu dela?</translation>
    </message>
    <message>
        <source>Issued − used − spoiled − samples − returned</source>
        <translation type="unfinished">Saídas − usadas − estragadas − amostras − devolvidas</translation>
    </message>
    <message>
        <source>It cannot be released</source>
        <translation type="unfinished">Não se pode libertar</translation>
    </message>
    <message>
        <source>Its lines</source>
        <translation type="unfinished">As suas linhas</translation>
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
        <translation type="unfinished">GUARDAR LINHA</translation>
    </message>
    <message>
        <source>Kept as {name} (PNG, SVG, CSV) in {folder}</source>
        <translation type="unfinished">Guardado como {name} (PNG, SVG, CSV) em {folder}</translation>
    </message>
    <message>
        <source>Key in how many bags lie in the bin.</source>
        <translation type="unfinished">Digite quantos sacos estão no cesto.</translation>
    </message>
    <message>
        <source>LABEL ON BAG</source>
        <translation type="unfinished">ETIQUETA NO SACO</translation>
    </message>
    <message>
        <source>LABEL ROLL</source>
        <translation type="unfinished">ROLO DE ETIQUETAS</translation>
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
        <translation type="unfinished">ETIQUETAS (F5) resolve-o.</translation>
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
        <translation type="unfinished">ÚLTIMOS 7 DIAS</translation>
    </message>
    <message>
        <source>LAST DAY</source>
        <translation type="unfinished">ÚLTIMO DIA</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">LÍDER</translation>
    </message>
    <message>
        <source>LEAVE</source>
        <translation type="unfinished">SAIR</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">RETIRE SACO</translation>
    </message>
    <message>
        <source>LIFT THE BAG OFF</source>
        <translation type="unfinished">RETIRE O SACO</translation>
    </message>
    <message>
        <source>LIFT THE WEIGHTS OFF</source>
        <translation type="unfinished">RETIRE OS PESOS</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">LINHA</translation>
    </message>
    <message>
        <source>LISTEN</source>
        <translation type="unfinished">OUVIR</translation>
    </message>
    <message>
        <source>LISTEN to the scale, or open a RECORDING; put a known weight on the pan and TAKE a line.</source>
        <translation type="unfinished">Toque em OUVIR, ou abra uma GRAVAÇÃO; ponha um peso conhecido e toque em TOMAR LINHA.</translation>
    </message>
    <message>
        <source>LOAD</source>
        <translation type="unfinished">CARREGAR</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">OUTRA VEZ</translation>
    </message>
    <message>
        <source>LOAD CLEAN</source>
        <translation type="unfinished">CARREGAR LIMPO</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation type="unfinished">VER</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">PROCURAR</translation>
    </message>
    <message>
        <source>LOSSES</source>
        <translation type="unfinished">PERDAS</translation>
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
        <translation type="unfinished">Rolo de etiquetas {roll}: falta explicar {difference}</translation>
    </message>
    <message>
        <source>Label {serial} is in doubt</source>
        <translation type="unfinished">Etiqueta {serial} em dúvida</translation>
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
        <source>Languages</source>
        <translation type="unfinished">Línguas</translation>
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
        <source>Line stands: {reason}. Look, then touch</source>
        <translation type="unfinished">Linha parada: {reason}. Veja e depois toque</translation>
    </message>
    <message>
        <source>Look, then touch</source>
        <translation type="unfinished">Veja e depois toque</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation type="unfinished">A procurar …</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished">Lote</translation>
    </message>
    <message>
        <source>Lot {lot} is held, and every bag that may hold some of it.</source>
        <translation type="unfinished">Lote {lot} retido, e todos os sacos que o possam conter.</translation>
    </message>
    <message>
        <source>Lot {lot} is released, and the bags that were held with it.</source>
        <translation type="unfinished">Lote {lot} libertado, e os sacos retidos com ele.</translation>
    </message>
    <message>
        <source>Lot {lot} received and held.</source>
        <translation type="unfinished">Lote {lot} recebido e retido.</translation>
    </message>
    <message>
        <source>Lot {lot} received.</source>
        <translation type="unfinished">Lote {lot} recebido.</translation>
    </message>
    <message>
        <source>Lot {lot}: {move}, on record.</source>
        <translation type="unfinished">Lote {lot}: {move}, registado.</translation>
    </message>
    <message>
        <source>MANAGER</source>
        <translation type="unfinished">GESTOR</translation>
    </message>
    <message>
        <source>METAL DETECTOR</source>
        <translation type="unfinished">DETETOR DE METAIS</translation>
    </message>
    <message>
        <source>MISMATCH</source>
        <translation type="unfinished">NÃO CONFERE</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">MAIS</translation>
    </message>
    <message>
        <source>MOVING</source>
        <translation type="unfinished">EM MOVIMENTO</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation type="unfinished">Fabricante e modelo</translation>
    </message>
    <message>
        <source>Max / e = {number}, class {code} allows {least} to {most}</source>
        <translation type="unfinished">Max / e = {number}, a classe {code} admite {least} a {most}</translation>
    </message>
    <message>
        <source>Mean needed</source>
        <translation type="unfinished">Média precisa</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Líquido médio {mass}</translation>
    </message>
    <message>
        <source>Mean so far</source>
        <translation type="unfinished">Média até agora</translation>
    </message>
    <message>
        <source>Mon {number}</source>
        <translation type="unfinished">segunda {number}</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished">segunda-feira</translation>
    </message>
    <message>
        <source>NEAR MAX</source>
        <translation type="unfinished">PERTO DO MÁX</translation>
    </message>
    <message>
        <source>NEAR THE TARE</source>
        <translation type="unfinished">PERTO DA TARA</translation>
    </message>
    <message>
        <source>NET</source>
        <translation type="unfinished">LÍQUIDO</translation>
    </message>
    <message>
        <source>NEVER CAME OUT</source>
        <translation type="unfinished">NÃO SAIU</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">NOVA RETENÇÃO</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation type="unfinished">SEGUINTE</translation>
    </message>
    <message>
        <source>NEXT CASE</source>
        <translation type="unfinished">PRÓXIMA CAIXA</translation>
    </message>
    <message>
        <source>NO FORECAST</source>
        <translation type="unfinished">SEM PREVISÃO</translation>
    </message>
    <message>
        <source>NO MARKS</source>
        <translation type="unfinished">SEM MARCAS</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">SEM LEITURA</translation>
    </message>
    <message>
        <source>NO RUN IS OPEN</source>
        <translation type="unfinished">NENHUMA SÉRIE ABERTA</translation>
    </message>
    <message>
        <source>NOBODY</source>
        <translation type="unfinished">NINGUÉM</translation>
    </message>
    <message>
        <source>NOMINAL</source>
        <translation type="unfinished">NOMINAL</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation type="unfinished">NENHUMA</translation>
    </message>
    <message>
        <source>NOT MET</source>
        <translation type="unfinished">NÃO SE CUMPRE</translation>
    </message>
    <message>
        <source>NOW</source>
        <translation type="unfinished">AGORA</translation>
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
        <source>No bag is on record yet.</source>
        <translation type="unfinished">Ainda não há sacos registados.</translation>
    </message>
    <message>
        <source>No bag is suspect.</source>
        <translation type="unfinished">Não há sacos suspeitos.</translation>
    </message>
    <message>
        <source>No case stands here</source>
        <translation type="unfinished">Não há caixas aqui</translation>
    </message>
    <message>
        <source>No description yet</source>
        <translation type="unfinished">Ainda sem descrição</translation>
    </message>
    <message>
        <source>No good bag yet</source>
        <translation type="unfinished">Ainda nenhum saco bom</translation>
    </message>
    <message>
        <source>No label is in doubt</source>
        <translation type="unfinished">Não há etiquetas em dúvida</translation>
    </message>
    <message>
        <source>No lot is on the line: scan one.</source>
        <translation type="unfinished">Não há lote na linha: leia um.</translation>
    </message>
    <message>
        <source>No roll is in</source>
        <translation type="unfinished">Não há rolo colocado</translation>
    </message>
    <message>
        <source>No run is open</source>
        <translation type="unfinished">Nenhuma série aberta</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">Nenhuma série aberta</translation>
    </message>
    <message>
        <source>No target can be proposed: {why}.</source>
        <translation type="unfinished">Não se pode propor um alvo: {why}.</translation>
    </message>
    <message>
        <source>No whole line was heard yet.</source>
        <translation type="unfinished">Ainda não se ouviu uma linha inteira.</translation>
    </message>
    <message>
        <source>Not kept: {why}, {folder}</source>
        <translation type="unfinished">Não guardado: {why}, {folder}</translation>
    </message>
    <message>
        <source>Not recorded: {why}</source>
        <translation type="unfinished">Não registado: {why}</translation>
    </message>
    <message>
        <source>Nothing is held or packed.</source>
        <translation type="unfinished">Nada está retido nem embalado.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">Nada está pendente.</translation>
    </message>
    <message>
        <source>Nothing keeps it.</source>
        <translation type="unfinished">Nada o impede.</translation>
    </message>
    <message>
        <source>Nothing waits for a signature.</source>
        <translation type="unfinished">Nada espera assinatura.</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">DO EMBALADOR</translation>
    </message>
    <message>
        <source>OLD ONE DESTROYED</source>
        <translation type="unfinished">A ANTIGA, DESTRUÍDA</translation>
    </message>
    <message>
        <source>ON ITS BAG</source>
        <translation type="unfinished">NO SEU SACO</translation>
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
        <source>OVER</source>
        <translation type="unfinished">EXCESSO</translation>
    </message>
    <message>
        <source>OVERDUE {minutes} min</source>
        <translation type="unfinished">ATRASADO {minutes} min</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}</source>
        <translation type="unfinished">Registados {bags}, contados {count}</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} fewer. Why?</source>
        <translation type="unfinished">Registados {bags}, contados {count}: {difference} a menos. Porquê?</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} more. Why?</source>
        <translation type="unfinished">Registados {bags}, contados {count}: {difference} a mais. Porquê?</translation>
    </message>
    <message>
        <source>On record; it holds from the next run on.</source>
        <translation type="unfinished">Registado; vale a partir da próxima série.</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished">Na balança</translation>
    </message>
    <message>
        <source>Open a run first: a check is made at its loads.</source>
        <translation type="unfinished">Abra primeiro uma série: o controlo usa as suas cargas.</translation>
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
        <source>PALLET</source>
        <translation type="unfinished">PALETE</translation>
    </message>
    <message>
        <source>PALLETS</source>
        <translation type="unfinished">PALETES</translation>
    </message>
    <message>
        <source>PAN WHEN EMPTY</source>
        <translation type="unfinished">PRATO VAZIO</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation type="unfinished">GUIA</translation>
    </message>
    <message>
        <source>PASSED</source>
        <translation type="unfinished">PASSOU</translation>
    </message>
    <message>
        <source>PEOPLE</source>
        <translation type="unfinished">PESSOAS</translation>
    </message>
    <message>
        <source>PLUS/MINUS</source>
        <translation type="unfinished">MAIS/MENOS</translation>
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
        <translation type="unfinished">TEMPERATURA DO PRODUTO</translation>
    </message>
    <message>
        <source>PROPOSE</source>
        <translation type="unfinished">PROPOR</translation>
    </message>
    <message>
        <source>PROPOSE when they differ enough.</source>
        <translation type="unfinished">PROPOR quando forem bem diferentes.</translation>
    </message>
    <message>
        <source>PUT AN EMPTY BAG ON</source>
        <translation type="unfinished">PONHA UM SACO VAZIO</translation>
    </message>
    <message>
        <source>PUT ON {weights}</source>
        <translation type="unfinished">PONHA {weights}</translation>
    </message>
    <message>
        <source>PUT {serial} ON</source>
        <translation type="unfinished">PONHA {serial}</translation>
    </message>
    <message>
        <source>Pallet {sscc} is closed; its label comes.</source>
        <translation type="unfinished">Palete {sscc} fechada; sai a sua etiqueta.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished">Partes</translation>
    </message>
    <message>
        <source>Plate in the settings</source>
        <translation type="unfinished">Chapa nas definições</translation>
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
        <translation type="unfinished">Ponha outro peso e TOME uma linha em repouso e outra em movimento.</translation>
    </message>
    <message>
        <source>Put its number into station.toml.</source>
        <translation type="unfinished">Ponha o número dela em station.toml.</translation>
    </message>
    <message>
        <source>QA check</source>
        <translation type="unfinished">controlo de qualidade</translation>
    </message>
    <message>
        <source>QA decides</source>
        <translation type="unfinished">decide a QA</translation>
    </message>
    <message>
        <source>QA decides: release all, or let the hold stay</source>
        <translation type="unfinished">a QA decide: libertar tudo ou manter retido</translation>
    </message>
    <message>
        <source>QA holds the button</source>
        <translation type="unfinished">a QA mantém premido</translation>
    </message>
    <message>
        <source>QA or a manager releases a lot: touch WHO and choose your name</source>
        <translation type="unfinished">a QA ou um gestor liberta um lote: toque em QUEM e escolha o nome</translation>
    </message>
    <message>
        <source>QA said go on</source>
        <translation type="unfinished">a QA disse para continuar</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">QUALIDADE</translation>
    </message>
    <message>
        <source>READY</source>
        <translation type="unfinished">PRONTO</translation>
    </message>
    <message>
        <source>REASON TO REFUSE</source>
        <translation type="unfinished">MOTIVO DE RECUSA</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">RECEBER</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">GRAVAR</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">REGISTAR PROPOSTA</translation>
    </message>
    <message>
        <source>RECORDED</source>
        <translation type="unfinished">REGISTADA</translation>
    </message>
    <message>
        <source>RECORDING</source>
        <translation type="unfinished">GRAVAÇÃO</translation>
    </message>
    <message>
        <source>REFUSE</source>
        <translation type="unfinished">RECUSAR</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">ENSAIAR</translation>
    </message>
    <message>
        <source>REJECTS</source>
        <translation type="unfinished">REJEITADOS</translation>
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
        <source>REPORT</source>
        <translation type="unfinished">RELATÓRIO</translation>
    </message>
    <message>
        <source>REPRINT</source>
        <translation type="unfinished">REIMPRESSÃO</translation>
    </message>
    <message>
        <source>RETURN</source>
        <translation type="unfinished">DEVOLVER</translation>
    </message>
    <message>
        <source>RETURNED</source>
        <translation type="unfinished">DEVOLVIDAS</translation>
    </message>
    <message>
        <source>REWORKED</source>
        <translation type="unfinished">REPROCESSADO</translation>
    </message>
    <message>
        <source>ROLL</source>
        <translation type="unfinished">ROLO</translation>
    </message>
    <message>
        <source>ROLL IN</source>
        <translation type="unfinished">PÔR ROLO</translation>
    </message>
    <message>
        <source>ROLL OUT</source>
        <translation type="unfinished">TIRAR ROLO</translation>
    </message>
    <message>
        <source>ROOM TEMPERATURE</source>
        <translation type="unfinished">TEMPERATURA DA SALA</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">SÉRIE</translation>
    </message>
    <message>
        <source>RUN, then SERVICE (F9), SWAP</source>
        <translation type="unfinished">SÉRIE, depois SERVIÇO (F9), TROCA</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">SÉRIE, depois {door} ({key})</translation>
    </message>
    <message>
        <source>RUNS</source>
        <translation type="unfinished">SÉRIES</translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished">Gama</translation>
    </message>
    <message>
        <source>Reading the record</source>
        <translation type="unfinished">A ler o registo</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Registo</translation>
    </message>
    <message>
        <source>Recorded as refused</source>
        <translation type="unfinished">Registada como recusada</translation>
    </message>
    <message>
        <source>Recorded: {file}</source>
        <translation type="unfinished">Gravado: {file}</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation type="unfinished">Recusado</translation>
    </message>
    <message>
        <source>Refused. Count the bags first.</source>
        <translation type="unfinished">Recusado. Conte primeiro os sacos.</translation>
    </message>
    <message>
        <source>Refused. Look at another clock and say why first.</source>
        <translation type="unfinished">Recusado. Veja primeiro outro relógio e diga porquê.</translation>
    </message>
    <message>
        <source>Refused. No run is open.</source>
        <translation type="unfinished">Recusado. Nenhuma série aberta.</translation>
    </message>
    <message>
        <source>Refused. Say which label, why, and where the old one is.</source>
        <translation type="unfinished">Recusado. Diga que etiqueta, porquê e onde está a antiga.</translation>
    </message>
    <message>
        <source>Refused. Scan the roll and key in its labels first.</source>
        <translation type="unfinished">Recusado. Leia primeiro o rolo e digite as suas etiquetas.</translation>
    </message>
    <message>
        <source>Refused. Touch the two who sign, the lead first.</source>
        <translation type="unfinished">Recusado. Toque nos dois que assinam, primeiro o líder.</translation>
    </message>
    <message>
        <source>Refused. Touch who signs.</source>
        <translation type="unfinished">Recusado. Toque em quem assina.</translation>
    </message>
    <message>
        <source>Refused. Who signs? Touch WHO and choose your name.</source>
        <translation type="unfinished">Recusado. Quem assina? Toque em QUEM e escolha o nome.</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Recusado. {why}</translation>
    </message>
    <message>
        <source>Rehearsing …</source>
        <translation type="unfinished">A ensaiar …</translation>
    </message>
    <message>
        <source>Roll {roll} is in. Count it out</source>
        <translation type="unfinished">Rolo {roll} colocado. Conte-o ao tirar</translation>
    </message>
    <message>
        <source>Roll {roll}: why {difference}?</source>
        <translation type="unfinished">Rolo {roll}: porquê {difference}?</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Série aberta</translation>
    </message>
    <message>
        <source>SAFE</source>
        <translation type="unfinished">SEGURO</translation>
    </message>
    <message>
        <source>SAMPLED</source>
        <translation type="unfinished">AMOSTRA</translation>
    </message>
    <message>
        <source>SAMPLES</source>
        <translation type="unfinished">AMOSTRAS</translation>
    </message>
    <message>
        <source>SAVE</source>
        <translation type="unfinished">GUARDAR</translation>
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
        <source>SCAN A BAG</source>
        <translation type="unfinished">LEIA UM SACO</translation>
    </message>
    <message>
        <source>SCAN THE FILM LOT</source>
        <translation type="unfinished">LEIA O LOTE DE FILME</translation>
    </message>
    <message>
        <source>SEAL</source>
        <translation type="unfinished">SELE</translation>
    </message>
    <message>
        <source>SEAL CHECK</source>
        <translation type="unfinished">SELAGEM</translation>
    </message>
    <message>
        <source>SERIALS</source>
        <translation type="unfinished">NÚMEROS</translation>
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
        <source>SHIP</source>
        <translation type="unfinished">ENVIAR</translation>
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
        <source>SIGNS</source>
        <translation type="unfinished">ASSINA</translation>
    </message>
    <message>
        <source>SMA SCP-0499 level {code}</source>
        <translation type="unfinished">SMA SCP-0499 nível {code}</translation>
    </message>
    <message>
        <source>SPOILED</source>
        <translation type="unfinished">ESTRAGADAS</translation>
    </message>
    <message>
        <source>SPOOLED</source>
        <translation type="unfinished">EM FILA</translation>
    </message>
    <message>
        <source>SPREAD</source>
        <translation type="unfinished">DISPERSÃO</translation>
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
        <source>STARTING</source>
        <translation type="unfinished">A INICIAR</translation>
    </message>
    <message>
        <source>STATION</source>
        <translation type="unfinished">ESTAÇÃO</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished">PARAGEM</translation>
    </message>
    <message>
        <source>STOP RECORDING</source>
        <translation type="unfinished">PARAR GRAVAÇÃO</translation>
    </message>
    <message>
        <source>STOPS</source>
        <translation type="unfinished">PARAGENS</translation>
    </message>
    <message>
        <source>STUDY {count} BAGS</source>
        <translation type="unfinished">ESTUDAR {count} SACOS</translation>
    </message>
    <message>
        <source>SUBMITTED</source>
        <translation type="unfinished">ENVIADA</translation>
    </message>
    <message>
        <source>SUSPECT BAGS</source>
        <translation type="unfinished">SACOS SUSPEITOS</translation>
    </message>
    <message>
        <source>SUSPECT WINDOW</source>
        <translation type="unfinished">JANELA SUSPEITA</translation>
    </message>
    <message>
        <source>SWAP</source>
        <translation type="unfinished">TROCA</translation>
    </message>
    <message>
        <source>Same product?</source>
        <translation type="unfinished">Mesmo produto?</translation>
    </message>
    <message>
        <source>Sat {number}</source>
        <translation type="unfinished">sábado {number}</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished">sábado</translation>
    </message>
    <message>
        <source>Scale {what} failed its last check</source>
        <translation type="unfinished">A balança {what} falhou no último controlo</translation>
    </message>
    <message>
        <source>Scan a label, or type a serial or a blend lot.</source>
        <translation type="unfinished">Leia uma etiqueta, ou escreva um número ou um lote de mistura.</translation>
    </message>
    <message>
        <source>Scan the bags, type first..last, or touch NEXT CASE</source>
        <translation type="unfinished">Leia os sacos, escreva primeiro..último, ou toque em PRÓXIMA CAIXA</translation>
    </message>
    <message>
        <source>Scan the cases of the pallet</source>
        <translation type="unfinished">Leia as caixas da palete</translation>
    </message>
    <message>
        <source>Scan the label on a bag</source>
        <translation type="unfinished">Leia a etiqueta de um saco</translation>
    </message>
    <message>
        <source>Scan the pallets and cases that leave</source>
        <translation type="unfinished">Leia as paletes e caixas que saem</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation type="unfinished">Número de série</translation>
    </message>
    <message>
        <source>Settings and record are being read: no bag is taken yet</source>
        <translation type="unfinished">As definições e o registo estão a ser lidos: ainda não se aceita nenhum saco</translation>
    </message>
    <message>
        <source>Shipment {number} is on record.</source>
        <translation type="unfinished">Envio {number} registado.</translation>
    </message>
    <message>
        <source>Shipments</source>
        <translation type="unfinished">Envios</translation>
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
        <source>Signed and on record.</source>
        <translation type="unfinished">Assinado e registado.</translation>
    </message>
    <message>
        <source>Solid: mean so far, dotted: its limits. Dashed: mean of about 40 bags. Touch a bag.</source>
        <translation type="unfinished">Contínua: média até agora; pontos: os seus limites. Tracejada: média de uns 40 sacos. Toque num saco.</translation>
    </message>
    <message>
        <source>Start a run</source>
        <translation type="unfinished">Abrir uma série</translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished">Estação</translation>
    </message>
    <message>
        <source>Stop and start the station to use it</source>
        <translation type="unfinished">Pare e arranque a estação para o usar</translation>
    </message>
    <message>
        <source>Study kept: mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">Estudo guardado: média {mean}, s {spread}, {count} sacos</translation>
    </message>
    <message>
        <source>Sun {number}</source>
        <translation type="unfinished">domingo {number}</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished">domingo</translation>
    </message>
    <message>
        <source>Suspect window of {what}: {count} bags are held</source>
        <translation type="unfinished">Janela suspeita de {what}: {count} sacos retidos</translation>
    </message>
    <message>
        <source>T1 packs in the official sample</source>
        <translation type="unfinished">sacos T1 na amostra oficial</translation>
    </message>
    <message>
        <source>T1 packs of the whole batch</source>
        <translation type="unfinished">sacos T1 do lote inteiro</translation>
    </message>
    <message>
        <source>T2 packs in the long run</source>
        <translation type="unfinished">sacos T2 a longo prazo</translation>
    </message>
    <message>
        <source>T2 packs in the official sample</source>
        <translation type="unfinished">sacos T2 na amostra oficial</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, nominal</translation>
    </message>
    <message>
        <source>TAKE INTO USE</source>
        <translation type="unfinished">PÔR EM USO</translation>
    </message>
    <message>
        <source>TAKE LINE</source>
        <translation type="unfinished">TOMAR LINHA</translation>
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
        <source>TARGET</source>
        <translation type="unfinished">ALVO</translation>
    </message>
    <message>
        <source>TEACH</source>
        <translation type="unfinished">ENSINAR</translation>
    </message>
    <message>
        <source>TELL</source>
        <translation type="unfinished">SABER</translation>
    </message>
    <message>
        <source>THE BAG</source>
        <translation type="unfinished">O SACO</translation>
    </message>
    <message>
        <source>THE DAY</source>
        <translation type="unfinished">O DIA</translation>
    </message>
    <message>
        <source>THE SCALE FAILS: its bags are held, call maintenance</source>
        <translation type="unfinished">A BALANÇA FALHA: os seus sacos ficam retidos, chame a manutenção</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS</source>
        <translation type="unfinished">A BALANÇA ESTÁ CERTA</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS, beyond its first limit: have it adjusted soon</source>
        <translation type="unfinished">A BALANÇA ESTÁ CERTA, mas passa o primeiro limite: mande ajustá-la em breve</translation>
    </message>
    <message>
        <source>THIN</source>
        <translation type="unfinished">À JUSTA</translation>
    </message>
    <message>
        <source>THIS HOUR</source>
        <translation type="unfinished">ESTA HORA</translation>
    </message>
    <message>
        <source>TIME</source>
        <translation type="unfinished">TEMPO</translation>
    </message>
    <message>
        <source>TOPPED UP</source>
        <translation type="unfinished">COMPLETADO</translation>
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
        <source>TRAINING IS OVER</source>
        <translation type="unfinished">FORMAÇÃO CADUCADA</translation>
    </message>
    <message>
        <source>Take a line, mark its value and say the unit first.</source>
        <translation type="unfinished">Tome primeiro uma linha, marque o valor e diga a unidade.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished">Alvo</translation>
    </message>
    <message>
        <source>Target {target} instead of {now}, held up by {what}: {then} given away a bag instead of {old}.</source>
        <translation type="unfinished">Alvo {target} em vez de {now}, travado por {what}: dão-se {then} por saco em vez de {old}.</translation>
    </message>
    <message>
        <source>The bin of {day} is counted: {count}.</source>
        <translation type="unfinished">O cesto de {day} está contado: {count}.</translation>
    </message>
    <message>
        <source>The clock</source>
        <translation type="unfinished">O relógio</translation>
    </message>
    <message>
        <source>The line is the lowest mean that holds for a spread. Touch it to read it.</source>
        <translation type="unfinished">A linha é a menor média que serve para uma dispersão. Toque-lhe para a ler.</translation>
    </message>
    <message>
        <source>The next check is {stage}.</source>
        <translation type="unfinished">O próximo controlo é {stage}.</translation>
    </message>
    <message>
        <source>The port is opened again. What the scale says of itself stands beside.</source>
        <translation type="unfinished">A porta abre-se de novo. Ao lado está o que a balança diz de si.</translation>
    </message>
    <message>
        <source>The proposal is on record. A manager approves it, as a new version.</source>
        <translation type="unfinished">Proposta registada. Um gestor aprova-a, como nova versão.</translation>
    </message>
    <message>
        <source>The recording ended: {why}</source>
        <translation type="unfinished">A gravação acabou: {why}</translation>
    </message>
    <message>
        <source>The reject bin of {day} was not counted</source>
        <translation type="unfinished">O cesto de rejeitados de {day} não foi contado</translation>
    </message>
    <message>
        <source>The run ended: nothing is recorded.</source>
        <translation type="unfinished">A série acabou: nada fica registado.</translation>
    </message>
    <message>
        <source>The run ended: the check was given up.</source>
        <translation type="unfinished">A série acabou: o controlo foi abandonado.</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">Vale a indicação da balança. Se este ecrã e a balança diferem, vale a balança: pare e chame o líder.</translation>
    </message>
    <message>
        <source>The scan of label {serial} does not match</source>
        <translation type="unfinished">A leitura da etiqueta {serial} não confere</translation>
    </message>
    <message>
        <source>The test is on record, as {what}.</source>
        <translation type="unfinished">O ensaio fica registado, como {what}.</translation>
    </message>
    <message>
        <source>There is no chart to keep.</source>
        <translation type="unfinished">Não há gráfico a guardar.</translation>
    </message>
    <message>
        <source>There is no recording: make one on the page WIRE.</source>
        <translation type="unfinished">Não há gravação: faça uma na página CABO.</translation>
    </message>
    <message>
        <source>There is no run before</source>
        <translation type="unfinished">Não há série anterior</translation>
    </message>
    <message>
        <source>There is nothing to keep yet.</source>
        <translation type="unfinished">Ainda não há nada a guardar.</translation>
    </message>
    <message>
        <source>This run stays as it is.</source>
        <translation type="unfinished">Esta série fica como está.</translation>
    </message>
    <message>
        <source>This screen is left at RUN, MORE, LEAVE, by somebody who may</source>
        <translation type="unfinished">Sai-se deste ecrã em SÉRIE, MAIS, SAIR, por quem tem direito</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation type="unfinished">Processos</translation>
    </message>
    <message>
        <source>Thu {number}</source>
        <translation type="unfinished">quinta {number}</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished">quinta-feira</translation>
    </message>
    <message>
        <source>Touch PASSED or FAILED.</source>
        <translation type="unfinished">Toque em PASSOU ou FALHOU.</translation>
    </message>
    <message>
        <source>Touch a line.</source>
        <translation type="unfinished">Toque numa linha.</translation>
    </message>
    <message>
        <source>Touch the rejects it is about first.</source>
        <translation type="unfinished">Toque primeiro nos rejeitados.</translation>
    </message>
    <message>
        <source>Touch what becomes of it first.</source>
        <translation type="unfinished">Toque primeiro no que se faz.</translation>
    </message>
    <message>
        <source>Touch what is checked first.</source>
        <translation type="unfinished">Toque primeiro no que se controla.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Toque primeiro no seu nome.</translation>
    </message>
    <message>
        <source>Tue {number}</source>
        <translation type="unfinished">terça {number}</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished">terça-feira</translation>
    </message>
    <message>
        <source>UNDO</source>
        <translation type="unfinished">DESFAZER</translation>
    </message>
    <message>
        <source>UNIT</source>
        <translation type="unfinished">UNIDADE</translation>
    </message>
    <message>
        <source>UNIT {code}</source>
        <translation type="unfinished">UNIDADE {code}</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">Consumir até</translation>
    </message>
    <message>
        <source>Use by {day}</source>
        <translation type="unfinished">Consumir até {day}</translation>
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
        <translation type="unfinished">Versão</translation>
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
        <translation type="unfinished">REGISTO DE LAVAGEM</translation>
    </message>
    <message>
        <source>WASTE</source>
        <translation type="unfinished">PERDA</translation>
    </message>
    <message>
        <source>WEIGH AN EMPTY BAG</source>
        <translation type="unfinished">PESE UM SACO VAZIO</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">PESAR UM SACO</translation>
    </message>
    <message>
        <source>WEIGHED AGAIN</source>
        <translation type="unfinished">PESADO DE NOVO</translation>
    </message>
    <message>
        <source>WEIGHTS</source>
        <translation type="unfinished">PESOS</translation>
    </message>
    <message>
        <source>WHO</source>
        <translation type="unfinished">QUEM</translation>
    </message>
    <message>
        <source>WHOLE RUN</source>
        <translation type="unfinished">TODA A SÉRIE</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">LIMPE</translation>
    </message>
    <message>
        <source>WIRE</source>
        <translation type="unfinished">CABO</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">CALCULAR</translation>
    </message>
    <message>
        <source>WOULD BE ACCEPTED</source>
        <translation type="unfinished">SERIA ACEITE</translation>
    </message>
    <message>
        <source>WOULD NOT BE ACCEPTED</source>
        <translation type="unfinished">NÃO SERIA ACEITE</translation>
    </message>
    <message>
        <source>Wait until the day is read.</source>
        <translation type="unfinished">Espere até o dia ser lido.</translation>
    </message>
    <message>
        <source>Wed {number}</source>
        <translation type="unfinished">quarta {number}</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished">quarta-feira</translation>
    </message>
    <message>
        <source>Weigh again in this order: net as shown, less the whole error, less even growth</source>
        <translation type="unfinished">Pesar de novo por esta ordem: líquido mostrado, menos todo o erro, menos deriva uniforme</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">O quê</translation>
    </message>
    <message>
        <source>What becomes of the bags?</source>
        <translation type="unfinished">O que acontece aos sacos?</translation>
    </message>
    <message>
        <source>What becomes of {bags}?</source>
        <translation type="unfinished">O que acontece a {bags}?</translation>
    </message>
    <message>
        <source>Who decides?</source>
        <translation type="unfinished">Quem decide?</translation>
    </message>
    <message>
        <source>Who is touched first signs; who is touched second witnesses or releases too</source>
        <translation type="unfinished">O primeiro tocado assina; o segundo é testemunha ou também liberta</translation>
    </message>
    <message>
        <source>Who leads touches why the line may go on</source>
        <translation type="unfinished">O líder toca porque a linha pode continuar</translation>
    </message>
    <message>
        <source>Why does the line stop?</source>
        <translation type="unfinished">Porque para a linha?</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">Porque é separado?</translation>
    </message>
    <message>
        <source>Why? Choose or type the reason.</source>
        <translation type="unfinished">Porquê? Escolha ou escreva o motivo.</translation>
    </message>
    <message>
        <source>Working a target out from the bags …</source>
        <translation type="unfinished">A calcular um alvo com os sacos …</translation>
    </message>
    <message>
        <source>Working a target out from the bags: {count} tried …</source>
        <translation type="unfinished">A calcular um alvo com os sacos: {count} tentados …</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation type="unfinished">A escrever …</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation type="unfinished">Escrito: {file}</translation>
    </message>
    <message>
        <source>Written: {file} and {count} more in {folder}</source>
        <translation type="unfinished">Escritos: {file} e mais {count} em {folder}</translation>
    </message>
    <message>
        <source>YIELD OF LOTS</source>
        <translation type="unfinished">RENDIMENTO DOS LOTES</translation>
    </message>
    <message>
        <source>ZERO</source>
        <translation type="unfinished">ZERO</translation>
    </message>
    <message>
        <source>Zero stepped by {step} between {before} and {after}.</source>
        <translation type="unfinished">O zero saltou {step} entre {before} e {after}.</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">há um saco no prato: termine-o, levante-o e feche a série</translation>
    </message>
    <message>
        <source>a bag that is {what} has no new bag</source>
        <translation type="unfinished">um saco {what} não tem saco novo</translation>
    </message>
    <message>
        <source>a bag that is {what} wants a witness: a second person signs</source>
        <translation type="unfinished">um saco {what} pede testemunha: assina uma segunda pessoa</translation>
    </message>
    <message>
        <source>a case was packed short or over</source>
        <translation type="unfinished">uma caixa com sacos a mais ou a menos</translation>
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
        <source>a check needs test weights: name at least one</source>
        <translation type="unfinished">um controlo precisa de pesos: indique ao menos um</translation>
    </message>
    <message>
        <source>a copy was printed</source>
        <translation type="unfinished">foi impressa uma cópia</translation>
    </message>
    <message>
        <source>a cover is open: close it</source>
        <translation type="unfinished">uma tampa está aberta: feche-a</translation>
    </message>
    <message>
        <source>a decision needs a reason: choose or write why</source>
        <translation type="unfinished">uma decisão precisa de um motivo: escolha ou escreva</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">uma porta está aberta: feche-a</translation>
    </message>
    <message>
        <source>a figure</source>
        <translation type="unfinished">um valor</translation>
    </message>
    <message>
        <source>a forecast needs at least two packs</source>
        <translation type="unfinished">uma previsão precisa de pelo menos dois sacos</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">há um lote retido na linha</translation>
    </message>
    <message>
        <source>a hold needs a reason: write why</source>
        <translation type="unfinished">reter precisa de um motivo: escreva-o</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">uma etiqueta não confere</translation>
    </message>
    <message>
        <source>a load was taken for zero when the scale came back: with the pan empty set the scale to zero, or switch it off and on</source>
        <translation type="unfinished">uma carga foi tomada por zero quando a balança voltou: com o prato vazio ponha-a a zero, ou desligue-a e ligue-a</translation>
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
        <source>a new bag</source>
        <translation type="unfinished">um saco novo</translation>
    </message>
    <message>
        <source>a new code is made</source>
        <translation type="unfinished">é criado um código novo</translation>
    </message>
    <message>
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">um rolo novo começa com uma primeira etiqueta</translation>
    </message>
    <message>
        <source>a numbered copy</source>
        <translation type="unfinished">uma cópia numerada</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">uma pausa</translation>
    </message>
    <message>
        <source>a release needs a reason: write why</source>
        <translation type="unfinished">libertar precisa de um motivo: escreva-o</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">há uma série aberta: feche-a antes da próxima</translation>
    </message>
    <message>
        <source>a run needs a lead and a person on the scale</source>
        <translation type="unfinished">uma série precisa de um líder e de uma pessoa na balança</translation>
    </message>
    <message>
        <source>a scale that says nothing</source>
        <translation type="unfinished">uma balança que nada diz</translation>
    </message>
    <message>
        <source>a suspect window of {what} is open ({count} bags)</source>
        <translation type="unfinished">janela suspeita de {what} em aberto ({count} sacos)</translation>
    </message>
    <message>
        <source>a version is not refused</source>
        <translation type="unfinished">uma versão não se recusa</translation>
    </message>
    <message>
        <source>a weight every {gap} ms</source>
        <translation type="unfinished">um peso a cada {gap} ms</translation>
    </message>
    <message>
        <source>a whole run is not dumped: hold its bags first</source>
        <translation type="unfinished">não se deita fora uma série inteira: retenha antes os seus sacos</translation>
    </message>
    <message>
        <source>about {mass} in bags of {loaded} loaded</source>
        <translation type="unfinished">cerca de {mass} em sacos de {loaded} carregados</translation>
    </message>
    <message>
        <source>above the highest of the description, {number}</source>
        <translation type="unfinished">acima do máximo descrito, {number}</translation>
    </message>
    <message>
        <source>adds up</source>
        <translation type="unfinished">bate certo</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">após paragem</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation type="unfinished">para a frente</translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished">ar</translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished">todos</translation>
    </message>
    <message>
        <source>all 999 lot codes of {day} are used: give a code by hand</source>
        <translation type="unfinished">os 999 códigos de lote de {day} estão usados: dê um código à mão</translation>
    </message>
    <message>
        <source>all days</source>
        <translation type="unfinished">todos os dias</translation>
    </message>
    <message>
        <source>all found</source>
        <translation type="unfinished">todas detetadas</translation>
    </message>
    <message>
        <source>all loads are taken</source>
        <translation type="unfinished">todas as cargas foram tomadas</translation>
    </message>
    <message>
        <source>all reviewed</source>
        <translation type="unfinished">tudo revisto</translation>
    </message>
    <message>
        <source>all {count} lines are weights: compare them with what the scale showed</source>
        <translation type="unfinished">as {count} linhas são pesos: compare-as com o mostrador</translation>
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
        <translation type="unfinished">uma ajuda ao inspetor, não um resultado oficial</translation>
    </message>
    <message>
        <source>an alarm is not shelved for {minutes} minutes: allowed are {allowed}</source>
        <translation type="unfinished">um alarme não se adia {minutes} minutos: permitidos {allowed}</translation>
    </message>
    <message>
        <source>an empty bag weighs {mass}, {more} more than the tare taken off</source>
        <translation type="unfinished">um saco vazio pesa {mass}, mais {more} do que a tara descontada</translation>
    </message>
    <message>
        <source>an order of {count} bags: give 1 or more, or leave it open</source>
        <translation type="unfinished">uma encomenda de {count} sacos: dê 1 ou mais, ou deixe aberta</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished">e mais {count}</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">e mais {count}, abaixo destes</translation>
    </message>
    <message>
        <source>another code was scanned</source>
        <translation type="unfinished">foi lido outro código</translation>
    </message>
    <message>
        <source>another device is at {code}</source>
        <translation type="unfinished">está outro aparelho em {code}</translation>
    </message>
    <message>
        <source>another one is set</source>
        <translation type="unfinished">está posta outra</translation>
    </message>
    <message>
        <source>another program has it: close that program, or name another port</source>
        <translation type="unfinished">outro programa tem-na: feche-o, ou indique outra porta</translation>
    </message>
    <message>
        <source>another scale is here, {here}; in use is {known}: take it into use, {where}</source>
        <translation type="unfinished">está outra balança, {here}; em uso está {known}: ponha-a em uso, {where}</translation>
    </message>
    <message>
        <source>any number</source>
        <translation type="unfinished">qualquer número</translation>
    </message>
    <message>
        <source>applied</source>
        <translation type="unfinished">aplicada</translation>
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
        <source>approved</source>
        <translation type="unfinished">aprovada</translation>
    </message>
    <message>
        <source>as far as one approval goes</source>
        <translation type="unfinished">até onde vai uma aprovação</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">como se encontrou</translation>
    </message>
    <message>
        <source>as left</source>
        <translation type="unfinished">como se deixou</translation>
    </message>
    <message>
        <source>as left, after its adjustment</source>
        <translation type="unfinished">como se deixou, após o ajuste</translation>
    </message>
    <message>
        <source>as people.toml says</source>
        <translation type="unfinished">conforme people.toml</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation type="unfinished">como se pesou</translation>
    </message>
    <message>
        <source>asked by, as in W\r\n</source>
        <translation type="unfinished">pede-se com, como W\r\n</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">a perguntar à linha …</translation>
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
        <translation type="unfinished">de imediato</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">ao acaso</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation type="unfinished">em repouso</translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">para trás</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">saco</translation>
    </message>
    <message>
        <source>bag of the run</source>
        <translation type="unfinished">saco da série</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">saco {code}, lote de filme {lot} sem estudo de tara: faça um: {where}</translation>
    </message>
    <message>
        <source>bag {code}: rework of {lot}, last day {day}</source>
        <translation type="unfinished">saco {code}: reprocesso de {lot}, último dia {day}</translation>
    </message>
    <message>
        <source>bag {serial} has had {copies} already: the lead signs for the next one</source>
        <translation type="unfinished">o saco {serial} já teve {copies}: o líder assina a seguinte</translation>
    </message>
    <message>
        <source>bag {serial} has had {count} copies: set it aside</source>
        <translation type="unfinished">o saco {serial} já teve {count} cópias: separe-o</translation>
    </message>
    <message>
        <source>bag {serial} is held: it gets no label before QA has released it</source>
        <translation type="unfinished">saco {serial} retido: não leva etiqueta até a QA o libertar</translation>
    </message>
    <message>
        <source>bag {serial} is of blend lot {lot}, the case of {other}: close this case and begin another</source>
        <translation type="unfinished">o saco {serial} é do lote de mistura {lot}, a caixa do {other}: feche esta caixa e comece outra</translation>
    </message>
    <message>
        <source>bag {serial} is {what}: scan the label of the new bag</source>
        <translation type="unfinished">saco {serial} {what}: leia a etiqueta do novo</translation>
    </message>
    <message>
        <source>bag {serial} lies under the hold of {what}: have it released first, or dump it</source>
        <translation type="unfinished">o saco {serial} está sob a retenção de {what}: peça primeiro que a libertem, ou deite-o fora</translation>
    </message>
    <message>
        <source>bag {serial} was picked already</source>
        <translation type="unfinished">o saco {serial} já foi escolhido</translation>
    </message>
    <message>
        <source>bag {serial} was scanned already</source>
        <translation type="unfinished">o saco {serial} já foi lido</translation>
    </message>
    <message>
        <source>bag, case, pallet or lot</source>
        <translation type="unfinished">saco, caixa, palete ou lote</translation>
    </message>
    <message>
        <source>bag, record</source>
        <translation type="unfinished">saco, registo</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">sacos</translation>
    </message>
    <message>
        <source>bags are taken again: {why}</source>
        <translation type="unfinished">aceitam-se sacos de novo: {why}</translation>
    </message>
    <message>
        <source>bags left on the line were set aside or cooled</source>
        <translation type="unfinished">os sacos da linha foram separados ou arrefecidos</translation>
    </message>
    <message>
        <source>bags since then looked at</source>
        <translation type="unfinished">vistos os sacos desde então</translation>
    </message>
    <message>
        <source>before bag {count}</source>
        <translation type="unfinished">antes do saco {count}</translation>
    </message>
    <message>
        <source>below T1</source>
        <translation type="unfinished">abaixo de T1</translation>
    </message>
    <message>
        <source>below T1: {count} of at most {most}</source>
        <translation type="unfinished">abaixo de T1: {count} de {most} permitidos</translation>
    </message>
    <message>
        <source>below T2</source>
        <translation type="unfinished">abaixo de T2</translation>
    </message>
    <message>
        <source>below T2: {count}</source>
        <translation type="unfinished">abaixo de T2: {count}</translation>
    </message>
    <message>
        <source>below T2: {count} of at most {most}</source>
        <translation type="unfinished">abaixo de T2: {count} de {most} permitidos</translation>
    </message>
    <message>
        <source>below floor</source>
        <translation type="unfinished">abaixo do mínimo</translation>
    </message>
    <message>
        <source>below the lowest of the description, {number}</source>
        <translation type="unfinished">abaixo do mínimo descrito, {number}</translation>
    </message>
    <message>
        <source>between the fields stands {one} and also {other}: mark what changes</source>
        <translation type="unfinished">entre os campos está {one} e também {other}: marque o que muda</translation>
    </message>
    <message>
        <source>bin and belt empty</source>
        <translation type="unfinished">cuba e tapete vazios</translation>
    </message>
    <message>
        <source>bin count</source>
        <translation type="unfinished">contagem do cesto</translation>
    </message>
    <message>
        <source>blend</source>
        <translation type="unfinished">mistura</translation>
    </message>
    <message>
        <source>blend lot</source>
        <translation type="unfinished">lote de mistura</translation>
    </message>
    <message>
        <source>blend lot code</source>
        <translation type="unfinished">código do lote de mistura</translation>
    </message>
    <message>
        <source>blend {lot}, use-by {day}</source>
        <translation type="unfinished">mistura {lot}, consumir até {day}</translation>
    </message>
    <message>
        <source>both on the label</source>
        <translation type="unfinished">ambos na etiqueta</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">intervalo</translation>
    </message>
    <message>
        <source>burst after its label, destroyed</source>
        <translation type="unfinished">rebentou depois da etiqueta, destruído</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">selagem aberta</translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished">por</translation>
    </message>
    <message>
        <source>by the record</source>
        <translation type="unfinished">pelo registo</translation>
    </message>
    <message>
        <source>by {code}</source>
        <translation type="unfinished">por {code}</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity ({here}), and that this is the scale</source>
        <translation type="unfinished">chegam bytes mas nenhuma linha começa ou acaba: veja velocidade e paridade ({here}), e se isto é a balança</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity of the converter, and that this is the scale</source>
        <translation type="unfinished">chegam bytes mas nenhuma linha começa ou acaba: veja velocidade e paridade do conversor, e se isto é a balança</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity ({here})</source>
        <translation type="unfinished">chegam bytes mas nenhum é uma trama: veja velocidade e paridade ({here})</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity of the converter</source>
        <translation type="unfinished">chegam bytes mas nenhum é uma trama: veja velocidade e paridade do conversor</translation>
    </message>
    <message>
        <source>bytes that belong to no frame</source>
        <translation type="unfinished">bytes de nenhuma trama</translation>
    </message>
    <message>
        <source>bytes that belong to no line</source>
        <translation type="unfinished">bytes de nenhuma linha</translation>
    </message>
    <message>
        <source>call QA</source>
        <translation type="unfinished">chame a QA</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">chamar alguém</translation>
    </message>
    <message>
        <source>case</source>
        <translation type="unfinished">caixa</translation>
    </message>
    <message>
        <source>case opened</source>
        <translation type="unfinished">caixa aberta</translation>
    </message>
    <message>
        <source>case {code}</source>
        <translation type="unfinished">caixa {code}</translation>
    </message>
    <message>
        <source>category-b</source>
        <translation type="unfinished">categoria B</translation>
    </message>
    <message>
        <source>centre of zero</source>
        <translation type="unfinished">centro do zero</translation>
    </message>
    <message>
        <source>chance to pass the official test</source>
        <translation type="unfinished">probabilidade de passar o ensaio oficial</translation>
    </message>
    <message>
        <source>change every {count} ms</source>
        <translation type="unfinished">mudam a cada {count} ms</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">mudar ou explicar um rolo de etiquetas</translation>
    </message>
    <message>
        <source>changed after weighing</source>
        <translation type="unfinished">mudou depois de pesar</translation>
    </message>
    <message>
        <source>changed after weighing: {net} is recorded, {found} is on the pan</source>
        <translation type="unfinished">mudou depois de pesar: registado {net}, no prato {found}</translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished">controlo</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">controlo de {what}</translation>
    </message>
    <message>
        <source>check the plug</source>
        <translation type="unfinished">veja a ficha</translation>
    </message>
    <message>
        <source>check the plug, the cable and the {what}'s power</source>
        <translation type="unfinished">veja a ficha, o cabo e a corrente ({what})</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">controle a balança depois de {what}: {where}</translation>
    </message>
    <message>
        <source>checked again, good</source>
        <translation type="unfinished">controlado de novo, bem</translation>
    </message>
    <message>
        <source>checked was {known}, here is {found}: CHECK IT again</source>
        <translation type="unfinished">foi controlada {known}, aqui está {found}: toque outra vez em CONTROLÁ-LA</translation>
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
        <source>checksum {code} does not agree</source>
        <translation type="unfinished">a soma {code} não bate certo</translation>
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
        <source>class {code}</source>
        <translation type="unfinished">classe {code}</translation>
    </message>
    <message>
        <source>class {code} knows no scale interval of {interval} (R 76 Table 3)</source>
        <translation type="unfinished">a classe {code} não tem divisão de {interval} (R 76 quadro 3)</translation>
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
        <source>code</source>
        <translation type="unfinished">código</translation>
    </message>
    <message>
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">compare a etiqueta e resolva a leitura</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">completo</translation>
    </message>
    <message>
        <source>component {component} is not known: allowed are {allowed}</source>
        <translation type="unfinished">componente {component} desconhecido: permitidos {allowed}</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">confirmar data e hora</translation>
    </message>
    <message>
        <source>connected by {device}</source>
        <translation type="unfinished">ligada por {device}</translation>
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
        <source>count on the core was wrong</source>
        <translation type="unfinished">a conta do rolo estava errada</translation>
    </message>
    <message>
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">conte os sacos da série anterior: {where}</translation>
    </message>
    <message>
        <source>counted {count}</source>
        <translation type="unfinished">contados {count}</translation>
    </message>
    <message>
        <source>counted {count}, agrees</source>
        <translation type="unfinished">contados {count}, bate certo</translation>
    </message>
    <message>
        <source>counted {count}, {difference}</source>
        <translation type="unfinished">contados {count}, {difference}</translation>
    </message>
    <message>
        <source>counted {count}, {difference}: {why}</source>
        <translation type="unfinished">contados {count}, {difference}: {why}</translation>
    </message>
    <message>
        <source>customer's own limits</source>
        <translation type="unfinished">limites próprios do cliente</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">data ou hora em dúvida</translation>
    </message>
    <message>
        <source>dated step</source>
        <translation type="unfinished">salto datado</translation>
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
        <source>day, month</source>
        <translation type="unfinished">dia, mês</translation>
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
        <source>declared tare {mass}</source>
        <translation type="unfinished">tara declarada {mass}</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation type="unfinished">destruída</translation>
    </message>
    <message>
        <source>destructive</source>
        <translation type="unfinished">destrutivo</translation>
    </message>
    <message>
        <source>destructive-e-mark</source>
        <translation type="unfinished">destrutivo (℮)</translation>
    </message>
    <message>
        <source>device {code}</source>
        <translation type="unfinished">aparelho {code}</translation>
    </message>
    <message>
        <source>differs</source>
        <translation type="unfinished">difere</translation>
    </message>
    <message>
        <source>digest</source>
        <translation type="unfinished">resumo</translation>
    </message>
    <message>
        <source>digits it shows</source>
        <translation type="unfinished">dígitos que mostra</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation type="unfinished">não serve</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">feito</translation>
    </message>
    <message>
        <source>double</source>
        <translation type="unfinished">dupla</translation>
    </message>
    <message>
        <source>downgraded</source>
        <translation type="unfinished">desclassificado</translation>
    </message>
    <message>
        <source>dumped</source>
        <translation type="unfinished">deitado fora</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation type="unfinished">esvaziado</translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished">vazio</translation>
    </message>
    <message>
        <source>empty bag</source>
        <translation type="unfinished">saco vazio</translation>
    </message>
    <message>
        <source>empty by now?</source>
        <translation type="unfinished">já vazio?</translation>
    </message>
    <message>
        <source>empty pan</source>
        <translation type="unfinished">prato vazio</translation>
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
        <translation type="unfinished">paridade par</translation>
    </message>
    <message>
        <source>event</source>
        <translation type="unfinished">evento</translation>
    </message>
    <message>
        <source>example {number}, {line}</source>
        <translation type="unfinished">exemplo {number}, {line}</translation>
    </message>
    <message>
        <source>expired</source>
        <translation type="unfinished">fora de prazo</translation>
    </message>
    <message>
        <source>expired – take it off the line</source>
        <translation type="unfinished">fora de prazo – retire da linha</translation>
    </message>
    <message>
        <source>explained</source>
        <translation type="unfinished">explicado</translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished">falhou</translation>
    </message>
    <message>
        <source>failed: what is done</source>
        <translation type="unfinished">falhou: o que se faz</translation>
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
        <source>fewer</source>
        <translation type="unfinished">a menos</translation>
    </message>
    <message>
        <source>fewer than {count} labels are left</source>
        <translation type="unfinished">restam menos de {count} etiquetas</translation>
    </message>
    <message>
        <source>field {code}</source>
        <translation type="unfinished">campo {code}</translation>
    </message>
    <message>
        <source>figures do not convince</source>
        <translation type="unfinished">os números não convencem</translation>
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
        <source>finishing</source>
        <translation type="unfinished">a acabar</translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished">primeiro</translation>
    </message>
    <message>
        <source>first label</source>
        <translation type="unfinished">primeira etiqueta</translation>
    </message>
    <message>
        <source>first serial</source>
        <translation type="unfinished">primeiro número</translation>
    </message>
    <message>
        <source>first-off</source>
        <translation type="unfinished">primeira peça</translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished">serve</translation>
    </message>
    <message>
        <source>flag</source>
        <translation type="unfinished">sinalizador</translation>
    </message>
    <message>
        <source>flags that contradict</source>
        <translation type="unfinished">sinalizadores contraditórios</translation>
    </message>
    <message>
        <source>floor {mass}</source>
        <translation type="unfinished">mínimo {mass}</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">mínimo, alvo, máximo</translation>
    </message>
    <message>
        <source>for every product</source>
        <translation type="unfinished">para cada produto</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">corpo estranho</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">encontrado</translation>
    </message>
    <message>
        <source>frame cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">trama cortada após {count} bytes pela seguinte</translation>
    </message>
    <message>
        <source>frame of {count} bytes, a weight has {number}</source>
        <translation type="unfinished">trama de {count} bytes, um peso tem {number}</translation>
    </message>
    <message>
        <source>frame without an end within {count} bytes</source>
        <translation type="unfinished">trama sem fim em {count} bytes</translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished">livre</translation>
    </message>
    <message>
        <source>from {code}</source>
        <translation type="unfinished">desde {code}</translation>
    </message>
    <message>
        <source>from, such as 09:00</source>
        <translation type="unfinished">de, como 09:00</translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished">completo</translation>
    </message>
    <message>
        <source>gate</source>
        <translation type="unfinished">passagem</translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished">dado a mais</translation>
    </message>
    <message>
        <source>gives away</source>
        <translation type="unfinished">dá a mais</translation>
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
        <source>gone on after a stop: {why}</source>
        <translation type="unfinished">continuou depois de uma paragem: {why}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">bom</translation>
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
        <translation type="unfinished">proteções fechadas, ferramentas contadas</translation>
    </message>
    <message>
        <source>hands and tools are washed</source>
        <translation type="unfinished">mãos e ferramentas lavadas</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation type="unfinished">colhido</translation>
    </message>
    <message>
        <source>heaviest gross {mass} against Max {most}</source>
        <translation type="unfinished">bruto maior {mass} face a Max {most}</translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished">retido</translation>
    </message>
    <message>
        <source>held at the line</source>
        <translation type="unfinished">retido na linha</translation>
    </message>
    <message>
        <source>held up by</source>
        <translation type="unfinished">travado por</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">retido – chame a QA</translation>
    </message>
    <message>
        <source>here: {line}</source>
        <translation type="unfinished">aqui: {line}</translation>
    </message>
    <message>
        <source>high resolution</source>
        <translation type="unfinished">alta resolução</translation>
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
        <source>hold stays</source>
        <translation type="unfinished">fica retido</translation>
    </message>
    <message>
        <source>hold the button</source>
        <translation type="unfinished">manter premido</translation>
    </message>
    <message>
        <source>hold, no record</source>
        <translation type="unfinished">reter, sem registo</translation>
    </message>
    <message>
        <source>holds</source>
        <translation type="unfinished">retenções</translation>
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
        <translation type="unfinished">id do rolo de etiquetas</translation>
    </message>
    <message>
        <source>id of the run</source>
        <translation type="unfinished">id da série</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation type="unfinished">em dúvida</translation>
    </message>
    <message>
        <source>in money</source>
        <translation type="unfinished">em dinheiro</translation>
    </message>
    <message>
        <source>in motion</source>
        <translation type="unfinished">em movimento</translation>
    </message>
    <message>
        <source>in no case</source>
        <translation type="unfinished">em nenhuma caixa</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">no saco {mass}</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation type="unfinished">no armazém</translation>
    </message>
    <message>
        <source>in the printer</source>
        <translation type="unfinished">na impressora</translation>
    </message>
    <message>
        <source>in window</source>
        <translation type="unfinished">na janela</translation>
    </message>
    <message>
        <source>in {number} min</source>
        <translation type="unfinished">em {number} min</translation>
    </message>
    <message>
        <source>in-service error at {gross} gross {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">erro em serviço a {gross} bruto: {mass} face a {share} de {limit} = {most}</translation>
    </message>
    <message>
        <source>initial zero error</source>
        <translation type="unfinished">erro de zero inicial</translation>
    </message>
    <message>
        <source>input lot</source>
        <translation type="unfinished">lote de entrada</translation>
    </message>
    <message>
        <source>input lot code</source>
        <translation type="unfinished">código do lote de entrada</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished">instrumento</translation>
    </message>
    <message>
        <source>interval {mass}</source>
        <translation type="unfinished">divisão {mass}</translation>
    </message>
    <message>
        <source>it came too slowly, or was too short, for a scanner</source>
        <translation type="unfinished">veio lento demais, ou curto demais, para um leitor</translation>
    </message>
    <message>
        <source>it came too warm, or damaged: QA decides</source>
        <translation type="unfinished">chegou quente demais ou danificado: decide a QA</translation>
    </message>
    <message>
        <source>it changes: mark it on each line</source>
        <translation type="unfinished">muda: marque-a em cada linha</translation>
    </message>
    <message>
        <source>it comes back without help</source>
        <translation type="unfinished">a ligação volta sozinha</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">não responde: está ligada, o cabo está posto?</translation>
    </message>
    <message>
        <source>it does not end with Enter</source>
        <translation type="unfinished">não acaba com Enter</translation>
    </message>
    <message>
        <source>it does not suit {products}: use another scale</source>
        <translation type="unfinished">não serve para {products}: use outra balança</translation>
    </message>
    <message>
        <source>it failed its check with test weights: have it adjusted, then check it again</source>
        <translation type="unfinished">falhou o controlo com pesos: mande ajustar e controle de novo</translation>
    </message>
    <message>
        <source>it is held until a person releases it</source>
        <translation type="unfinished">está retida até alguém a libertar</translation>
    </message>
    <message>
        <source>it is no serial port</source>
        <translation type="unfinished">não é uma porta série</translation>
    </message>
    <message>
        <source>it is not there: check the plug</source>
        <translation type="unfinished">não está lá: veja a ficha</translation>
    </message>
    <message>
        <source>it is {found}, the {what}'s is {known}: plug that one in again, or stop and start the station to take this one</source>
        <translation type="unfinished">é {found}, o conhecido ({what}) é {known}: ligue-o de novo, ou pare e arranque a estação para aceitar este</translation>
    </message>
    <message>
        <source>it just stays without approval</source>
        <translation type="unfinished">fica sem aprovação</translation>
    </message>
    <message>
        <source>it lacks what the station's scanner types first</source>
        <translation type="unfinished">falta o que o leitor da estação escreve primeiro</translation>
    </message>
    <message>
        <source>it never came out</source>
        <translation type="unfinished">não saiu</translation>
    </message>
    <message>
        <source>it reached the scale damaged, nothing was done</source>
        <translation type="unfinished">chegou danificado à balança, nada se fez</translation>
    </message>
    <message>
        <source>it was cancelled</source>
        <translation type="unfinished">foi anulada</translation>
    </message>
    <message>
        <source>it was cancelled before printing</source>
        <translation type="unfinished">foi anulada antes de imprimir</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s</source>
        <translation type="unfinished">não tinha saído ao fim de {seconds} s</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s ({why})</source>
        <translation type="unfinished">não tinha saído ao fim de {seconds} s ({why})</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">não saiu em {seconds} s: veja se sai</translation>
    </message>
    <message>
        <source>its bag goes out</source>
        <translation type="unfinished">o seu saco sai</translation>
    </message>
    <message>
        <source>its marks overlap or leave the line</source>
        <translation type="unfinished">as marcas sobrepõem-se ou saem da linha</translation>
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
        <source>jammed in the printer</source>
        <translation type="unfinished">presa na impressora</translation>
    </message>
    <message>
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">guardar, repor ou limpar o registo</translation>
    </message>
    <message>
        <source>kept as {file} and named in station.toml</source>
        <translation type="unfinished">guardado como {file} e indicado em station.toml</translation>
    </message>
    <message>
        <source>knee</source>
        <translation type="unfinished">cotovelo</translation>
    </message>
    <message>
        <source>label</source>
        <translation type="unfinished">etiqueta</translation>
    </message>
    <message>
        <source>label destroyed</source>
        <translation type="unfinished">etiqueta destruída</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">etiqueta anulada</translation>
    </message>
    <message>
        <source>label never printed</source>
        <translation type="unfinished">etiqueta não impressa</translation>
    </message>
    <message>
        <source>label of another run taken out</source>
        <translation type="unfinished">etiqueta de outra série retirada</translation>
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
        <source>label roll</source>
        <translation type="unfinished">rolo de etiquetas</translation>
    </message>
    <message>
        <source>label scan</source>
        <translation type="unfinished">leitura de etiqueta</translation>
    </message>
    <message>
        <source>label spoiled</source>
        <translation type="unfinished">etiqueta estragada</translation>
    </message>
    <message>
        <source>label {code}</source>
        <translation type="unfinished">etiqueta {code}</translation>
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
        <source>label {serial} is printed again, marked {mark}</source>
        <translation type="unfinished">a etiqueta {serial} é reimpressa, com a marca {mark}</translation>
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
        <source>labels on it {count}</source>
        <translation type="unfinished">etiquetas nele {count}</translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished">último</translation>
    </message>
    <message>
        <source>last 7 days</source>
        <translation type="unfinished">últimos 7 dias</translation>
    </message>
    <message>
        <source>last day</source>
        <translation type="unfinished">último dia</translation>
    </message>
    <message>
        <source>last day {day}</source>
        <translation type="unfinished">último dia {day}</translation>
    </message>
    <message>
        <source>last label</source>
        <translation type="unfinished">última etiqueta</translation>
    </message>
    <message>
        <source>last of it</source>
        <translation type="unfinished">o resto</translation>
    </message>
    <message>
        <source>last serial</source>
        <translation type="unfinished">último número</translation>
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
        <source>lead {code}</source>
        <translation type="unfinished">líder {code}</translation>
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
        <source>less the stops</source>
        <translation type="unfinished">sem as paragens</translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished">leve</translation>
    </message>
    <message>
        <source>line cleared</source>
        <translation type="unfinished">linha limpa</translation>
    </message>
    <message>
        <source>line cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">linha cortada após {count} bytes pela seguinte</translation>
    </message>
    <message>
        <source>line error</source>
        <translation type="unfinished">erro de linha</translation>
    </message>
    <message>
        <source>line that does not fit the pattern of its description</source>
        <translation type="unfinished">linha que não segue a descrição</translation>
    </message>
    <message>
        <source>line without an end within {count} bytes</source>
        <translation type="unfinished">linha sem fim em {count} bytes</translation>
    </message>
    <message>
        <source>line {code}</source>
        <translation type="unfinished">linha {code}</translation>
    </message>
    <message>
        <source>line {number}</source>
        <translation type="unfinished">linha {number}</translation>
    </message>
    <message>
        <source>lines</source>
        <translation type="unfinished">linhas</translation>
    </message>
    <message>
        <source>loaded</source>
        <translation type="unfinished">carregado</translation>
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
        <source>look whether it comes out</source>
        <translation type="unfinished">veja se sai</translation>
    </message>
    <message>
        <source>look whether the label is whole</source>
        <translation type="unfinished">veja se a etiqueta está inteira</translation>
    </message>
    <message>
        <source>looked at another clock: right now</source>
        <translation type="unfinished">visto outro relógio: está certo</translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished">lote</translation>
    </message>
    <message>
        <source>lot code {code} cannot be printed: allowed are 1 to 20 of the characters A-Z 0-9 . / - (no blanks, no small letters)</source>
        <translation type="unfinished">o código de lote {code} não se pode imprimir: 1 a 20 caracteres A-Z 0-9 . / - (sem espaços nem minúsculas)</translation>
    </message>
    <message>
        <source>lot {code}</source>
        <translation type="unfinished">lote {code}</translation>
    </message>
    <message>
        <source>lot {lot} had its last day on {day}: it must not be used</source>
        <translation type="unfinished">o último dia do lote {lot} foi {day}: não se pode usar</translation>
    </message>
    <message>
        <source>lot {lot} is already in the record as another delivery ({component} from {supplier}, received {day}): leave the code empty to get a new one</source>
        <translation type="unfinished">o lote {lot} já está registado como outra entrega ({component} de {supplier}, recebido {day}): deixe o código vazio para ter um novo</translation>
    </message>
    <message>
        <source>lot {lot} is held</source>
        <translation type="unfinished">lote {lot} retido</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">lote {lot} retido: retire-o e carregue outro: {where}</translation>
    </message>
    <message>
        <source>lot {lot} is nearly empty</source>
        <translation type="unfinished">lote {lot} quase vazio</translation>
    </message>
    <message>
        <source>lot {lot} is not in the record: receive it before the run</source>
        <translation type="unfinished">o lote {lot} não está registado: receba-o antes da série</translation>
    </message>
    <message>
        <source>lot {lot} is not known: check the code</source>
        <translation type="unfinished">lote {lot} desconhecido: verifique o código</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">lote {lot} desconhecido: receba-o primeiro</translation>
    </message>
    <message>
        <source>lot {lot} is not on the line: on it are {lots}</source>
        <translation type="unfinished">o lote {lot} não está na linha: estão {lots}</translation>
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
        <source>lot {lot} is {status}: it must not be used, call QA</source>
        <translation type="unfinished">lote {lot} {status}: não se pode usar, chame a QA</translation>
    </message>
    <message>
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lote {lot}: {why}</translation>
    </message>
    <message>
        <source>lot {lot} of {supplier} was received already on {day}: load it, do not receive it again</source>
        <translation type="unfinished">o lote {lot} de {supplier} já foi recebido em {day}: carregue-o, não o receba outra vez</translation>
    </message>
    <message>
        <source>lot {lot}: harvested {harvested} after it was received {received}</source>
        <translation type="unfinished">lote {lot}: colhido em {harvested}, depois de recebido em {received}</translation>
    </message>
    <message>
        <source>lot {lot}: no person holds it; lots.toml says what it is</source>
        <translation type="unfinished">lote {lot}: ninguém o retém; di-lo lots.toml</translation>
    </message>
    <message>
        <source>lot {lot}: packed {packed} after it was received {received}</source>
        <translation type="unfinished">lote {lot}: embalado em {packed}, depois de recebido em {received}</translation>
    </message>
    <message>
        <source>lot {lot}: waste needs its mass: weigh it</source>
        <translation type="unfinished">lote {lot}: a perda precisa do peso: pese-a</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} came: give more than nothing, or no mass</source>
        <translation type="unfinished">lote {lot}: chegaram {mass}: dê mais do que zero, ou nenhum peso</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} is below nothing</source>
        <translation type="unfinished">lote {lot}: {mass} é menos do que nada</translation>
    </message>
    <message>
        <source>lot {lot}: {warmth} °C on arrival: allowed are {least} to {most} °C</source>
        <translation type="unfinished">lote {lot}: {warmth} °C à chegada: permitidos {least} a {most} °C</translation>
    </message>
    <message>
        <source>lots</source>
        <translation type="unfinished">lotes</translation>
    </message>
    <message>
        <source>lots changed while a bag was on the pan: lift it before the next change</source>
        <translation type="unfinished">os lotes mudaram com um saco no prato: retire-o antes da próxima mudança</translation>
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
        <translation type="unfinished">feitas por máquina, por rever: {said}</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation type="unfinished">manutenção</translation>
    </message>
    <message>
        <source>make the check</source>
        <translation type="unfinished">faça o controlo</translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished">gestor</translation>
    </message>
    <message>
        <source>many frames arrive damaged: check plug and cable, keep it away from motors, and see that no other program reads this port</source>
        <translation type="unfinished">muitas tramas chegam danificadas: veja ficha e cabo, afaste-o de motores, e que nenhum outro programa leia esta porta</translation>
    </message>
    <message>
        <source>mark no control characters, and nothing after the end</source>
        <translation type="unfinished">não marque caracteres de controlo nem nada depois do fim</translation>
    </message>
    <message>
        <source>mark the same fields on each line, in the same order</source>
        <translation type="unfinished">marque os mesmos campos em cada linha, na mesma ordem</translation>
    </message>
    <message>
        <source>mark the value on each line</source>
        <translation type="unfinished">marque o valor em cada linha</translation>
    </message>
    <message>
        <source>mark two or more, with different weights on the pan</source>
        <translation type="unfinished">marque duas ou mais, com pesos diferentes</translation>
    </message>
    <message>
        <source>may be run</source>
        <translation type="unfinished">pode ser produzido</translation>
    </message>
    <message>
        <source>may not be run</source>
        <translation type="unfinished">não pode ser produzido</translation>
    </message>
    <message>
        <source>mean + {factor} s ≥ {nominal}: {holds} so far</source>
        <translation type="unfinished">média + {factor} s ≥ {nominal}: {holds} até agora</translation>
    </message>
    <message>
        <source>mean in the official sample</source>
        <translation type="unfinished">média na amostra oficial</translation>
    </message>
    <message>
        <source>mean net</source>
        <translation type="unfinished">líquido médio</translation>
    </message>
    <message>
        <source>mean of the whole batch</source>
        <translation type="unfinished">média do lote inteiro</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}</source>
        <translation type="unfinished">média {mean}, s {spread}</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">média {mean}, s {spread}, {count} sacos</translation>
    </message>
    <message>
        <source>mean {number}</source>
        <translation type="unfinished">média {number}</translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished">cumpre-se</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">detetor de metais</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished">minutos</translation>
    </message>
    <message>
        <source>missed {pieces}</source>
        <translation type="unfinished">não detetadas {pieces}</translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished">a mais</translation>
    </message>
    <message>
        <source>more bytes arrive than a scale sends: is this the scale's line?</source>
        <translation type="unfinished">chegam mais bytes do que uma balança envia: esta é a linha dela?</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">mover um lote na linha</translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished">nome</translation>
    </message>
    <message>
        <source>name of the format</source>
        <translation type="unfinished">nome do formato</translation>
    </message>
    <message>
        <source>name of the inspector</source>
        <translation type="unfinished">nome do inspetor</translation>
    </message>
    <message>
        <source>name the inspector: scan or type who tests</source>
        <translation type="unfinished">nomeie o inspetor: leia ou escreva quem ensaia</translation>
    </message>
    <message>
        <source>name the wash record: tank and number, as the wash step names it</source>
        <translation type="unfinished">nomeie o registo de lavagem: tanque e número, como na lavagem</translation>
    </message>
    <message>
        <source>near Max</source>
        <translation type="unfinished">perto do máx</translation>
    </message>
    <message>
        <source>near the tare</source>
        <translation type="unfinished">perto da tara</translation>
    </message>
    <message>
        <source>net</source>
        <translation type="unfinished">líq.</translation>
    </message>
    <message>
        <source>net below {mass}</source>
        <translation type="unfinished">líquido abaixo de {mass}</translation>
    </message>
    <message>
        <source>net below {mass}; {count} below T2</source>
        <translation type="unfinished">líquido abaixo de {mass}; {count} abaixo de T2</translation>
    </message>
    <message>
        <source>net fill</source>
        <translation type="unfinished">enchimento líquido</translation>
    </message>
    <message>
        <source>net {mass}: {verdict}</source>
        <translation type="unfinished">líquido {mass}: {verdict}</translation>
    </message>
    <message>
        <source>never came out</source>
        <translation type="unfinished">não saiu</translation>
    </message>
    <message>
        <source>never printed</source>
        <translation type="unfinished">nunca impressa</translation>
    </message>
    <message>
        <source>new bag {serial}</source>
        <translation type="unfinished">saco novo {serial}</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">ainda sem PIN nem cartão</translation>
    </message>
    <message>
        <source>no USB device</source>
        <translation type="unfinished">nenhum aparelho USB</translation>
    </message>
    <message>
        <source>no bag</source>
        <translation type="unfinished">nenhum saco</translation>
    </message>
    <message>
        <source>no bag is expected any more</source>
        <translation type="unfinished">já não se espera nenhum saco</translation>
    </message>
    <message>
        <source>no bag is on record yet</source>
        <translation type="unfinished">ainda não há sacos registados</translation>
    </message>
    <message>
        <source>no bag is taken: {why}</source>
        <translation type="unfinished">não se aceita nenhum saco: {why}</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">nenhum destes sacos é produto</translation>
    </message>
    <message>
        <source>no bag of this run is labelled yet: pack one, then scan its label</source>
        <translation type="unfinished">nenhum saco desta série tem etiqueta: embale um e leia a sua etiqueta</translation>
    </message>
    <message>
        <source>no bag of {scope} {name} is in the record: nothing is held</source>
        <translation type="unfinished">não há sacos de {scope} {name} no registo: nada fica retido</translation>
    </message>
    <message>
        <source>no checksum known here agrees on all lines: mark another field, or none</source>
        <translation type="unfinished">nenhuma soma conhecida bate em todas: marque outro campo, ou nenhum</translation>
    </message>
    <message>
        <source>no copy</source>
        <translation type="unfinished">nenhuma cópia</translation>
    </message>
    <message>
        <source>no day given</source>
        <translation type="unfinished">sem data</translation>
    </message>
    <message>
        <source>no error at any load</source>
        <translation type="unfinished">nenhum erro em nenhuma carga</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">nenhum valor</translation>
    </message>
    <message>
        <source>no good bag yet</source>
        <translation type="unfinished">ainda nenhum saco bom</translation>
    </message>
    <message>
        <source>no good check of {what} after the last bag</source>
        <translation type="unfinished">sem controlo bom de {what} depois do último saco</translation>
    </message>
    <message>
        <source>no good check of {what} in the run</source>
        <translation type="unfinished">sem controlo bom de {what} na série</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">não há rolo de etiquetas: leia um em {where}</translation>
    </message>
    <message>
        <source>no labelled bag of the last run is loose</source>
        <translation type="unfinished">não há sacos com etiqueta da última série soltos</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">sem etiquetas: ponha um rolo</translation>
    </message>
    <message>
        <source>no lot of {component} may be used on {day}</source>
        <translation type="unfinished">nenhum lote de {component} se pode usar em {day}</translation>
    </message>
    <message>
        <source>no old product on line, pan or floor</source>
        <translation type="unfinished">nada antigo na linha, prato ou chão</translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished">sem preço</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">falta produto</translation>
    </message>
    <message>
        <source>no product has it</source>
        <translation type="unfinished">nenhum produto a tem</translation>
    </message>
    <message>
        <source>no proposal worked out yet</source>
        <translation type="unfinished">ainda sem proposta calculada</translation>
    </message>
    <message>
        <source>no rate yet</source>
        <translation type="unfinished">ainda sem ritmo</translation>
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
        <source>no roll is in</source>
        <translation type="unfinished">não há rolo colocado</translation>
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
        <source>no run yet</source>
        <translation type="unfinished">ainda sem série</translation>
    </message>
    <message>
        <source>no scale yet</source>
        <translation type="unfinished">ainda sem balança</translation>
    </message>
    <message>
        <source>no scan differed: there is nothing to clear</source>
        <translation type="unfinished">nenhuma leitura diferiu: nada a resolver</translation>
    </message>
    <message>
        <source>no single test weight of {mass}: use 1, 2 or 5 times a power of ten from 1 g to 20 kg</source>
        <translation type="unfinished">não há peso único de {mass}: use 1, 2 ou 5 vezes uma potência de dez de 1 g a 20 kg</translation>
    </message>
    <message>
        <source>no target meets every clause: the fills scatter too much</source>
        <translation type="unfinished">nenhum alvo cumpre tudo: os enchimentos variam demasiado</translation>
    </message>
    <message>
        <source>no time service has kept the clock right for {time}</source>
        <translation type="unfinished">nenhum serviço de hora acertou o relógio há {time}</translation>
    </message>
    <message>
        <source>no weight</source>
        <translation type="unfinished">sem peso</translation>
    </message>
    <message>
        <source>nobody may ship them</source>
        <translation type="unfinished">ninguém os pode enviar</translation>
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
        <source>nominal</source>
        <translation type="unfinished">nominal</translation>
    </message>
    <message>
        <source>nominal {mass}</source>
        <translation type="unfinished">nominal {mass}</translation>
    </message>
    <message>
        <source>nominal {mass} against Min {least}</source>
        <translation type="unfinished">nominal {mass} face a Min {least}</translation>
    </message>
    <message>
        <source>nominal {mass} against {count} intervals of {interval}</source>
        <translation type="unfinished">nominal {mass} face a {count} divisões de {interval}</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">nenhuma</translation>
    </message>
    <message>
        <source>none left on line</source>
        <translation type="unfinished">nada na linha</translation>
    </message>
    <message>
        <source>none of what was heard is a weight by this description</source>
        <translation type="unfinished">nada do que se ouviu é um peso por esta descrição</translation>
    </message>
    <message>
        <source>none was taken into use on record yet</source>
        <translation type="unfinished">ainda nenhuma posta em uso com registo</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">ainda nenhum</translation>
    </message>
    <message>
        <source>not a multiple of {number}</source>
        <translation type="unfinished">não é múltiplo de {number}</translation>
    </message>
    <message>
        <source>not clear yet: {point}</source>
        <translation type="unfinished">ainda por limpar: {point}</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation type="unfinished">ainda por contar</translation>
    </message>
    <message>
        <source>not due</source>
        <translation type="unfinished">não previsto</translation>
    </message>
    <message>
        <source>not fit to sell</source>
        <translation type="unfinished">impróprio para venda</translation>
    </message>
    <message>
        <source>not found: QA decides</source>
        <translation type="unfinished">não se encontrou: decide a QA</translation>
    </message>
    <message>
        <source>not judged: {why}</source>
        <translation type="unfinished">não avaliado: {why}</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">sem etiqueta: {reason}</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">agora não</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">não impressa</translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished">não dito</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation type="unfinished">não pesado</translation>
    </message>
    <message>
        <source>not weighed in</source>
        <translation type="unfinished">não pesado à entrada</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">ainda não revisto</translation>
    </message>
    <message>
        <source>not yet: {what}</source>
        <translation type="unfinished">ainda não: {what}</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">nota</translation>
    </message>
    <message>
        <source>nothing about the clock is open</source>
        <translation type="unfinished">nada está pendente do relógio</translation>
    </message>
    <message>
        <source>nothing on the pan</source>
        <translation type="unfinished">nada no prato</translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished">agora</translation>
    </message>
    <message>
        <source>now {number}</source>
        <translation type="unfinished">agora {number}</translation>
    </message>
    <message>
        <source>odd parity</source>
        <translation type="unfinished">paridade ímpar</translation>
    </message>
    <message>
        <source>of everything the version says</source>
        <translation type="unfinished">de tudo o que a versão diz</translation>
    </message>
    <message>
        <source>of the last bag</source>
        <translation type="unfinished">do último saco</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">de {count} sacos</translation>
    </message>
    <message>
        <source>old labels and film are off the line</source>
        <translation type="unfinished">etiquetas e filme antigos fora da linha</translation>
    </message>
    <message>
        <source>old lots are closed or returned</source>
        <translation type="unfinished">lotes antigos fechados ou devolvidos</translation>
    </message>
    <message>
        <source>on another pallet</source>
        <translation type="unfinished">noutra palete</translation>
    </message>
    <message>
        <source>on no label</source>
        <translation type="unfinished">em nenhuma etiqueta</translation>
    </message>
    <message>
        <source>on the line</source>
        <translation type="unfinished">na linha</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">na balança: {who}</translation>
    </message>
    <message>
        <source>on the {count} bags to come</source>
        <translation type="unfinished">nos {count} sacos que faltam</translation>
    </message>
    <message>
        <source>on the {count} bags to come, any above the floor will do</source>
        <translation type="unfinished">nos {count} sacos que faltam, basta acima do mínimo</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">em {code} só volta o que a estação envia: veja se a balança está ligada, o cabo e as definições</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">em {code} só volta o que a estação envia: veja se a balança está ligada, o cabo e as definições ({here})</translation>
    </message>
    <message>
        <source>one line comes again and again and is no weight ({why}): see what the scale shows, such as an error, another unit or another mode, and set it back</source>
        <translation type="unfinished">chega sempre a mesma linha e não é um peso ({why}): veja o que a balança mostra (erro, outra unidade, outro modo) e ponha-a como antes</translation>
    </message>
    <message>
        <source>one new bag stands for one reject: touch one alone</source>
        <translation type="unfinished">um saco novo vale por um rejeitado: toque só num</translation>
    </message>
    <message>
        <source>one of {count} bags</source>
        <translation type="unfinished">um de {count} sacos</translation>
    </message>
    <message>
        <source>only a lead goes on after a mismatch</source>
        <translation type="unfinished">só um líder continua depois de uma diferença</translation>
    </message>
    <message>
        <source>only just suits</source>
        <translation type="unfinished">serve à justa</translation>
    </message>
    <message>
        <source>only where in doubt</source>
        <translation type="unfinished">só se em dúvida</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">em aberto</translation>
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
        <source>other unit {found}, the line runs in {unit}: set the scale back</source>
        <translation type="unfinished">outra unidade, {found}; a linha trabalha em {unit}: mude a balança</translation>
    </message>
    <message>
        <source>out of bags</source>
        <translation type="unfinished">de sacos</translation>
    </message>
    <message>
        <source>over capacity</source>
        <translation type="unfinished">acima da capacidade</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">excesso de carga: retire a carga</translation>
    </message>
    <message>
        <source>over capacity: take the load off the pan</source>
        <translation type="unfinished">excesso de carga: retire a carga do prato</translation>
    </message>
    <message>
        <source>packed</source>
        <translation type="unfinished">embalado</translation>
    </message>
    <message>
        <source>packed {day}</source>
        <translation type="unfinished">embalado {day}</translation>
    </message>
    <message>
        <source>packed {time} by {who}, production day {day}</source>
        <translation type="unfinished">embalado {time} por {who}, dia de produção {day}</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">embalador</translation>
    </message>
    <message>
        <source>pallet</source>
        <translation type="unfinished">palete</translation>
    </message>
    <message>
        <source>pallet broken up</source>
        <translation type="unfinished">palete desfeita</translation>
    </message>
    <message>
        <source>pallet {code}</source>
        <translation type="unfinished">palete {code}</translation>
    </message>
    <message>
        <source>pan, chute and tools are clean and dry</source>
        <translation type="unfinished">prato, calha e utensílios limpos e secos</translation>
    </message>
    <message>
        <source>paper: delivery note 12</source>
        <translation type="unfinished">papel: guia de remessa 12</translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished">passou</translation>
    </message>
    <message>
        <source>pause</source>
        <translation type="unfinished">pausa</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">planeie o controlo</translation>
    </message>
    <message>
        <source>plate {code}</source>
        <translation type="unfinished">chapa {code}</translation>
    </message>
    <message>
        <source>plus or minus</source>
        <translation type="unfinished">mais ou menos</translation>
    </message>
    <message>
        <source>poor print</source>
        <translation type="unfinished">má impressão</translation>
    </message>
    <message>
        <source>port {code}</source>
        <translation type="unfinished">porta {code}</translation>
    </message>
    <message>
        <source>position</source>
        <translation type="unfinished">posto</translation>
    </message>
    <message>
        <source>present are</source>
        <translation type="unfinished">existem</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">imprimir de novo uma etiqueta</translation>
    </message>
    <message>
        <source>print unreadable</source>
        <translation type="unfinished">impressão ilegível</translation>
    </message>
    <message>
        <source>product</source>
        <translation type="unfinished">produto</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">temperatura do produto</translation>
    </message>
    <message>
        <source>product {product} cannot run on this scale: {why}</source>
        <translation type="unfinished">o produto {product} não pode ir nesta balança: {why}</translation>
    </message>
    <message>
        <source>product {product} is at version {version} now, not {other}: choose it again</source>
        <translation type="unfinished">o produto {product} está agora na versão {version}, não {other}: escolha-o de novo</translation>
    </message>
    <message>
        <source>product {product} is not known: choose one of {allowed}</source>
        <translation type="unfinished">produto {product} desconhecido: escolha um de {allowed}</translation>
    </message>
    <message>
        <source>product {product} version {version}, as it is set</source>
        <translation type="unfinished">produto {product} versão {version}, como está</translation>
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
        <source>proposed</source>
        <translation type="unfinished">proposto</translation>
    </message>
    <message>
        <source>purge old runs</source>
        <translation type="unfinished">apagar séries antigas</translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished">colocado</translation>
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
        <source>qa check</source>
        <translation type="unfinished">controlo da QA</translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished">ritmo</translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished">lido</translation>
    </message>
    <message>
        <source>reason</source>
        <translation type="unfinished">motivo</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">receber uma entrega</translation>
    </message>
    <message>
        <source>received {day}</source>
        <translation type="unfinished">recebido {day}</translation>
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
        <source>recorded</source>
        <translation type="unfinished">registado</translation>
    </message>
    <message>
        <source>recounted, stays open</source>
        <translation type="unfinished">recontadas, fica em aberto</translation>
    </message>
    <message>
        <source>reference</source>
        <translation type="unfinished">referência</translation>
    </message>
    <message>
        <source>refuse a label</source>
        <translation type="unfinished">recusar uma etiqueta</translation>
    </message>
    <message>
        <source>refused</source>
        <translation type="unfinished">recusado</translation>
    </message>
    <message>
        <source>refused: {why}</source>
        <translation type="unfinished">recusado: {why}</translation>
    </message>
    <message>
        <source>reject</source>
        <translation type="unfinished">rejeitado</translation>
    </message>
    <message>
        <source>reject ticket</source>
        <translation type="unfinished">talão de rejeitado</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">libertar o que está retido</translation>
    </message>
    <message>
        <source>released</source>
        <translation type="unfinished">libertado</translation>
    </message>
    <message>
        <source>released at the line by QA</source>
        <translation type="unfinished">libertado na linha pela QA</translation>
    </message>
    <message>
        <source>released before the step</source>
        <translation type="unfinished">libertado o anterior ao salto</translation>
    </message>
    <message>
        <source>remark on what is open</source>
        <translation type="unfinished">nota sobre o que está aberto</translation>
    </message>
    <message>
        <source>repacked</source>
        <translation type="unfinished">reembalado</translation>
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
        <translation type="unfinished">devolvido</translation>
    </message>
    <message>
        <source>returned {count}</source>
        <translation type="unfinished">devolvidas {count}</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">rever e assinar um dia</translation>
    </message>
    <message>
        <source>reviewed</source>
        <translation type="unfinished">revisto</translation>
    </message>
    <message>
        <source>reviewed with exceptions</source>
        <translation type="unfinished">revisto com exceções</translation>
    </message>
    <message>
        <source>rework</source>
        <translation type="unfinished">reprocesso</translation>
    </message>
    <message>
        <source>rework of {lot} was packed {time} ago: it may go back on the line for {most}</source>
        <translation type="unfinished">o reprocesso de {lot} foi embalado há {time}: pode voltar à linha durante {most}</translation>
    </message>
    <message>
        <source>reworked</source>
        <translation type="unfinished">reprocessado</translation>
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
        <source>roll {code}</source>
        <translation type="unfinished">rolo {code}</translation>
    </message>
    <message>
        <source>roll {roll} is in: take it out first</source>
        <translation type="unfinished">o rolo {roll} está colocado: tire-o primeiro</translation>
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
        <source>run</source>
        <translation type="unfinished">série</translation>
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
        <source>run reconciled</source>
        <translation type="unfinished">série conciliada</translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished">amostra</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation type="unfinished">amostra</translation>
    </message>
    <message>
        <source>samples {count}</source>
        <translation type="unfinished">amostras {count}</translation>
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
        <source>say which lot is empty</source>
        <translation type="unfinished">diga que lote está vazio</translation>
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
        <source>scale interval {mass} against at most {most} for {nominal}</source>
        <translation type="unfinished">divisão {mass} face a {most} no máximo para {nominal}</translation>
    </message>
    <message>
        <source>scale interval {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">divisão {mass} face a {share} de {limit} = {most}</translation>
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
        <source>scale's port {code} cannot be opened</source>
        <translation type="unfinished">a porta {code} da balança não abre</translation>
    </message>
    <message>
        <source>scan a case or pallet</source>
        <translation type="unfinished">leia uma caixa ou palete</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">ler uma etiqueta</translation>
    </message>
    <message>
        <source>scan a label or lot</source>
        <translation type="unfinished">leia uma etiqueta ou lote</translation>
    </message>
    <message>
        <source>scan a lot</source>
        <translation type="unfinished">leia um lote</translation>
    </message>
    <message>
        <source>scan a lot, or touch one</source>
        <translation type="unfinished">leia um lote, ou toque num</translation>
    </message>
    <message>
        <source>scan a picked bag</source>
        <translation type="unfinished">leia um saco escolhido</translation>
    </message>
    <message>
        <source>scan a ticket or label</source>
        <translation type="unfinished">leia um talão ou etiqueta</translation>
    </message>
    <message>
        <source>scan back</source>
        <translation type="unfinished">leitura de etiqueta</translation>
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
        <source>scan or type the film lot</source>
        <translation type="unfinished">leia ou escreva o lote de filme</translation>
    </message>
    <message>
        <source>scan pallets and cases</source>
        <translation type="unfinished">leia paletes e caixas</translation>
    </message>
    <message>
        <source>scan the bags</source>
        <translation type="unfinished">leia os sacos</translation>
    </message>
    <message>
        <source>scan the bags of the case first</source>
        <translation type="unfinished">leia primeiro os sacos da caixa</translation>
    </message>
    <message>
        <source>scan the case label</source>
        <translation type="unfinished">leia a etiqueta da caixa</translation>
    </message>
    <message>
        <source>scan the cases</source>
        <translation type="unfinished">leia as caixas</translation>
    </message>
    <message>
        <source>scan the cases of the pallet first</source>
        <translation type="unfinished">leia primeiro as caixas da palete</translation>
    </message>
    <message>
        <source>scan the label</source>
        <translation type="unfinished">leia a etiqueta</translation>
    </message>
    <message>
        <source>scan the label of the new bag</source>
        <translation type="unfinished">leia a etiqueta do saco novo</translation>
    </message>
    <message>
        <source>scan the label, or type its serial</source>
        <translation type="unfinished">leia a etiqueta, ou escreva o número</translation>
    </message>
    <message>
        <source>scan the last label</source>
        <translation type="unfinished">leia a última etiqueta</translation>
    </message>
    <message>
        <source>scan the pallets and cases that leave</source>
        <translation type="unfinished">leia as paletes e caixas que saem</translation>
    </message>
    <message>
        <source>scan the roll, then Enter</source>
        <translation type="unfinished">leia o rolo, depois Enter</translation>
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
        <source>seal in doubt</source>
        <translation type="unfinished">selagem em dúvida</translation>
    </message>
    <message>
        <source>seal open</source>
        <translation type="unfinished">selagem aberta</translation>
    </message>
    <message>
        <source>seen on its bag</source>
        <translation type="unfinished">vista no seu saco</translation>
    </message>
    <message>
        <source>sent to the laboratory</source>
        <translation type="unfinished">enviado ao laboratório</translation>
    </message>
    <message>
        <source>sent to the scale</source>
        <translation type="unfinished">enviado à balança</translation>
    </message>
    <message>
        <source>serial</source>
        <translation type="unfinished">número</translation>
    </message>
    <message>
        <source>serial number on its plate</source>
        <translation type="unfinished">número de série na chapa</translation>
    </message>
    <message>
        <source>serial number {shown}: give the 1 to 40 characters of the plate</source>
        <translation type="unfinished">número de série {shown}: indique os 1 a 40 caracteres da placa</translation>
    </message>
    <message>
        <source>serial {code}</source>
        <translation type="unfinished">número {code}</translation>
    </message>
    <message>
        <source>serials</source>
        <translation type="unfinished">números</translation>
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
        <source>set aside: {reason}</source>
        <translation type="unfinished">separado: {reason}</translation>
    </message>
    <message>
        <source>set on purpose</source>
        <translation type="unfinished">mudada de propósito</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">gerir pessoas, PIN e cartões</translation>
    </message>
    <message>
        <source>set to {mass} in the settings</source>
        <translation type="unfinished">{mass} nas definições</translation>
    </message>
    <message>
        <source>set unit, interval and capacity under [scale] of station.toml first</source>
        <translation type="unfinished">ponha antes unidade, divisão e capacidade em [scale] de station.toml</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">a separar: {reason}</translation>
    </message>
    <message>
        <source>setting bag {serial} aside needs a reason: choose one</source>
        <translation type="unfinished">separar o saco {serial} precisa de um motivo: escolha um</translation>
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
        <translation type="unfinished">envio</translation>
    </message>
    <message>
        <source>shipment came back</source>
        <translation type="unfinished">envio devolvido</translation>
    </message>
    <message>
        <source>shipment withdrawn</source>
        <translation type="unfinished">envio retirado</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">assinar uma mudança de série</translation>
    </message>
    <message>
        <source>signed with a difference</source>
        <translation type="unfinished">assinado com diferença</translation>
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
        <translation type="unfinished">contínua: {error} desde o primeiro saco; tracejada: a crescer</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing, step: as dated</source>
        <translation type="unfinished">contínua: {error} desde o primeiro saco; tracejada: a crescer; salto: datado</translation>
    </message>
    <message>
        <source>spoiled ones not counted</source>
        <translation type="unfinished">estragadas por contar</translation>
    </message>
    <message>
        <source>spoiled {count}</source>
        <translation type="unfinished">estragadas {count}</translation>
    </message>
    <message>
        <source>spooled</source>
        <translation type="unfinished">em fila</translation>
    </message>
    <message>
        <source>spread of the fills</source>
        <translation type="unfinished">dispersão dos enchimentos</translation>
    </message>
    <message>
        <source>spread {spread}: a mean of {mean} or more, by the {what} rule</source>
        <translation type="unfinished">dispersão {spread}: média de {mean} ou mais, pela regra {what}</translation>
    </message>
    <message>
        <source>start a run</source>
        <translation type="unfinished">abrir uma série</translation>
    </message>
    <message>
        <source>state</source>
        <translation type="unfinished">estado</translation>
    </message>
    <message>
        <source>status {code} with the weight {shown}, it needs ten dashes</source>
        <translation type="unfinished">estado {code} com peso {shown}: exige dez traços</translation>
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
        <translation type="unfinished">parar a linha</translation>
    </message>
    <message>
        <source>stops</source>
        <translation type="unfinished">paragens</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">sacos guardados</translation>
    </message>
    <message>
        <source>stuck on askew</source>
        <translation type="unfinished">colada torta</translation>
    </message>
    <message>
        <source>study of its film lot: {study}</source>
        <translation type="unfinished">estudo do seu lote de filme: {study}</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation type="unfinished">enviada</translation>
    </message>
    <message>
        <source>suits</source>
        <translation type="unfinished">serve</translation>
    </message>
    <message>
        <source>suspect</source>
        <translation type="unfinished">suspeito</translation>
    </message>
    <message>
        <source>suspect window</source>
        <translation type="unfinished">janela suspeita</translation>
    </message>
    <message>
        <source>suspect window of {what}</source>
        <translation type="unfinished">janela suspeita de {what}</translation>
    </message>
    <message>
        <source>take it off the line</source>
        <translation type="unfinished">retire da linha</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">retire-o: {where}</translation>
    </message>
    <message>
        <source>take old files off the disk</source>
        <translation type="unfinished">retire ficheiros antigos do disco</translation>
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
        <source>take the old lot off and load the next in one step, or end the run</source>
        <translation type="unfinished">retire o lote antigo e carregue o seguinte de uma vez, ou acabe a série</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation type="unfinished">desfeitos</translation>
    </message>
    <message>
        <source>taken by QA</source>
        <translation type="unfinished">tirados pela QA</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation type="unfinished">tirado</translation>
    </message>
    <message>
        <source>tare</source>
        <translation type="unfinished">tara</translation>
    </message>
    <message>
        <source>tare error</source>
        <translation type="unfinished">erro de tara</translation>
    </message>
    <message>
        <source>tare {mass}</source>
        <translation type="unfinished">tara {mass}</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">alvo</translation>
    </message>
    <message>
        <source>target of {product}</source>
        <translation type="unfinished">alvo de {product}</translation>
    </message>
    <message>
        <source>target {mass} now</source>
        <translation type="unfinished">alvo {mass} agora</translation>
    </message>
    <message>
        <source>target {mass} proposed</source>
        <translation type="unfinished">alvo {mass} proposto</translation>
    </message>
    <message>
        <source>teach a scale of your own</source>
        <translation type="unfinished">ensine uma balança sua</translation>
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
        <source>test weights of class {code} for {mass} may be wrong by {own}, more than a third of the {allowed} the scale may be: use a finer class</source>
        <translation type="unfinished">os pesos da classe {code} para {mass} podem errar {own}, mais de um terço dos {allowed} da balança: use uma classe mais fina</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity ({here})</source>
        <translation type="unfinished">chega texto mas nada é um peso deste protocolo: está outro aparelho nesta porta, ou outro formato na balança? Se não, veja velocidade e paridade ({here})</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity of the converter</source>
        <translation type="unfinished">chega texto mas nada é um peso deste protocolo: está outro aparelho nesta porta, ou outro formato na balança? Se não, veja velocidade e paridade do conversor</translation>
    </message>
    <message>
        <source>the bag on the pan may hold lot {lot}, which is held: set it aside and lift it, then change the lot</source>
        <translation type="unfinished">o saco no prato pode ter o lote {lot}, retido: separe-o e retire-o, depois mude o lote</translation>
    </message>
    <message>
        <source>the bags scatter too much for a mean tare ({study}): use other bags</source>
        <translation type="unfinished">os sacos variam demasiado para uma tara média ({study}): use outros sacos</translation>
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
        <source>the clock is {time} behind the newest entry of the record</source>
        <translation type="unfinished">o relógio está {time} atrás do último registo</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}</source>
        <translation type="unfinished">o relógio saltou {time} {way}</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}, to another day</source>
        <translation type="unfinished">o relógio saltou {time} {way}, para outro dia</translation>
    </message>
    <message>
        <source>the clock was set between the checks: the bags have no sure order in time</source>
        <translation type="unfinished">o relógio foi mudado entre os controlos: os sacos não têm ordem certa</translation>
    </message>
    <message>
        <source>the code holds a character that no code of ours has</source>
        <translation type="unfinished">o código tem um carácter que nenhum dos nossos tem</translation>
    </message>
    <message>
        <source>the code presses keys that are no text</source>
        <translation type="unfinished">o código carrega em teclas que não são texto</translation>
    </message>
    <message>
        <source>the computer slept or was held up: what the scale sent is too old</source>
        <translation type="unfinished">o computador dormiu ou ficou retido: o que a balança enviou é velho de mais</translation>
    </message>
    <message>
        <source>the demo's settings stay as they are</source>
        <translation type="unfinished">as definições da demo não mudam</translation>
    </message>
    <message>
        <source>the device is gone, or another program reads the same port</source>
        <translation type="unfinished">o aparelho não está lá, ou outro programa lê a mesma porta</translation>
    </message>
    <message>
        <source>the disk cannot be asked: {why}</source>
        <translation type="unfinished">não se consegue consultar o disco: {why}</translation>
    </message>
    <message>
        <source>the disk fills up</source>
        <translation type="unfinished">o disco está a encher</translation>
    </message>
    <message>
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">disco cheio: liberte espaço e imprima de novo</translation>
    </message>
    <message>
        <source>the disk is nearly full: free {more} on it, then packing goes on by itself</source>
        <translation type="unfinished">o disco está quase cheio: liberte {more} e o embalamento continua sozinho</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: take old files off it, or call maintenance</source>
        <translation type="unfinished">disco cheio a {percent} %, {free} livres: retire ficheiros antigos ou chame a manutenção</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: {why}</source>
        <translation type="unfinished">disco cheio a {percent} %, {free} livres: {why}</translation>
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
        <source>the floor</source>
        <translation type="unfinished">o mínimo</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">falta a pasta de etiquetas: crie {folder} de novo</translation>
    </message>
    <message>
        <source>the known fault of older versions is mended in this one</source>
        <translation type="unfinished">a falha conhecida de versões antigas está corrigida nesta</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}, so it was printed: destroy it first</source>
        <translation type="unfinished">a etiqueta do saco {serial} está {state}, logo foi impressa: destrua-a primeiro</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: nothing to answer</source>
        <translation type="unfinished">a etiqueta do saco {serial} está {state}: nada a responder</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: only one that is {states} is printed again</source>
        <translation type="unfinished">a etiqueta do saco {serial} está {state}: só se reimprime se {states}</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: {fate}</source>
        <translation type="unfinished">a etiqueta do saco {serial} está {state}: {fate}</translation>
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
        <source>the line does not stand</source>
        <translation type="unfinished">a linha não está parada</translation>
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
        <source>the machine slept for {time}</source>
        <translation type="unfinished">a máquina adormeceu {time}</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">a média está abaixo do nominal</translation>
    </message>
    <message>
        <source>the new bag has a serial of its own: scan its label</source>
        <translation type="unfinished">o saco novo tem número próprio: leia a sua etiqueta</translation>
    </message>
    <message>
        <source>the new film or roll is the right one</source>
        <translation type="unfinished">o filme ou rolo novo é o certo</translation>
    </message>
    <message>
        <source>the newest entry of the record is {time} old</source>
        <translation type="unfinished">o último registo tem {time}</translation>
    </message>
    <message>
        <source>the offset from UTC changed by {time}, as daylight saving does</source>
        <translation type="unfinished">a diferença para UTC mudou {time}, como na hora de verão</translation>
    </message>
    <message>
        <source>the oldest entry has waited for more than 30 minutes</source>
        <translation type="unfinished">o registo mais antigo espera há mais de 30 minutos</translation>
    </message>
    <message>
        <source>the pan is clean, dry and at zero</source>
        <translation type="unfinished">o prato está limpo, seco e a zero</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">o prato tem de estar vazio antes do saco seguinte</translation>
    </message>
    <message>
        <source>the plan takes {count} packs, the batch will have only {lot}</source>
        <translation type="unfinished">o plano toma {count} sacos, o lote terá só {lot}</translation>
    </message>
    <message>
        <source>the port is not open yet</source>
        <translation type="unfinished">a porta ainda não está aberta</translation>
    </message>
    <message>
        <source>the port is open, no weight was read yet</source>
        <translation type="unfinished">a porta está aberta, ainda não se leu nenhum peso</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">a impressora desistiu</translation>
    </message>
    <message>
        <source>the printer gives no known job state</source>
        <translation type="unfinished">a impressora não dá um estado conhecido do trabalho</translation>
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
        <source>the printer says that it is out, but its reply to the page was lost</source>
        <translation type="unfinished">a impressora diz que saiu, mas perdeu-se a resposta à página</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">a impressora: {why}</translation>
    </message>
    <message>
        <source>the proposal is for version {number}</source>
        <translation type="unfinished">a proposta é para a versão {number}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">a fila não chega à impressora: ligue-a, verifique o cabo</translation>
    </message>
    <message>
        <source>the record's log takes {size}: another program has been reading the record for long, close it</source>
        <translation type="unfinished">o diário do registo ocupa {size}: outro programa lê-o há muito, feche-o</translation>
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
        <source>the run is open</source>
        <translation type="unfinished">a série está aberta</translation>
    </message>
    <message>
        <source>the scale</source>
        <translation type="unfinished">a balança</translation>
    </message>
    <message>
        <source>the scale came back at zero and a load lay on the pan before: take everything off, then press the pan once with a hand</source>
        <translation type="unfinished">a balança voltou a zero e antes havia carga no prato: retire tudo e carregue uma vez no prato com a mão</translation>
    </message>
    <message>
        <source>the scale does not do that</source>
        <translation type="unfinished">a balança não faz isso</translation>
    </message>
    <message>
        <source>the scale failed its check</source>
        <translation type="unfinished">a balança falhou no controlo</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">a balança falhou no controlo: ajuste-a e controle de novo: {where}</translation>
    </message>
    <message>
        <source>the scale found no zero when it was switched on: empty the pan and switch it on again</source>
        <translation type="unfinished">a balança não achou o zero ao ligar: esvazie o prato e ligue-a de novo</translation>
    </message>
    <message>
        <source>the scale gave no answer, look at its display</source>
        <translation type="unfinished">a balança não respondeu, veja o mostrador</translation>
    </message>
    <message>
        <source>the scale has just come back: its weights count in a moment</source>
        <translation type="unfinished">a balança acaba de voltar: os pesos contam daqui a pouco</translation>
    </message>
    <message>
        <source>the scale is a recording: no bag is taken from it</source>
        <translation type="unfinished">a balança é uma gravação: não se aceita nenhum saco dela</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">a balança não responde: verifique cabo e corrente</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">a balança em {code} não envia nada há {number} s: veja se está ligada, o cabo e as definições</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">a balança em {code} não envia nada há {number} s: veja se está ligada, o cabo e as definições ({here})</translation>
    </message>
    <message>
        <source>the scale read high at some loads and low at others</source>
        <translation type="unfinished">a balança leu a mais nalgumas cargas e a menos noutras</translation>
    </message>
    <message>
        <source>the scale read high: packs may be short</source>
        <translation type="unfinished">a balança leu a mais: pode faltar produto</translation>
    </message>
    <message>
        <source>the scale read low: product was given away</source>
        <translation type="unfinished">a balança leu a menos: deu-se produto a mais</translation>
    </message>
    <message>
        <source>the scale refused to set zero: empty the pan</source>
        <translation type="unfinished">a balança recusou pôr a zero: esvazie o prato</translation>
    </message>
    <message>
        <source>the scale reports a tare error: empty the pan and clear the tare</source>
        <translation type="unfinished">a balança indica um erro de tara: esvazie o prato e apague a tara</translation>
    </message>
    <message>
        <source>the scale reports a zero error: empty the pan and set it to zero</source>
        <translation type="unfinished">a balança indica um erro de zero: esvazie o prato e ponha-a a zero</translation>
    </message>
    <message>
        <source>the scale says centre of zero and shows {mass}</source>
        <translation type="unfinished">a balança diz centro de zero e mostra {mass}</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set bits 7 and {same} for this port ({here}), or 8N1 on the scale</source>
        <translation type="unfinished">a balança envia 7 bits de dados com {parity}: ponha bits 7 e {same} nesta porta ({here}), ou 8N1 na balança</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set the same on the converter, or 8N1 on the scale</source>
        <translation type="unfinished">a balança envia 7 bits de dados com {parity}: ponha o mesmo no conversor, ou 8N1 na balança</translation>
    </message>
    <message>
        <source>the scale sent dashes instead of a weight</source>
        <translation type="unfinished">a balança enviou traços em vez de um peso</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">a balança mostra peso líquido: apague a tara dela, a estação desconta o saco</translation>
    </message>
    <message>
        <source>the scale shows less than zero: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">a balança mostra menos do que zero: veja se o prato assenta bem e nada o levanta, esvazie-o e ponha a balança a zero</translation>
    </message>
    <message>
        <source>the scale shows no weight</source>
        <translation type="unfinished">a balança não mostra nenhum peso</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">a balança está em {unit}, a série em {other}: mude a balança</translation>
    </message>
    <message>
        <source>the scale's line is not open</source>
        <translation type="unfinished">a linha da balança não está aberta</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">a leitura de uma etiqueta está atrasada: {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} did not match</source>
        <translation type="unfinished">a leitura da etiqueta {serial} não conferiu</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">a leitura da etiqueta {serial} não confere: o líder resolve em {where}</translation>
    </message>
    <message>
        <source>the settings are in {code}</source>
        <translation type="unfinished">as definições estão em {code}</translation>
    </message>
    <message>
        <source>the settings before are in station.toml.before</source>
        <translation type="unfinished">as definições de antes estão em station.toml.before</translation>
    </message>
    <message>
        <source>the settings say so</source>
        <translation type="unfinished">segundo as definições</translation>
    </message>
    <message>
        <source>the station ended before the label's fate was recorded</source>
        <translation type="unfinished">a estação parou antes de registar o destino da etiqueta</translation>
    </message>
    <message>
        <source>the station fills no cases: customers.toml is missing</source>
        <translation type="unfinished">a estação não enche caixas: falta customers.toml</translation>
    </message>
    <message>
        <source>the station has a fault ({what}): call maintenance</source>
        <translation type="unfinished">a estação tem uma avaria ({what}): chame a manutenção</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">a estação está atrasada: levante o saco e espere</translation>
    </message>
    <message>
        <source>the station stood for long</source>
        <translation type="unfinished">a estação esteve parada muito tempo</translation>
    </message>
    <message>
        <source>the station writes and checkpoints through one, so it cannot happen here</source>
        <translation type="unfinished">a estação escreve por uma só, por isso aqui não acontece</translation>
    </message>
    <message>
        <source>the store is closed</source>
        <translation type="unfinished">o registo está fechado</translation>
    </message>
    <message>
        <source>the study has {study}, more than the tare {tare} taken off: raise the tare of {bag}</source>
        <translation type="unfinished">o estudo dá {study}, mais do que a tara descontada {tare}: suba a tara de {bag}</translation>
    </message>
    <message>
        <source>the test weights come to {total} for the load {load} of {mass}: at least {percent} of it are needed</source>
        <translation type="unfinished">os pesos somam {total} para a carga {load} de {mass}: é preciso ao menos {percent}</translation>
    </message>
    <message>
        <source>the year {year} is not believed</source>
        <translation type="unfinished">não se acredita no ano {year}</translation>
    </message>
    <message>
        <source>then its number, its verification and who answers for it</source>
        <translation type="unfinished">depois o número, a verificação e quem responde por ela</translation>
    </message>
    <message>
        <source>there is no run before: nothing is to be counted</source>
        <translation type="unfinished">não há série anterior: nada a contar</translation>
    </message>
    <message>
        <source>there is nothing to report</source>
        <translation type="unfinished">não há nada a relatar</translation>
    </message>
    <message>
        <source>there is room again: {free} free</source>
        <translation type="unfinished">há espaço outra vez: {free} livres</translation>
    </message>
    <message>
        <source>these lines are in {units}</source>
        <translation type="unfinished">estas linhas estão em {units}</translation>
    </message>
    <message>
        <source>they do not all end with the same control characters</source>
        <translation type="unfinished">não acabam todas com os mesmos caracteres</translation>
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
        <source>this bag in it</source>
        <translation type="unfinished">este saco está dentro</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">este saco não foi registado nem etiquetado: {why}</translation>
    </message>
    <message>
        <source>this cannot be shelved, {what}: {answer}</source>
        <translation type="unfinished">isto não se pode adiar, {what}: {answer}</translation>
    </message>
    <message>
        <source>this hour: all {count} bags</source>
        <translation type="unfinished">esta hora: todos os {count} sacos</translation>
    </message>
    <message>
        <source>this hour: {count} of about {all} bags</source>
        <translation type="unfinished">esta hora: {count} de uns {all} sacos</translation>
    </message>
    <message>
        <source>this one is destroyed</source>
        <translation type="unfinished">esta está destruída</translation>
    </message>
    <message>
        <source>this user may not use it: add the user to the group that owns it (on most Linux systems dialout) and sign in again</source>
        <translation type="unfinished">este utilizador não a pode usar: junte-o ao grupo dono (na maioria dos Linux dialout) e entre de novo</translation>
    </message>
    <message>
        <source>this version can damage a file that two connections write at once</source>
        <translation type="unfinished">esta versão pode danificar um ficheiro escrito por duas ligações ao mesmo tempo</translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished">hora</translation>
    </message>
    <message>
        <source>time, with a lot</source>
        <translation type="unfinished">hora, com um lote</translation>
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
        <source>too warm</source>
        <translation type="unfinished">quente demais</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation type="unfinished">completado</translation>
    </message>
    <message>
        <source>torn or creased</source>
        <translation type="unfinished">rasgada ou amarrotada</translation>
    </message>
    <message>
        <source>torn up, seen by me</source>
        <translation type="unfinished">rasgada, vista por mim</translation>
    </message>
    <message>
        <source>touch an alarm first</source>
        <translation type="unfinished">toque primeiro num alarme</translation>
    </message>
    <message>
        <source>touch and key in all three counts first</source>
        <translation type="unfinished">toque e digite primeiro as três contagens</translation>
    </message>
    <message>
        <source>touch the rejects it is about first</source>
        <translation type="unfinished">toque primeiro nos rejeitados</translation>
    </message>
    <message>
        <source>touch to change</source>
        <translation type="unfinished">toque para mudar</translation>
    </message>
    <message>
        <source>touch when thrown out</source>
        <translation type="unfinished">toque se foi expulsa</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">toque primeiro em quem é</translation>
    </message>
    <message>
        <source>two lots overlap for long</source>
        <translation type="unfinished">dois lotes sobrepõem-se há muito</translation>
    </message>
    <message>
        <source>two people release: the second one is missing</source>
        <translation type="unfinished">libertam duas pessoas: falta a segunda</translation>
    </message>
    <message>
        <source>two people sign</source>
        <translation type="unfinished">assinam duas pessoas</translation>
    </message>
    <message>
        <source>typed below</source>
        <translation type="unfinished">escrito em baixo</translation>
    </message>
    <message>
        <source>under capacity</source>
        <translation type="unfinished">abaixo da capacidade</translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished">unidade</translation>
    </message>
    <message>
        <source>unit {shown} is not in the description</source>
        <translation type="unfinished">a unidade {shown} não está descrita</translation>
    </message>
    <message>
        <source>unknown command</source>
        <translation type="unfinished">comando desconhecido</translation>
    </message>
    <message>
        <source>until, such as 09:40</source>
        <translation type="unfinished">até, como 09:40</translation>
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
        <translation type="unfinished">consumir até</translation>
    </message>
    <message>
        <source>use by {day}</source>
        <translation type="unfinished">consumir até {day}</translation>
    </message>
    <message>
        <source>used to set the printer up</source>
        <translation type="unfinished">usadas para acertar a impressora</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation type="unfinished">vácuo</translation>
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
        <translation type="unfinished">valor {shown}: não é número como descrito</translation>
    </message>
    <message>
        <source>verified {code}</source>
        <translation type="unfinished">verificada {code}</translation>
    </message>
    <message>
        <source>verified {day}: give a day from {first} to today, {today}</source>
        <translation type="unfinished">verificada {day}: um dia de {first} até hoje, {today}</translation>
    </message>
    <message>
        <source>verified {shown}: give the day as in {day}</source>
        <translation type="unfinished">verificada {shown}: indique o dia como {day}</translation>
    </message>
    <message>
        <source>verified, as in 2026-03-31</source>
        <translation type="unfinished">verificada, como 2026-03-31</translation>
    </message>
    <message>
        <source>version</source>
        <translation type="unfinished">versão</translation>
    </message>
    <message>
        <source>voided</source>
        <translation type="unfinished">anulada</translation>
    </message>
    <message>
        <source>wait until the scale shows a steady weight</source>
        <translation type="unfinished">espere até a balança mostrar um peso estável</translation>
    </message>
    <message>
        <source>wait until the scale stands still: it is never set to zero in motion</source>
        <translation type="unfinished">espere que a balança pare: nunca se põe a zero em movimento</translation>
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
        <source>was wrong, is set right</source>
        <translation type="unfinished">estava errada, foi acertada</translation>
    </message>
    <message>
        <source>wash record</source>
        <translation type="unfinished">registo de lavagem</translation>
    </message>
    <message>
        <source>washed where allergens change</source>
        <translation type="unfinished">lavado onde mudam alergénios</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished">deitado fora</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">pese um saco vazio até {count} sacos</translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation type="unfinished">pese-o</translation>
    </message>
    <message>
        <source>weigh the rest</source>
        <translation type="unfinished">pese o resto</translation>
    </message>
    <message>
        <source>weighed again</source>
        <translation type="unfinished">pesados de novo</translation>
    </message>
    <message>
        <source>weighed again, good</source>
        <translation type="unfinished">pesado de novo, bem</translation>
    </message>
    <message>
        <source>weighed now</source>
        <translation type="unfinished">pesado agora</translation>
    </message>
    <message>
        <source>weight is {shown}, not a number of the standard's form</source>
        <translation type="unfinished">peso {shown}: não é número da norma</translation>
    </message>
    <message>
        <source>weight not displayed</source>
        <translation type="unfinished">peso não mostrado</translation>
    </message>
    <message>
        <source>weighted average {mean}</source>
        <translation type="unfinished">média ponderada {mean}</translation>
    </message>
    <message>
        <source>weights arrive and are used</source>
        <translation type="unfinished">os pesos chegam e são usados</translation>
    </message>
    <message>
        <source>weights come {number} s apart, and one counts for {most} s: set the scale, or the converter on its line, to send more often and at once</source>
        <translation type="unfinished">os pesos chegam de {number} em {number} s e um conta {most} s: regule a balança, ou o conversor da sua linha, para enviar mais vezes e logo</translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished">o quê</translation>
    </message>
    <message>
        <source>what is open</source>
        <translation type="unfinished">o que está aberto</translation>
    </message>
    <message>
        <source>what the station sends comes back in front of the answers: switch the echo of the converter or of the scale off</source>
        <translation type="unfinished">o que a estação envia volta à frente das respostas: desligue o eco do conversor ou da balança</translation>
    </message>
    <message>
        <source>which label?</source>
        <translation type="unfinished">que etiqueta?</translation>
    </message>
    <message>
        <source>which {what}? Scan or type it first</source>
        <translation type="unfinished">que {what}? Leia ou escreva primeiro</translation>
    </message>
    <message>
        <source>who decides? Choose a name first</source>
        <translation type="unfinished">quem decide? Escolha primeiro um nome</translation>
    </message>
    <message>
        <source>who says so? Touch WHO and choose your name</source>
        <translation type="unfinished">quem o diz? Toque em QUEM e escolha o nome</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">todo</translation>
    </message>
    <message>
        <source>whole error</source>
        <translation type="unfinished">todo o erro</translation>
    </message>
    <message>
        <source>whole run: all {count} bags</source>
        <translation type="unfinished">toda a série: todos os {count} sacos</translation>
    </message>
    <message>
        <source>whole run: {count} of about {all} bags</source>
        <translation type="unfinished">toda a série: {count} de uns {all} sacos</translation>
    </message>
    <message>
        <source>whom does it go to? Choose a customer</source>
        <translation type="unfinished">para quem é? Escolha um cliente</translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished">porquê</translation>
    </message>
    <message>
        <source>why it differs: scan or type</source>
        <translation type="unfinished">porque difere: leia ou escreva</translation>
    </message>
    <message>
        <source>why it may go, or must be dumped</source>
        <translation type="unfinished">porque pode sair, ou deitar-se fora</translation>
    </message>
    <message>
        <source>why: scan or type the reason</source>
        <translation type="unfinished">porquê: leia ou escreva</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation type="unfinished">limpar</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">limpe o prato e ponha a zero</translation>
    </message>
    <message>
        <source>with a witness</source>
        <translation type="unfinished">com testemunha</translation>
    </message>
    <message>
        <source>with {customer}</source>
        <translation type="unfinished">com {customer}</translation>
    </message>
    <message>
        <source>within both bounds</source>
        <translation type="unfinished">dentro de ambos os limites</translation>
    </message>
    <message>
        <source>without it</source>
        <translation type="unfinished">sem ela</translation>
    </message>
    <message>
        <source>witness {who}</source>
        <translation type="unfinished">testemunha {who}</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">trabalhar neste ecrã</translation>
    </message>
    <message>
        <source>wrong date</source>
        <translation type="unfinished">data errada</translation>
    </message>
    <message>
        <source>wrong label</source>
        <translation type="unfinished">etiqueta errada</translation>
    </message>
    <message>
        <source>wrong lots</source>
        <translation type="unfinished">lotes errados</translation>
    </message>
    <message>
        <source>wrong roll taken out</source>
        <translation type="unfinished">rolo errado retirado</translation>
    </message>
    <message>
        <source>wrong text</source>
        <translation type="unfinished">texto errado</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">peso errado</translation>
    </message>
    <message>
        <source>you approve</source>
        <translation type="unfinished">aprova</translation>
    </message>
    <message>
        <source>zero error</source>
        <translation type="unfinished">erro de zero</translation>
    </message>
    <message>
        <source>{begin_code} to {end_code}</source>
        <translation type="unfinished">{begin_code} a {end_code}</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: FAILS</source>
        <translation type="unfinished">{case}: média {mean}, {count} abaixo de T1: FALHA</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: passes</source>
        <translation type="unfinished">{case}: média {mean}, {count} abaixo de T1: passa</translation>
    </message>
    <message>
        <source>{code} is at {number}</source>
        <translation type="unfinished">{code} está em {number}</translation>
    </message>
    <message>
        <source>{code} is not known: receive it first</source>
        <translation type="unfinished">{code} desconhecido: receba-o primeiro</translation>
    </message>
    <message>
        <source>{code} {count} of {whole}</source>
        <translation type="unfinished">{code} {count} de {whole}</translation>
    </message>
    <message>
        <source>{count} BAGS HELD OR OUT</source>
        <translation type="unfinished">{count} SACOS RETIDOS OU FORA</translation>
    </message>
    <message>
        <source>{count} bag is {what}.</source>
        <translation type="unfinished">{count} saco {what}.</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} sacos</translation>
    </message>
    <message>
        <source>{count} bags an hour</source>
        <translation type="unfinished">{count} sacos por hora</translation>
    </message>
    <message>
        <source>{count} bags are dumped: they lie in the reject bin. Release the empty hold.</source>
        <translation type="unfinished">{count} sacos deitados fora: estão no cesto. Liberte a retenção vazia.</translation>
    </message>
    <message>
        <source>{count} bags are held</source>
        <translation type="unfinished">{count} sacos retidos</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} sacos retidos após um controlo falhado: a QA decide: {where}</translation>
    </message>
    <message>
        <source>{count} bags are in the bin, {expected} by the record: say why they differ</source>
        <translation type="unfinished">{count} sacos no cesto, {expected} pelo registo: diga porque diferem</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} sacos embalados: o líder fecha a série</translation>
    </message>
    <message>
        <source>{count} bags are released.</source>
        <translation type="unfinished">{count} sacos libertados.</translation>
    </message>
    <message>
        <source>{count} bags are {what}.</source>
        <translation type="unfinished">{count} sacos: {what}.</translation>
    </message>
    <message>
        <source>{count} bags from {begin} to {end} are held: {why}.</source>
        <translation type="unfinished">{count} sacos de {begin} a {end} retidos: {why}.</translation>
    </message>
    <message>
        <source>{count} bags held or out</source>
        <translation type="unfinished">{count} sacos retidos ou fora</translation>
    </message>
    <message>
        <source>{count} bags held, packed after {begin} until {end}</source>
        <translation type="unfinished">{count} sacos retidos, embalados de {begin} a {end}</translation>
    </message>
    <message>
        <source>{count} bags in the batch; {plan}</source>
        <translation type="unfinished">{count} sacos no lote; {plan}</translation>
    </message>
    <message>
        <source>{count} bags lie in the bin by the record</source>
        <translation type="unfinished">{count} sacos no cesto pelo registo</translation>
    </message>
    <message>
        <source>{count} bags of one run</source>
        <translation type="unfinished">{count} sacos de uma série</translation>
    </message>
    <message>
        <source>{count} bags weigh less than {mass} in the mean</source>
        <translation type="unfinished">{count} sacos pesam em média menos de {mass}</translation>
    </message>
    <message>
        <source>{count} bags {more} than recorded: count again, or say why</source>
        <translation type="unfinished">{count} sacos {more} que os registados: conte outra vez, ou diga porquê</translation>
    </message>
    <message>
        <source>{count} case</source>
        <translation type="unfinished">{count} caixa</translation>
    </message>
    <message>
        <source>{count} cases</source>
        <translation type="unfinished">{count} caixas</translation>
    </message>
    <message>
        <source>{count} cases and pallets stand here</source>
        <translation type="unfinished">{count} caixas e paletes aqui</translation>
    </message>
    <message>
        <source>{count} characters, allowed are {least} to {most}</source>
        <translation type="unfinished">{count} caracteres, permitidos {least} a {most}</translation>
    </message>
    <message>
        <source>{count} characters, at most {most}</source>
        <translation type="unfinished">{count} caracteres, no máximo {most}</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation type="unfinished">{count} dias</translation>
    </message>
    <message>
        <source>{count} days ago</source>
        <translation type="unfinished">há {count} dias</translation>
    </message>
    <message>
        <source>{count} fills are too few for a proposal: weigh {least} or more</source>
        <translation type="unfinished">{count} enchimentos são poucos para propor: pese {least} ou mais</translation>
    </message>
    <message>
        <source>{count} held or set aside</source>
        <translation type="unfinished">{count} retidos ou separados</translation>
    </message>
    <message>
        <source>{count} issued, {used} used so far</source>
        <translation type="unfinished">{count} saídas, {used} usadas até agora</translation>
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
        <translation type="unfinished">{count} etiquetas em dúvida</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} etiquetas em dúvida, primeira {serial}: responda em {where}</translation>
    </message>
    <message>
        <source>{count} labels to answer for: look at each bag</source>
        <translation type="unfinished">{count} etiquetas por responder: veja cada saco</translation>
    </message>
    <message>
        <source>{count} lines are weights, {number} are not: look at each of them</source>
        <translation type="unfinished">{count} linhas são pesos, {number} não: veja cada uma</translation>
    </message>
    <message>
        <source>{count} minutes</source>
        <translation type="unfinished">{count} minutos</translation>
    </message>
    <message>
        <source>{count} more windows wait.</source>
        <translation type="unfinished">Esperam mais {count} janelas.</translation>
    </message>
    <message>
        <source>{count} of its bags are held</source>
        <translation type="unfinished">{count} dos seus sacos retidos</translation>
    </message>
    <message>
        <source>{count} of {draws} rehearsed samples of the stored bags pass (failed: mean {mean}, T1 {t1}, T2 {t2})</source>
        <translation type="unfinished">{count} de {draws} amostras ensaiadas passam (falham: média {mean}, T1 {t1}, T2 {t2})</translation>
    </message>
    <message>
        <source>{count} packs are weighed already, more than the {lot} expected</source>
        <translation type="unfinished">já se pesaram {count} sacos, mais do que os {lot} esperados</translation>
    </message>
    <message>
        <source>{count} rejects are undecided</source>
        <translation type="unfinished">{count} rejeitados por decidir</translation>
    </message>
    <message>
        <source>{count} rejects of {day} wait for a decision</source>
        <translation type="unfinished">{count} rejeitados de {day} esperam decisão</translation>
    </message>
    <message>
        <source>{count} runs were purged on {day}, export {folder}</source>
        <translation type="unfinished">{count} séries apagadas em {day}, exportação {folder}</translation>
    </message>
    <message>
        <source>{count} runs were purged, the last on {day}, export {folder}</source>
        <translation type="unfinished">{count} séries apagadas, a última em {day}, exportação {folder}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} separados</translation>
    </message>
    <message>
        <source>{count} stops</source>
        <translation type="unfinished">{count} paragens</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} sacos suspeitos retidos: decide a QA ou o líder: {where}</translation>
    </message>
    <message>
        <source>{count} things are open</source>
        <translation type="unfinished">{count} coisas em aberto</translation>
    </message>
    <message>
        <source>{count} things are open, first: {what}. Settle them, or write why the day is signed all the same</source>
        <translation type="unfinished">{count} coisas em aberto, a primeira: {what}. Resolva-as, ou escreva porque se assina o dia na mesma</translation>
    </message>
    <message>
        <source>{count} things happened on {day}</source>
        <translation type="unfinished">{count} coisas aconteceram em {day}</translation>
    </message>
    <message>
        <source>{count} things open, not signed</source>
        <translation type="unfinished">{count} coisas em aberto, por assinar</translation>
    </message>
    <message>
        <source>{count} unit</source>
        <translation type="unfinished">{count} unidade</translation>
    </message>
    <message>
        <source>{count} units</source>
        <translation type="unfinished">{count} unidades</translation>
    </message>
    <message>
        <source>{count} with customers</source>
        <translation type="unfinished">{count} com clientes</translation>
    </message>
    <message>
        <source>{count} {code} free</source>
        <translation type="unfinished">{count} {code} livres</translation>
    </message>
    <message>
        <source>{day} is not reviewed and signed</source>
        <translation type="unfinished">o {day} não está revisto nem assinado</translation>
    </message>
    <message>
        <source>{day} is reviewed and signed.</source>
        <translation type="unfinished">{day} revisto e assinado.</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects, {filter}; {open} open</source>
        <translation type="unfinished">{day}: {shown} de {all} rejeitados, {filter}; {open} em aberto</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects; {open} open</source>
        <translation type="unfinished">{day}: {shown} de {all} rejeitados; {open} em aberto</translation>
    </message>
    <message>
        <source>{digits} is no day: give day and month, like 2411 for 24 November</source>
        <translation type="unfinished">{digits} não é um dia: dê dia e mês, como 2411 para 24 de novembro</translation>
    </message>
    <message>
        <source>{error}, beyond {limit}</source>
        <translation type="unfinished">{error}, além de {limit}</translation>
    </message>
    <message>
        <source>{error}, may be {limit}</source>
        <translation type="unfinished">{error}, permitido {limit}</translation>
    </message>
    <message>
        <source>{field} is read as {shown}, not {due}</source>
        <translation type="unfinished">{field} lê-se {shown}, não {due}</translation>
    </message>
    <message>
        <source>{field} is {shown}, allowed is {allowed}</source>
        <translation type="unfinished">{field} é {shown}, admite-se {allowed}</translation>
    </message>
    <message>
        <source>{first} and {count} more</source>
        <translation type="unfinished">{first} e mais {count}</translation>
    </message>
    <message>
        <source>{first}, and {count} more</source>
        <translation type="unfinished">{first}, e mais {count}</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} sacos, no máximo {most} abaixo de T1 ({clause})</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, then {second} more, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind}: {count} sacos, depois mais {second}, no máximo {most} abaixo de T1 ({clause})</translation>
    </message>
    <message>
        <source>{last} comes before {first}: give the first serial first</source>
        <translation type="unfinished">{last} vem antes de {first}: dê primeiro o primeiro número</translation>
    </message>
    <message>
        <source>{mass} DOES NOT FIT ({against})</source>
        <translation type="unfinished">{mass} NÃO CONFERE ({against})</translation>
    </message>
    <message>
        <source>{mass} FITS ({against})</source>
        <translation type="unfinished">{mass} CONFERE ({against})</translation>
    </message>
    <message>
        <source>{mass} a bag</source>
        <translation type="unfinished">{mass} por saco</translation>
    </message>
    <message>
        <source>{mass} g a bag</source>
        <translation type="unfinished">{mass} g por saco</translation>
    </message>
    <message>
        <source>{mass} is below what the scale weighs: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">{mass} está abaixo do que a balança pesa: veja se o prato assenta bem e nada o levanta, esvazie-o e ponha a balança a zero</translation>
    </message>
    <message>
        <source>{mass} is in high resolution, which is not the indication</source>
        <translation type="unfinished">{mass} está em alta resolução, que não é a indicação</translation>
    </message>
    <message>
        <source>{mass} is more than the scale weighs, {most}</source>
        <translation type="unfinished">{mass} é mais do que a balança pesa, {most}</translation>
    </message>
    <message>
        <source>{mass} is not a multiple of {interval}</source>
        <translation type="unfinished">{mass} não é múltiplo de {interval}</translation>
    </message>
    <message>
        <source>{mass} is the tare, not the load</source>
        <translation type="unfinished">{mass} é a tara, não a carga</translation>
    </message>
    <message>
        <source>{mass} now</source>
        <translation type="unfinished">{mass} agora</translation>
    </message>
    <message>
        <source>{mass} proposed</source>
        <translation type="unfinished">{mass} proposto</translation>
    </message>
    <message>
        <source>{mass} this run</source>
        <translation type="unfinished">{mass} nesta série</translation>
    </message>
    <message>
        <source>{mass} this run, {money} in money</source>
        <translation type="unfinished">{mass} nesta série, {money} em dinheiro</translation>
    </message>
    <message>
        <source>{mass}: {count} bags, {percent} %</source>
        <translation type="unfinished">{mass}: {count} sacos, {percent} %</translation>
    </message>
    <message>
        <source>{mean} OUTSIDE {least} to {most}</source>
        <translation type="unfinished">{mean} FORA de {least} a {most}</translation>
    </message>
    <message>
        <source>{mean} within {least} to {most}</source>
        <translation type="unfinished">{mean} dentro de {least} a {most}</translation>
    </message>
    <message>
        <source>{name} not installed</source>
        <translation type="unfinished">{name} não instalado</translation>
    </message>
    <message>
        <source>{name} serial {code}</source>
        <translation type="unfinished">{name} n.º {code}</translation>
    </message>
    <message>
        <source>{name} stands for {first} and for {second}: look at the case and keep one</source>
        <translation type="unfinished">{name} é {first} e também {second}: veja a caixa e fique com um</translation>
    </message>
    <message>
        <source>{name} waits: a bag is on the pan</source>
        <translation type="unfinished">{name} espera: há um saco no prato</translation>
    </message>
    <message>
        <source>{name} would change what the bags of the open run weigh: end the run</source>
        <translation type="unfinished">{name} mudaria o peso dos sacos da série aberta: feche a série</translation>
    </message>
    <message>
        <source>{name}: mean {mean}, spread {spread}</source>
        <translation type="unfinished">{name}: média {mean}, dispersão {spread}</translation>
    </message>
    <message>
        <source>{name}: {code} from {who}</source>
        <translation type="unfinished">{name}: {code} de {who}</translation>
    </message>
    <message>
        <source>{number} % full</source>
        <translation type="unfinished">{number} % cheio</translation>
    </message>
    <message>
        <source>{number} % of nominal</source>
        <translation type="unfinished">{number} % do nominal</translation>
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
        <translation type="unfinished">{number} de dezembro de {count}</translation>
    </message>
    <message>
        <source>{number} February {count}</source>
        <translation type="unfinished">{number} de fevereiro de {count}</translation>
    </message>
    <message>
        <source>{number} January {count}</source>
        <translation type="unfinished">{number} de janeiro de {count}</translation>
    </message>
    <message>
        <source>{number} July {count}</source>
        <translation type="unfinished">{number} de julho de {count}</translation>
    </message>
    <message>
        <source>{number} June {count}</source>
        <translation type="unfinished">{number} de junho de {count}</translation>
    </message>
    <message>
        <source>{number} March {count}</source>
        <translation type="unfinished">{number} de março de {count}</translation>
    </message>
    <message>
        <source>{number} May {count}</source>
        <translation type="unfinished">{number} de maio de {count}</translation>
    </message>
    <message>
        <source>{number} November {count}</source>
        <translation type="unfinished">{number} de novembro de {count}</translation>
    </message>
    <message>
        <source>{number} October {count}</source>
        <translation type="unfinished">{number} de outubro de {count}</translation>
    </message>
    <message>
        <source>{number} September {count}</source>
        <translation type="unfinished">{number} de setembro de {count}</translation>
    </message>
    <message>
        <source>{number} bags</source>
        <translation type="unfinished">{number} sacos</translation>
    </message>
    <message>
        <source>{number} failed</source>
        <translation type="unfinished">{number} falhou</translation>
    </message>
    <message>
        <source>{number} held</source>
        <translation type="unfinished">retido desde {number}</translation>
    </message>
    <message>
        <source>{number} in money</source>
        <translation type="unfinished">{number} em dinheiro</translation>
    </message>
    <message>
        <source>{number} missing</source>
        <translation type="unfinished">faltam {number}</translation>
    </message>
    <message>
        <source>{number} of {whole}</source>
        <translation type="unfinished">{number} de {whole}</translation>
    </message>
    <message>
        <source>{number} of {whole} allowed</source>
        <translation type="unfinished">{number} de {whole} permitidos</translation>
    </message>
    <message>
        <source>{number} of {whole} bags</source>
        <translation type="unfinished">{number} de {whole} sacos</translation>
    </message>
    <message>
        <source>{number} of {whole}: {what}</source>
        <translation type="unfinished">{number} de {whole}: {what}</translation>
    </message>
    <message>
        <source>{number} to {count} days</source>
        <translation type="unfinished">{number} a {count} dias</translation>
    </message>
    <message>
        <source>{number} to {whole} {unit}</source>
        <translation type="unfinished">{number} a {whole} {unit}</translation>
    </message>
    <message>
        <source>{number} too many</source>
        <translation type="unfinished">sobram {number}</translation>
    </message>
    <message>
        <source>{picked} picked, {count} weighed</source>
        <translation type="unfinished">{picked} escolhidos, {count} pesados</translation>
    </message>
    <message>
        <source>{product}, version {version}</source>
        <translation type="unfinished">{product}, versão {version}</translation>
    </message>
    <message>
        <source>{product}, weighed {time}</source>
        <translation type="unfinished">{product}, pesado às {time}</translation>
    </message>
    <message>
        <source>{product}: {mass} kg net</source>
        <translation type="unfinished">{product}: {mass} kg líquidos</translation>
    </message>
    <message>
        <source>{result} by {code}</source>
        <translation type="unfinished">{result} por {code}</translation>
    </message>
    <message>
        <source>{seconds} s: {frames} weights, {garbage} not understood ({percent} %, 5 % are allowed), {bytes} bytes</source>
        <translation type="unfinished">{seconds} s: {frames} pesos, {garbage} não entendidos ({percent} %, permitido 5 %), {bytes} bytes</translation>
    </message>
    <message>
        <source>{serial} must say</source>
        <translation type="unfinished">{serial} deve dizer</translation>
    </message>
    <message>
        <source>{serial}: as recorded</source>
        <translation type="unfinished">{serial}: como está registada</translation>
    </message>
    <message>
        <source>{sscc} had its use-by date on {day}: it must not leave</source>
        <translation type="unfinished">{sscc}: a data-limite foi {day}; não pode sair</translation>
    </message>
    <message>
        <source>{sscc} is a pallet: a pallet holds cases</source>
        <translation type="unfinished">{sscc} é uma palete: uma palete leva caixas</translation>
    </message>
    <message>
        <source>{sscc} is gone with {shipment}</source>
        <translation type="unfinished">{sscc} saiu com {shipment}</translation>
    </message>
    <message>
        <source>{sscc} is on pallet {pallet}</source>
        <translation type="unfinished">{sscc} está na palete {pallet}</translation>
    </message>
    <message>
        <source>{sscc} is undone</source>
        <translation type="unfinished">{sscc} está desfeito</translation>
    </message>
    <message>
        <source>{sscc} is undone.</source>
        <translation type="unfinished">{sscc} desfeito.</translation>
    </message>
    <message>
        <source>{text} is no figure: key in digits, such as 3.4</source>
        <translation type="unfinished">{text} não é um valor: digite como 3.4</translation>
    </message>
    <message>
        <source>{text} is no serial of a bag, such as A1-7K-000042</source>
        <translation type="unfinished">{text} não é número de saco, como A1-7K-000042</translation>
    </message>
    <message>
        <source>{text} is no time: write {form}</source>
        <translation type="unfinished">{text} não é uma hora: escreva {form}</translation>
    </message>
    <message>
        <source>{time}: {mass}; mean so far {mean}</source>
        <translation type="unfinished">{time}: {mass}; média até agora {mean}</translation>
    </message>
    <message>
        <source>{value} cannot be: allowed is {low} to {high}</source>
        <translation type="unfinished">{value} não pode ser: permitido {low} a {high}</translation>
    </message>
    <message>
        <source>{what} by {code}: {why}</source>
        <translation type="unfinished">{what} por {code}: {why}</translation>
    </message>
    <message>
        <source>{what} cannot be released: {why}</source>
        <translation type="unfinished">{what} não se pode libertar: {why}</translation>
    </message>
    <message>
        <source>{what} failed its check</source>
        <translation type="unfinished">{what}: falhou no controlo</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} falhou no controlo: corrija e controle de novo: {where}</translation>
    </message>
    <message>
        <source>{what} failed its last check</source>
        <translation type="unfinished">{what}: falhou no último controlo</translation>
    </message>
    <message>
        <source>{what} failed: write what is done about it before it is recorded</source>
        <translation type="unfinished">{what} falhou: escreva o que se faz antes de registar</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} em {minutes} min</translation>
    </message>
    <message>
        <source>{what} is on record.</source>
        <translation type="unfinished">{what} registado.</translation>
    </message>
    <message>
        <source>{what} keeps no bag any more: release the hold</source>
        <translation type="unfinished">{what} já não retém sacos: liberte a retenção</translation>
    </message>
    <message>
        <source>{what} lost on {code}</source>
        <translation type="unfinished">{what}: sem ligação em {code}</translation>
    </message>
    <message>
        <source>{what} needs {thing}</source>
        <translation type="unfinished">{what} precisa de {thing}</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} agora</translation>
    </message>
    <message>
        <source>{what} was released already</source>
        <translation type="unfinished">{what} já foi libertado</translation>
    </message>
    <message>
        <source>{what} was scanned already</source>
        <translation type="unfinished">{what} já foi lido</translation>
    </message>
    <message>
        <source>{what} was {usual}, now {seen}: is this still the same product?</source>
        <translation type="unfinished">{what} era {usual}, agora {seen}: é ainda o mesmo produto?</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what}: veja data e hora e assine em {where}</translation>
    </message>
    <message>
        <source>{what}: no checks in the settings</source>
        <translation type="unfinished">{what}: sem controlos nas definições</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} não pode assinar isto</translation>
    </message>
    <message>
        <source>{who} cannot witness a decision of {other}: choose another person</source>
        <translation type="unfinished">{who} não pode testemunhar uma decisão de {other}: escolha outra pessoa</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} não assinou: para {act} é preciso PIN ou cartão</translation>
    </message>
    <message>
        <source>{who} does not lead: the lead signs first</source>
        <translation type="unfinished">{who} não é líder: o líder assina primeiro</translation>
    </message>
    <message>
        <source>{who} has no PIN: the manager sets one, station people pin {id}</source>
        <translation type="unfinished">{who} não tem PIN: o gestor define um, station people pin {id}</translation>
    </message>
    <message>
        <source>{who} is nobody in people.toml</source>
        <translation type="unfinished">{who} não está em people.toml</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} não pode assinar aqui</translation>
    </message>
    <message>
        <source>{who} signs first: another person signs second</source>
        <translation type="unfinished">{who} assina primeiro: outra pessoa assina depois</translation>
    </message>
    <message>
        <source>{why}, after a page was out</source>
        <translation type="unfinished">{why}, depois de sair uma página</translation>
    </message>
    <message>
        <source>{why}, after printing may have begun</source>
        <translation type="unfinished">{why}, quando a impressão talvez já tivesse começado</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why}: duas pessoas aprovam a etiqueta em {where}</translation>
    </message>
</context>
</TS>
