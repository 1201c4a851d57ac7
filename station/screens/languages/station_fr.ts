<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>% of nominal</source>
        <translation type="unfinished">% du nominal</translation>
    </message>
    <message>
        <source>% of the lot in bags</source>
        <translation type="unfinished">% du lot en sacs</translation>
    </message>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 PRODUIT</translation>
    </message>
    <message>
        <source>1 bag</source>
        <translation type="unfinished">1 sac</translation>
    </message>
    <message>
        <source>1 run was purged on {day}, export {folder}</source>
        <translation type="unfinished">1 série supprimée le {day}, export {folder}</translation>
    </message>
    <message>
        <source>100 % together</source>
        <translation type="unfinished">100 % au total</translation>
    </message>
    <message>
        <source>2 LOTS</source>
        <translation type="unfinished">2 LOTS</translation>
    </message>
    <message>
        <source>3 CREW</source>
        <translation type="unfinished">3 ÉQUIPE</translation>
    </message>
    <message>
        <source>A code was scanned, but no field waits for one: open the page it is for</source>
        <translation type="unfinished">Un code a été lu, mais aucun champ ne l'attend : ouvrez sa page</translation>
    </message>
    <message>
        <source>A copy of {sscc} comes.</source>
        <translation type="unfinished">Une copie de {sscc} sort.</translation>
    </message>
    <message>
        <source>A manager approves a proposal as a new version of the product.</source>
        <translation type="unfinished">Un responsable approuve la proposition comme nouvelle version du produit.</translation>
    </message>
    <message>
        <source>A new scale: connect it, touch LOOK, then check it with the test weights.</source>
        <translation type="unfinished">Une nouvelle balance : branchez-la, touchez REGARDER, puis contrôlez-la avec les poids.</translation>
    </message>
    <message>
        <source>A scale that is to be asked needs its request above.</source>
        <translation type="unfinished">Une balance à interroger a besoin de sa demande ci-dessus.</translation>
    </message>
    <message>
        <source>ADD</source>
        <translation type="unfinished">AJOUTEZ</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">ALARMES</translation>
    </message>
    <message>
        <source>ALL</source>
        <translation type="unfinished">TOUS</translation>
    </message>
    <message>
        <source>ALL DAYS</source>
        <translation type="unfinished">TOUS LES JOURS</translation>
    </message>
    <message>
        <source>ALL WEIGHED</source>
        <translation type="unfinished">TOUS PESÉS</translation>
    </message>
    <message>
        <source>APPLIED</source>
        <translation type="unfinished">COLLÉE</translation>
    </message>
    <message>
        <source>APPROVE</source>
        <translation type="unfinished">APPROUVER</translation>
    </message>
    <message>
        <source>ASKED</source>
        <translation type="unfinished">DEMANDÉ</translation>
    </message>
    <message>
        <source>AT REST</source>
        <translation type="unfinished">AU REPOS</translation>
    </message>
    <message>
        <source>ATTEND</source>
        <translation type="unfinished">À VOIR</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation type="unfinished">Addition …</translation>
    </message>
    <message>
        <source>An open run keeps the dates it was opened with.</source>
        <translation type="unfinished">Une série ouverte garde ses dates d'ouverture.</translation>
    </message>
    <message>
        <source>Arrived at</source>
        <translation type="unfinished">Arrivé à</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation type="unfinished">RETOUR</translation>
    </message>
    <message>
        <source>BAG AGAIN</source>
        <translation type="unfinished">REFAIRE SAC</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">POSEZ SAC</translation>
    </message>
    <message>
        <source>BAGS</source>
        <translation type="unfinished">SACS</translation>
    </message>
    <message>
        <source>BEFORE</source>
        <translation type="unfinished">AVANT</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">BAC</translation>
    </message>
    <message>
        <source>BLEND LOT</source>
        <translation type="unfinished">LOT DE MÉLANGE</translation>
    </message>
    <message>
        <source>BLENDS</source>
        <translation type="unfinished">MÉLANGES</translation>
    </message>
    <message>
        <source>BLOCKED {count}</source>
        <translation type="unfinished">ARRÊTÉ {count}</translation>
    </message>
    <message>
        <source>BY DAY</source>
        <translation type="unfinished">PAR JOUR</translation>
    </message>
    <message>
        <source>BY HOUR</source>
        <translation type="unfinished">PAR HEURE</translation>
    </message>
    <message>
        <source>BY POSITION</source>
        <translation type="unfinished">PAR POSTE</translation>
    </message>
    <message>
        <source>BY PRODUCT</source>
        <translation type="unfinished">PAR PRODUIT</translation>
    </message>
    <message>
        <source>Bag {serial} and {count} around it</source>
        <translation type="unfinished">Sac {serial} et {count} autour</translation>
    </message>
    <message>
        <source>Bag {serial} was not set aside: LOOK UP shows it.</source>
        <translation type="unfinished">Le sac {serial} n'a pas été écarté : CHERCHER le montre.</translation>
    </message>
    <message>
        <source>Bags since the last good check of the scale before are covered by no check of it any more: QA decides about them.</source>
        <translation type="unfinished">Les sacs depuis le dernier bon contrôle de la balance d'avant ne sont plus couverts : la qualité décide.</translation>
    </message>
    <message>
        <source>Below T1</source>
        <translation type="unfinished">Sous T1</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">À consommer de préférence avant le</translation>
    </message>
    <message>
        <source>Best before {day}</source>
        <translation type="unfinished">De préférence avant le {day}</translation>
    </message>
    <message>
        <source>By {what}</source>
        <translation type="unfinished">Par {what}</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">APPELEZ CHEF</translation>
    </message>
    <message>
        <source>CAME BACK</source>
        <translation type="unfinished">REVENU</translation>
    </message>
    <message>
        <source>CASE</source>
        <translation type="unfinished">CAISSE</translation>
    </message>
    <message>
        <source>CASES</source>
        <translation type="unfinished">CAISSES</translation>
    </message>
    <message>
        <source>CHANGE</source>
        <translation type="unfinished">CHANGEMENT</translation>
    </message>
    <message>
        <source>CHANGE, CLOCK</source>
        <translation type="unfinished">CHANGEMENT, HORLOGE</translation>
    </message>
    <message>
        <source>CHECK</source>
        <translation type="unfinished">CONTRÔLE</translation>
    </message>
    <message>
        <source>CHECK IT</source>
        <translation type="unfinished">LA CONTRÔLER</translation>
    </message>
    <message>
        <source>CHECK THE SCALE</source>
        <translation type="unfinished">CONTRÔLEZ LA BALANCE</translation>
    </message>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished">CONTRÔLES</translation>
    </message>
    <message>
        <source>CHECKS (F4) settles it.</source>
        <translation type="unfinished">CONTRÔLES (F4) le règle.</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">EFFACER</translation>
    </message>
    <message>
        <source>CLEAR LINE</source>
        <translation type="unfinished">LIGNE VIDE</translation>
    </message>
    <message>
        <source>CLEAR TARE</source>
        <translation type="unfinished">EFFACER TARE</translation>
    </message>
    <message>
        <source>CLOCK</source>
        <translation type="unfinished">HORLOGE</translation>
    </message>
    <message>
        <source>CLOSE PALLET</source>
        <translation type="unfinished">FERMER PALETTE</translation>
    </message>
    <message>
        <source>COOLER TEMPERATURE</source>
        <translation type="unfinished">TEMPÉRATURE CHAMBRE FROIDE</translation>
    </message>
    <message>
        <source>COUNT</source>
        <translation type="unfinished">COMPTER</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">COMPTÉ</translation>
    </message>
    <message>
        <source>CUSTOMERS</source>
        <translation type="unfinished">CLIENTS</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">COUPÉ LE</translation>
    </message>
    <message>
        <source>Came</source>
        <translation type="unfinished">Reçu</translation>
    </message>
    <message>
        <source>Case {sscc} is filled; its label comes.</source>
        <translation type="unfinished">Caisse {sscc} pleine ; son étiquette sort.</translation>
    </message>
    <message>
        <source>Checked {stage}. Bags wait meanwhile.</source>
        <translation type="unfinished">Contrôle : {stage}. Les sacs attendent.</translation>
    </message>
    <message>
        <source>Choose cells, then say what they are: VALUE and, where they are there, UNIT, FLAG, CHECK. Type the digits of the scale's display, its unit, and what else is true now.</source>
        <translation type="unfinished">Choisissez des cases, puis dites ce qu'elles sont : VALEUR et, s'ils y sont, UNITÉ, DRAPEAU, CONTRÔLE. Tapez les chiffres affichés, l'unité, et ce qui vaut maintenant.</translation>
    </message>
    <message>
        <source>Choose the cells first: touch them, or use the arrow keys.</source>
        <translation type="unfinished">Choisissez d'abord les cases : touchez-les, ou prenez les flèches.</translation>
    </message>
    <message>
        <source>Commands of level 2</source>
        <translation type="unfinished">Commandes de niveau 2</translation>
    </message>
    <message>
        <source>Correct the decision about {bags}?</source>
        <translation type="unfinished">Corriger la décision sur {bags} ?</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">DÉCIDER</translation>
    </message>
    <message>
        <source>DESTROYED</source>
        <translation type="unfinished">DÉTRUITE</translation>
    </message>
    <message>
        <source>DIAGNOSE</source>
        <translation type="unfinished">DIAGNOSTIQUER</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">NE PAS SIGNER</translation>
    </message>
    <message>
        <source>DOES NOT SUIT</source>
        <translation type="unfinished">NE CONVIENT PAS</translation>
    </message>
    <message>
        <source>DOUBT</source>
        <translation type="unfinished">DOUTE</translation>
    </message>
    <message>
        <source>DOWNGRADED</source>
        <translation type="unfinished">DÉCLASSÉ</translation>
    </message>
    <message>
        <source>DRAW</source>
        <translation type="unfinished">TIRER</translation>
    </message>
    <message>
        <source>DUMP</source>
        <translation type="unfinished">JETER</translation>
    </message>
    <message>
        <source>DUMPED</source>
        <translation type="unfinished">JETÉ</translation>
    </message>
    <message>
        <source>Decided: {decision}.</source>
        <translation type="unfinished">Décidé : {decision}.</translation>
    </message>
    <message>
        <source>Disk</source>
        <translation type="unfinished">Disque</translation>
    </message>
    <message>
        <source>Due at {time}.</source>
        <translation type="unfinished">À faire à {time}.</translation>
    </message>
    <message>
        <source>EMPTY</source>
        <translation type="unfinished">VIDE</translation>
    </message>
    <message>
        <source>EMPTY BAG</source>
        <translation type="unfinished">SAC VIDE</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">VIDEZ</translation>
    </message>
    <message>
        <source>EMPTY THE PAN</source>
        <translation type="unfinished">VIDEZ LE PLATEAU</translation>
    </message>
    <message>
        <source>END</source>
        <translation type="unfinished">FIN</translation>
    </message>
    <message>
        <source>END RUN</source>
        <translation type="unfinished">CLORE SÉRIE</translation>
    </message>
    <message>
        <source>ENTER</source>
        <translation type="unfinished">ENTRER</translation>
    </message>
    <message>
        <source>EVIDENCE</source>
        <translation type="unfinished">PREUVES</translation>
    </message>
    <message>
        <source>Everything the scale sends goes into {file}</source>
        <translation type="unfinished">Tout ce que la balance envoie va dans {file}</translation>
    </message>
    <message>
        <source>FAILED</source>
        <translation type="unfinished">ÉCHEC</translation>
    </message>
    <message>
        <source>FAILED: check again</source>
        <translation type="unfinished">ÉCHEC : recontrôlez</translation>
    </message>
    <message>
        <source>FAILING</source>
        <translation type="unfinished">ÉCHOUE</translation>
    </message>
    <message>
        <source>FAILS</source>
        <translation type="unfinished">ÉCHEC</translation>
    </message>
    <message>
        <source>FILL CASE</source>
        <translation type="unfinished">REMPLIR CAISSE</translation>
    </message>
    <message>
        <source>FILTER</source>
        <translation type="unfinished">FILTRER</translation>
    </message>
    <message>
        <source>FINISHING</source>
        <translation type="unfinished">SE TERMINE</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">PREMIÈRE</translation>
    </message>
    <message>
        <source>FLAG</source>
        <translation type="unfinished">DRAPEAU</translation>
    </message>
    <message>
        <source>Fri {number}</source>
        <translation type="unfinished">ven. {number}</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished">vendredi</translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished">De qui</translation>
    </message>
    <message>
        <source>From the recording {file}: TAKE a line.</source>
        <translation type="unfinished">Depuis l'enregistrement {file} : PRENEZ une ligne.</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">ARRÊTER</translation>
    </message>
    <message>
        <source>GIVEN AWAY</source>
        <translation type="unfinished">DONNÉ</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">CONTINUER</translation>
    </message>
    <message>
        <source>GOOD</source>
        <translation type="unfinished">BON</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation type="unfinished">Donné en trop</translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation type="unfinished">Abandonné.</translation>
    </message>
    <message>
        <source>Given up: nothing is recorded.</source>
        <translation type="unfinished">Abandonné : rien n'est enregistré.</translation>
    </message>
    <message>
        <source>Good bags: {count} of {order}, set aside: {aside}</source>
        <translation type="unfinished">Sacs bons : {count} sur {order}, écartés : {aside}</translation>
    </message>
    <message>
        <source>Good bags: {count}, set aside: {aside}</source>
        <translation type="unfinished">Sacs bons : {count}, écartés : {aside}</translation>
    </message>
    <message>
        <source>HELD</source>
        <translation type="unfinished">BLOQUÉ</translation>
    </message>
    <message>
        <source>HISTORY</source>
        <translation type="unfinished">HISTORIQUE</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation type="unfinished">BLOQUER</translation>
    </message>
    <message>
        <source>HOLD IT</source>
        <translation type="unfinished">LE BLOQUER</translation>
    </message>
    <message>
        <source>HOLD STAYS</source>
        <translation type="unfinished">RESTE BLOQUÉ</translation>
    </message>
    <message>
        <source>HOLD STILL</source>
        <translation type="unfinished">FIGER</translation>
    </message>
    <message>
        <source>HOLDS</source>
        <translation type="unfinished">BLOCAGES</translation>
    </message>
    <message>
        <source>HOUSE</source>
        <translation type="unfinished">STOCK</translation>
    </message>
    <message>
        <source>Held: {what}</source>
        <translation type="unfinished">Bloqué : {what}</translation>
    </message>
    <message>
        <source>Here</source>
        <translation type="unfinished">Ici</translation>
    </message>
    <message>
        <source>How many bags have which net. Touch a bar to read it.</source>
        <translation type="unfinished">Combien de sacs ont quel net. Touchez une barre pour la lire.</translation>
    </message>
    <message>
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">JE L'AI VU</translation>
    </message>
    <message>
        <source>I see it there</source>
        <translation type="unfinished">je l'y vois</translation>
    </message>
    <message>
        <source>IN DOUBT</source>
        <translation type="unfinished">DOUTEUSE</translation>
    </message>
    <message>
        <source>IN USE.</source>
        <translation type="unfinished">EN SERVICE.</translation>
    </message>
    <message>
        <source>INBOX</source>
        <translation type="unfinished">À FAIRE</translation>
    </message>
    <message>
        <source>INPUT LOT</source>
        <translation type="unfinished">LOT D'ENTRÉE</translation>
    </message>
    <message>
        <source>INPUT LOTS</source>
        <translation type="unfinished">LOTS D'ENTRÉE</translation>
    </message>
    <message>
        <source>INSPECTOR</source>
        <translation type="unfinished">INSPECTEUR</translation>
    </message>
    <message>
        <source>In the settings</source>
        <translation type="unfinished">Dans les réglages</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">En service</translation>
    </message>
    <message>
        <source>Is the scale on, and are baud rate and parity those of its menu?</source>
        <translation type="unfinished">La balance est-elle allumée, débit et parité sont-ils ceux de son menu ?</translation>
    </message>
    <message>
        <source>Issued − used − spoiled − samples − returned</source>
        <translation type="unfinished">Sorties − utilisées − gâchées − échantillons − rendues</translation>
    </message>
    <message>
        <source>It cannot be released</source>
        <translation type="unfinished">Ne peut être libéré</translation>
    </message>
    <message>
        <source>Its lines</source>
        <translation type="unfinished">Ses lignes</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation type="unfinished">GARDER</translation>
    </message>
    <message>
        <source>KEEP CHART</source>
        <translation type="unfinished">GARDER GRAPHIQUE</translation>
    </message>
    <message>
        <source>KEEP LINE</source>
        <translation type="unfinished">GARDER LIGNE</translation>
    </message>
    <message>
        <source>Kept as {name} (PNG, SVG, CSV) in {folder}</source>
        <translation type="unfinished">Gardé sous {name} (PNG, SVG, CSV) dans {folder}</translation>
    </message>
    <message>
        <source>Key in how many bags lie in the bin.</source>
        <translation type="unfinished">Tapez combien de sacs sont dans le bac.</translation>
    </message>
    <message>
        <source>LABEL ON BAG</source>
        <translation type="unfinished">ÉTIQUETTE SUR SAC</translation>
    </message>
    <message>
        <source>LABEL ROLL</source>
        <translation type="unfinished">ROULEAU D'ÉTIQUETTES</translation>
    </message>
    <message>
        <source>LABEL {state}</source>
        <translation type="unfinished">ÉTIQUETTE {state}</translation>
    </message>
    <message>
        <source>LABELS</source>
        <translation type="unfinished">ÉTIQUETTES</translation>
    </message>
    <message>
        <source>LABELS (F5) settles it.</source>
        <translation type="unfinished">ÉTIQUETTES (F5) le règle.</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">LANGUE</translation>
    </message>
    <message>
        <source>LAST</source>
        <translation type="unfinished">DERNIÈRE</translation>
    </message>
    <message>
        <source>LAST 7 DAYS</source>
        <translation type="unfinished">7 DERNIERS JOURS</translation>
    </message>
    <message>
        <source>LAST DAY</source>
        <translation type="unfinished">DERNIER JOUR</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">CHEF</translation>
    </message>
    <message>
        <source>LEAVE</source>
        <translation type="unfinished">QUITTER</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">LEVEZ SAC</translation>
    </message>
    <message>
        <source>LIFT THE BAG OFF</source>
        <translation type="unfinished">RETIREZ LE SAC</translation>
    </message>
    <message>
        <source>LIFT THE WEIGHTS OFF</source>
        <translation type="unfinished">RETIREZ LES POIDS</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">LIGNE</translation>
    </message>
    <message>
        <source>LISTEN</source>
        <translation type="unfinished">ÉCOUTER</translation>
    </message>
    <message>
        <source>LISTEN to the scale, or open a RECORDING; put a known weight on the pan and TAKE a line.</source>
        <translation type="unfinished">Touchez ÉCOUTER, ou ouvrez un ENREGISTREMENT ; posez un poids connu et touchez PRENDRE LIGNE.</translation>
    </message>
    <message>
        <source>LOAD</source>
        <translation type="unfinished">CHARGER</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">REPOSER</translation>
    </message>
    <message>
        <source>LOAD CLEAN</source>
        <translation type="unfinished">CHARGER PROPRE</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation type="unfinished">REGARDER</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">CHERCHER</translation>
    </message>
    <message>
        <source>LOSSES</source>
        <translation type="unfinished">PERTES</translation>
    </message>
    <message>
        <source>LOT</source>
        <translation type="unfinished">LOT</translation>
    </message>
    <message>
        <source>LOTS</source>
        <translation type="unfinished">LOTS</translation>
    </message>
    <message>
        <source>Label roll {roll}: a difference of {difference} is open</source>
        <translation type="unfinished">Rouleau d'étiquettes {roll} : un écart de {difference} reste ouvert</translation>
    </message>
    <message>
        <source>Label {serial} is in doubt</source>
        <translation type="unfinished">Étiquette {serial} douteuse</translation>
    </message>
    <message>
        <source>Labels in doubt</source>
        <translation type="unfinished">Étiquettes douteuses</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">Langue de l'écran de l'emballeur</translation>
    </message>
    <message>
        <source>Languages</source>
        <translation type="unfinished">Langues</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished">Chef de ligne</translation>
    </message>
    <message>
        <source>Lead is wanted at this line</source>
        <translation type="unfinished">Le chef est demandé à cette ligne</translation>
    </message>
    <message>
        <source>Lead {who}, on the scale {person}</source>
        <translation type="unfinished">Chef {who}, à la balance {person}</translation>
    </message>
    <message>
        <source>Line stands: {reason}. Look, then touch</source>
        <translation type="unfinished">Ligne arrêtée : {reason}. Regardez, puis touchez</translation>
    </message>
    <message>
        <source>Look, then touch</source>
        <translation type="unfinished">Regardez, puis touchez</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation type="unfinished">Recherche …</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished">Lot</translation>
    </message>
    <message>
        <source>Lot {lot} is held, and every bag that may hold some of it.</source>
        <translation type="unfinished">Lot {lot} bloqué, et tout sac qui peut en contenir.</translation>
    </message>
    <message>
        <source>Lot {lot} is released, and the bags that were held with it.</source>
        <translation type="unfinished">Lot {lot} libéré, et les sacs bloqués avec lui.</translation>
    </message>
    <message>
        <source>Lot {lot} received and held.</source>
        <translation type="unfinished">Lot {lot} reçu et bloqué.</translation>
    </message>
    <message>
        <source>Lot {lot} received.</source>
        <translation type="unfinished">Lot {lot} reçu.</translation>
    </message>
    <message>
        <source>Lot {lot}: {move}, on record.</source>
        <translation type="unfinished">Lot {lot} : {move}, enregistré.</translation>
    </message>
    <message>
        <source>MANAGER</source>
        <translation type="unfinished">RESPONSABLE</translation>
    </message>
    <message>
        <source>METAL DETECTOR</source>
        <translation type="unfinished">DÉTECTEUR DE MÉTAUX</translation>
    </message>
    <message>
        <source>MISMATCH</source>
        <translation type="unfinished">DIFFÉRENT</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">PLUS</translation>
    </message>
    <message>
        <source>MOVING</source>
        <translation type="unfinished">EN MOUVEMENT</translation>
    </message>
    <message>
        <source>Maker and model</source>
        <translation type="unfinished">Fabricant et modèle</translation>
    </message>
    <message>
        <source>Max / e = {number}, class {code} allows {least} to {most}</source>
        <translation type="unfinished">Max / e = {number}, la classe {code} permet {least} à {most}</translation>
    </message>
    <message>
        <source>Mean needed</source>
        <translation type="unfinished">Moyenne requise</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Net moyen {mass}</translation>
    </message>
    <message>
        <source>Mean so far</source>
        <translation type="unfinished">Moyenne actuelle</translation>
    </message>
    <message>
        <source>Mon {number}</source>
        <translation type="unfinished">lun. {number}</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished">lundi</translation>
    </message>
    <message>
        <source>NEAR MAX</source>
        <translation type="unfinished">PRÈS DU MAX</translation>
    </message>
    <message>
        <source>NEAR THE TARE</source>
        <translation type="unfinished">PRÈS DE LA TARE</translation>
    </message>
    <message>
        <source>NET</source>
        <translation type="unfinished">NET</translation>
    </message>
    <message>
        <source>NEVER CAME OUT</source>
        <translation type="unfinished">JAMAIS SORTIE</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">NOUVEAU BLOCAGE</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation type="unfinished">SUIVANT</translation>
    </message>
    <message>
        <source>NEXT CASE</source>
        <translation type="unfinished">CAISSE SUIVANTE</translation>
    </message>
    <message>
        <source>NO FORECAST</source>
        <translation type="unfinished">PAS DE PRÉVISION</translation>
    </message>
    <message>
        <source>NO MARKS</source>
        <translation type="unfinished">SANS MARQUES</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">SANS LECTURE</translation>
    </message>
    <message>
        <source>NO RUN IS OPEN</source>
        <translation type="unfinished">AUCUNE SÉRIE OUVERTE</translation>
    </message>
    <message>
        <source>NOBODY</source>
        <translation type="unfinished">PERSONNE</translation>
    </message>
    <message>
        <source>NOMINAL</source>
        <translation type="unfinished">NOMINAL</translation>
    </message>
    <message>
        <source>NONE</source>
        <translation type="unfinished">AUCUNE</translation>
    </message>
    <message>
        <source>NOT MET</source>
        <translation type="unfinished">NON RESPECTÉ</translation>
    </message>
    <message>
        <source>NOW</source>
        <translation type="unfinished">MAINTENANT</translation>
    </message>
    <message>
        <source>NUMBERS</source>
        <translation type="unfinished">CHIFFRES</translation>
    </message>
    <message>
        <source>Next: {what}</source>
        <translation type="unfinished">Ensuite : {what}</translation>
    </message>
    <message>
        <source>No alarm stands. What needs nobody is kept as an event.</source>
        <translation type="unfinished">Aucune alarme. Ce qui ne demande personne est gardé comme événement.</translation>
    </message>
    <message>
        <source>No bag is on record yet.</source>
        <translation type="unfinished">Aucun sac enregistré.</translation>
    </message>
    <message>
        <source>No bag is suspect.</source>
        <translation type="unfinished">Aucun sac suspect.</translation>
    </message>
    <message>
        <source>No case stands here</source>
        <translation type="unfinished">Aucune caisse ici</translation>
    </message>
    <message>
        <source>No description yet</source>
        <translation type="unfinished">Pas encore de description</translation>
    </message>
    <message>
        <source>No good bag yet</source>
        <translation type="unfinished">Pas encore de sac bon</translation>
    </message>
    <message>
        <source>No label is in doubt</source>
        <translation type="unfinished">Aucune étiquette douteuse</translation>
    </message>
    <message>
        <source>No lot is on the line: scan one.</source>
        <translation type="unfinished">Aucun lot sur la ligne : lisez-en un.</translation>
    </message>
    <message>
        <source>No roll is in</source>
        <translation type="unfinished">Aucun rouleau en place</translation>
    </message>
    <message>
        <source>No run is open</source>
        <translation type="unfinished">Aucune série ouverte</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">Aucune série ouverte</translation>
    </message>
    <message>
        <source>No target can be proposed: {why}.</source>
        <translation type="unfinished">Aucune cible à proposer : {why}.</translation>
    </message>
    <message>
        <source>No whole line was heard yet.</source>
        <translation type="unfinished">Aucune ligne entière entendue.</translation>
    </message>
    <message>
        <source>Not kept: {why}, {folder}</source>
        <translation type="unfinished">Non gardé : {why}, {folder}</translation>
    </message>
    <message>
        <source>Not recorded: {why}</source>
        <translation type="unfinished">Non enregistré : {why}</translation>
    </message>
    <message>
        <source>Nothing is held or packed.</source>
        <translation type="unfinished">Rien n'est bloqué ni emballé.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">Rien n'est ouvert.</translation>
    </message>
    <message>
        <source>Nothing keeps it.</source>
        <translation type="unfinished">Rien ne le retient.</translation>
    </message>
    <message>
        <source>Nothing waits for a signature.</source>
        <translation type="unfinished">Rien n'attend de signature.</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">DE L'EMBALLEUR</translation>
    </message>
    <message>
        <source>OLD ONE DESTROYED</source>
        <translation type="unfinished">ANCIENNE DÉTRUITE</translation>
    </message>
    <message>
        <source>ON ITS BAG</source>
        <translation type="unfinished">SUR SON SAC</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation type="unfinished">OUVRIR</translation>
    </message>
    <message>
        <source>OPEN ONLY</source>
        <translation type="unfinished">OUVERTS SEULS</translation>
    </message>
    <message>
        <source>ORDER DONE</source>
        <translation type="unfinished">TERMINÉ</translation>
    </message>
    <message>
        <source>OVER</source>
        <translation type="unfinished">EXCÈS</translation>
    </message>
    <message>
        <source>OVERDUE {minutes} min</source>
        <translation type="unfinished">EN RETARD {minutes} min</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}</source>
        <translation type="unfinished">Enregistrés {bags}, comptés {count}</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} fewer. Why?</source>
        <translation type="unfinished">Enregistrés {bags}, comptés {count} : {difference} de moins. Pourquoi ?</translation>
    </message>
    <message>
        <source>On record {bags}, counted {count}: {difference} more. Why?</source>
        <translation type="unfinished">Enregistrés {bags}, comptés {count} : {difference} de plus. Pourquoi ?</translation>
    </message>
    <message>
        <source>On record; it holds from the next run on.</source>
        <translation type="unfinished">Enregistré ; valable dès la prochaine série.</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation type="unfinished">À la balance</translation>
    </message>
    <message>
        <source>Open a run first: a check is made at its loads.</source>
        <translation type="unfinished">Ouvrez d'abord une série : le contrôle se fait à ses charges.</translation>
    </message>
    <message>
        <source>Order: open</source>
        <translation type="unfinished">Commande : libre</translation>
    </message>
    <message>
        <source>Order: {count} bags</source>
        <translation type="unfinished">Commande : {count} sacs</translation>
    </message>
    <message>
        <source>PACKED ON</source>
        <translation type="unfinished">EMBALLÉ LE</translation>
    </message>
    <message>
        <source>PACKER</source>
        <translation type="unfinished">EMBALLAGE</translation>
    </message>
    <message>
        <source>PALLET</source>
        <translation type="unfinished">PALETTE</translation>
    </message>
    <message>
        <source>PALLETS</source>
        <translation type="unfinished">PALETTES</translation>
    </message>
    <message>
        <source>PAN WHEN EMPTY</source>
        <translation type="unfinished">PLATEAU À VIDE</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation type="unfinished">BON</translation>
    </message>
    <message>
        <source>PASSED</source>
        <translation type="unfinished">BON</translation>
    </message>
    <message>
        <source>PEOPLE</source>
        <translation type="unfinished">ÉQUIPE</translation>
    </message>
    <message>
        <source>PLUS/MINUS</source>
        <translation type="unfinished">PLUS/MOINS</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">IMPRIMER</translation>
    </message>
    <message>
        <source>PRINT AGAIN</source>
        <translation type="unfinished">RÉIMPRIMER</translation>
    </message>
    <message>
        <source>PRODUCT TEMPERATURE</source>
        <translation type="unfinished">TEMPÉRATURE PRODUIT</translation>
    </message>
    <message>
        <source>PROPOSE</source>
        <translation type="unfinished">PROPOSER</translation>
    </message>
    <message>
        <source>PROPOSE when they differ enough.</source>
        <translation type="unfinished">PROPOSER quand elles diffèrent assez.</translation>
    </message>
    <message>
        <source>PUT AN EMPTY BAG ON</source>
        <translation type="unfinished">POSEZ UN SAC VIDE</translation>
    </message>
    <message>
        <source>PUT ON {weights}</source>
        <translation type="unfinished">POSEZ {weights}</translation>
    </message>
    <message>
        <source>PUT {serial} ON</source>
        <translation type="unfinished">POSEZ {serial}</translation>
    </message>
    <message>
        <source>Pallet {sscc} is closed; its label comes.</source>
        <translation type="unfinished">Palette {sscc} fermée ; son étiquette sort.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished">Composants</translation>
    </message>
    <message>
        <source>Plate in the settings</source>
        <translation type="unfinished">Plaque dans les réglages</translation>
    </message>
    <message>
        <source>Print again: {what}</source>
        <translation type="unfinished">Réimprimer : {what}</translation>
    </message>
    <message>
        <source>Protocol</source>
        <translation type="unfinished">Protocole</translation>
    </message>
    <message>
        <source>Put another weight on, and TAKE a line at rest and one in motion too.</source>
        <translation type="unfinished">Posez un autre poids, et PRENEZ une ligne au repos et une en mouvement.</translation>
    </message>
    <message>
        <source>Put its number into station.toml.</source>
        <translation type="unfinished">Mettez son numéro dans station.toml.</translation>
    </message>
    <message>
        <source>QA check</source>
        <translation type="unfinished">contrôle qualité</translation>
    </message>
    <message>
        <source>QA decides</source>
        <translation type="unfinished">la qualité décide</translation>
    </message>
    <message>
        <source>QA decides: release all, or let the hold stay</source>
        <translation type="unfinished">la qualité décide : tout libérer, ou laisser bloqué</translation>
    </message>
    <message>
        <source>QA holds the button</source>
        <translation type="unfinished">la qualité maintient</translation>
    </message>
    <message>
        <source>QA or a manager releases a lot: touch WHO and choose your name</source>
        <translation type="unfinished">la qualité ou un responsable libère un lot : touchez QUI et votre nom</translation>
    </message>
    <message>
        <source>QA said go on</source>
        <translation type="unfinished">la qualité dit de continuer</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">QUALITÉ</translation>
    </message>
    <message>
        <source>READY</source>
        <translation type="unfinished">PRÊT</translation>
    </message>
    <message>
        <source>REASON TO REFUSE</source>
        <translation type="unfinished">RAISON DU REFUS</translation>
    </message>
    <message>
        <source>RECEIVE</source>
        <translation type="unfinished">RECEVOIR</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished">ENREGISTRER</translation>
    </message>
    <message>
        <source>RECORD PROPOSAL</source>
        <translation type="unfinished">ENREGISTRER PROPOSITION</translation>
    </message>
    <message>
        <source>RECORDED</source>
        <translation type="unfinished">ENREGISTRÉE</translation>
    </message>
    <message>
        <source>RECORDING</source>
        <translation type="unfinished">ENREGISTREMENT</translation>
    </message>
    <message>
        <source>REFUSE</source>
        <translation type="unfinished">REFUSER</translation>
    </message>
    <message>
        <source>REHEARSE</source>
        <translation type="unfinished">RÉPÉTER</translation>
    </message>
    <message>
        <source>REJECTS</source>
        <translation type="unfinished">REBUTS</translation>
    </message>
    <message>
        <source>RELEASE</source>
        <translation type="unfinished">LIBÉRER</translation>
    </message>
    <message>
        <source>RELEASE ALL</source>
        <translation type="unfinished">TOUT LIBÉRER</translation>
    </message>
    <message>
        <source>RELEASE BEFORE STEP</source>
        <translation type="unfinished">LIBÉRER L'AVANT</translation>
    </message>
    <message>
        <source>REPORT</source>
        <translation type="unfinished">RAPPORT</translation>
    </message>
    <message>
        <source>REPRINT</source>
        <translation type="unfinished">RÉIMPRESSION</translation>
    </message>
    <message>
        <source>RETURN</source>
        <translation type="unfinished">RENDRE</translation>
    </message>
    <message>
        <source>RETURNED</source>
        <translation type="unfinished">RENDUES</translation>
    </message>
    <message>
        <source>REWORKED</source>
        <translation type="unfinished">REPRIS</translation>
    </message>
    <message>
        <source>ROLL</source>
        <translation type="unfinished">ROULEAU</translation>
    </message>
    <message>
        <source>ROLL IN</source>
        <translation type="unfinished">METTRE ROULEAU</translation>
    </message>
    <message>
        <source>ROLL OUT</source>
        <translation type="unfinished">SORTIR ROULEAU</translation>
    </message>
    <message>
        <source>ROOM TEMPERATURE</source>
        <translation type="unfinished">TEMPÉRATURE SALLE</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">SÉRIE</translation>
    </message>
    <message>
        <source>RUN, then SERVICE (F9), SWAP</source>
        <translation type="unfinished">SÉRIE, puis SERVICE (F9), ÉCHANGE</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">SÉRIE, puis {door} ({key})</translation>
    </message>
    <message>
        <source>RUNS</source>
        <translation type="unfinished">SÉRIES</translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished">Étendue</translation>
    </message>
    <message>
        <source>Reading the record</source>
        <translation type="unfinished">Lecture du registre</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Registre</translation>
    </message>
    <message>
        <source>Recorded as refused</source>
        <translation type="unfinished">Enregistrée comme refusée</translation>
    </message>
    <message>
        <source>Recorded: {file}</source>
        <translation type="unfinished">Enregistré : {file}</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation type="unfinished">Refusé</translation>
    </message>
    <message>
        <source>Refused. Count the bags first.</source>
        <translation type="unfinished">Refusé. Comptez d'abord les sacs.</translation>
    </message>
    <message>
        <source>Refused. Look at another clock and say why first.</source>
        <translation type="unfinished">Refusé. Regardez une autre horloge et dites d'abord pourquoi.</translation>
    </message>
    <message>
        <source>Refused. No run is open.</source>
        <translation type="unfinished">Refusé. Aucune série ouverte.</translation>
    </message>
    <message>
        <source>Refused. Say which label, why, and where the old one is.</source>
        <translation type="unfinished">Refusé. Dites quelle étiquette, pourquoi, et où est l'ancienne.</translation>
    </message>
    <message>
        <source>Refused. Scan the roll and key in its labels first.</source>
        <translation type="unfinished">Refusé. Lisez d'abord le rouleau et tapez ses étiquettes.</translation>
    </message>
    <message>
        <source>Refused. Touch the two who sign, the lead first.</source>
        <translation type="unfinished">Refusé. Touchez les deux qui signent, le chef d'abord.</translation>
    </message>
    <message>
        <source>Refused. Touch who signs.</source>
        <translation type="unfinished">Refusé. Touchez qui signe.</translation>
    </message>
    <message>
        <source>Refused. Who signs? Touch WHO and choose your name.</source>
        <translation type="unfinished">Refusé. Qui signe ? Touchez QUI et votre nom.</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Refusé. {why}</translation>
    </message>
    <message>
        <source>Rehearsing …</source>
        <translation type="unfinished">Répétition …</translation>
    </message>
    <message>
        <source>Roll {roll} is in. Count it out</source>
        <translation type="unfinished">Rouleau {roll} en place. Comptez-le à la sortie</translation>
    </message>
    <message>
        <source>Roll {roll}: why {difference}?</source>
        <translation type="unfinished">Rouleau {roll} : pourquoi {difference} ?</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Série ouverte</translation>
    </message>
    <message>
        <source>SAFE</source>
        <translation type="unfinished">SÛR</translation>
    </message>
    <message>
        <source>SAMPLED</source>
        <translation type="unfinished">ÉCHANTILLON</translation>
    </message>
    <message>
        <source>SAMPLES</source>
        <translation type="unfinished">ÉCHANTILLONS</translation>
    </message>
    <message>
        <source>SAVE</source>
        <translation type="unfinished">SAUVER</translation>
    </message>
    <message>
        <source>SCALE</source>
        <translation type="unfinished">BALANCE</translation>
    </message>
    <message>
        <source>SCAN</source>
        <translation type="unfinished">LECTURE</translation>
    </message>
    <message>
        <source>SCAN A BAG</source>
        <translation type="unfinished">LISEZ UN SAC</translation>
    </message>
    <message>
        <source>SCAN THE FILM LOT</source>
        <translation type="unfinished">LISEZ LE LOT DE FILM</translation>
    </message>
    <message>
        <source>SEAL</source>
        <translation type="unfinished">SOUDEZ</translation>
    </message>
    <message>
        <source>SEAL CHECK</source>
        <translation type="unfinished">SOUDURE</translation>
    </message>
    <message>
        <source>SERIALS</source>
        <translation type="unfinished">NUMÉROS</translation>
    </message>
    <message>
        <source>SERVICE</source>
        <translation type="unfinished">SERVICE</translation>
    </message>
    <message>
        <source>SET ASIDE</source>
        <translation type="unfinished">ÉCARTEZ</translation>
    </message>
    <message>
        <source>SHELVE</source>
        <translation type="unfinished">DIFFÉRER</translation>
    </message>
    <message>
        <source>SHIP</source>
        <translation type="unfinished">EXPÉDIER</translation>
    </message>
    <message>
        <source>SHIPPING</source>
        <translation type="unfinished">EXPÉDITION</translation>
    </message>
    <message>
        <source>SIGN</source>
        <translation type="unfinished">SIGNER</translation>
    </message>
    <message>
        <source>SIGN DAY</source>
        <translation type="unfinished">SIGNER LE JOUR</translation>
    </message>
    <message>
        <source>SIGNS</source>
        <translation type="unfinished">SIGNE</translation>
    </message>
    <message>
        <source>SMA SCP-0499 level {code}</source>
        <translation type="unfinished">SMA SCP-0499 niveau {code}</translation>
    </message>
    <message>
        <source>SPOILED</source>
        <translation type="unfinished">GÂCHÉES</translation>
    </message>
    <message>
        <source>SPOOLED</source>
        <translation type="unfinished">EN FILE</translation>
    </message>
    <message>
        <source>SPREAD</source>
        <translation type="unfinished">DISPERSION</translation>
    </message>
    <message>
        <source>START CHECK</source>
        <translation type="unfinished">COMMENCER CONTRÔLE</translation>
    </message>
    <message>
        <source>START OVER</source>
        <translation type="unfinished">TOUT REFAIRE</translation>
    </message>
    <message>
        <source>START RUN</source>
        <translation type="unfinished">OUVRIR SÉRIE</translation>
    </message>
    <message>
        <source>STARTING</source>
        <translation type="unfinished">DÉMARRAGE</translation>
    </message>
    <message>
        <source>STATION</source>
        <translation type="unfinished">POSTE</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished">ARRÊT</translation>
    </message>
    <message>
        <source>STOP RECORDING</source>
        <translation type="unfinished">ARRÊTER</translation>
    </message>
    <message>
        <source>STOPS</source>
        <translation type="unfinished">ARRÊTS</translation>
    </message>
    <message>
        <source>STUDY {count} BAGS</source>
        <translation type="unfinished">ÉTUDE DE {count} SACS</translation>
    </message>
    <message>
        <source>SUBMITTED</source>
        <translation type="unfinished">ENVOYÉE</translation>
    </message>
    <message>
        <source>SUSPECT BAGS</source>
        <translation type="unfinished">SACS SUSPECTS</translation>
    </message>
    <message>
        <source>SUSPECT WINDOW</source>
        <translation type="unfinished">FENÊTRE SUSPECTE</translation>
    </message>
    <message>
        <source>SWAP</source>
        <translation type="unfinished">ÉCHANGE</translation>
    </message>
    <message>
        <source>Same product?</source>
        <translation type="unfinished">Même produit ?</translation>
    </message>
    <message>
        <source>Sat {number}</source>
        <translation type="unfinished">sam. {number}</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished">samedi</translation>
    </message>
    <message>
        <source>Scale {what} failed its last check</source>
        <translation type="unfinished">La balance {what} a échoué à son dernier contrôle</translation>
    </message>
    <message>
        <source>Scan a label, or type a serial or a blend lot.</source>
        <translation type="unfinished">Lisez une étiquette, ou tapez un numéro ou un lot de mélange.</translation>
    </message>
    <message>
        <source>Scan the bags, type first..last, or touch NEXT CASE</source>
        <translation type="unfinished">Lisez les sacs, tapez premier..dernier, ou touchez CAISSE SUIVANTE</translation>
    </message>
    <message>
        <source>Scan the cases of the pallet</source>
        <translation type="unfinished">Lisez les caisses de la palette</translation>
    </message>
    <message>
        <source>Scan the label on a bag</source>
        <translation type="unfinished">Lisez l'étiquette d'un sac</translation>
    </message>
    <message>
        <source>Scan the pallets and cases that leave</source>
        <translation type="unfinished">Lisez les palettes et caisses qui partent</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation type="unfinished">Numéro de série</translation>
    </message>
    <message>
        <source>Settings and record are being read: no bag is taken yet</source>
        <translation type="unfinished">Lecture des réglages et du registre : aucun sac n'est encore accepté</translation>
    </message>
    <message>
        <source>Shipment {number} is on record.</source>
        <translation type="unfinished">Expédition {number} enregistrée.</translation>
    </message>
    <message>
        <source>Shipments</source>
        <translation type="unfinished">Expéditions</translation>
    </message>
    <message>
        <source>Sign as the second person to {act}</source>
        <translation type="unfinished">Signez en second pour {act}</translation>
    </message>
    <message>
        <source>Sign to {act}</source>
        <translation type="unfinished">Signez pour {act}</translation>
    </message>
    <message>
        <source>Signed and on record.</source>
        <translation type="unfinished">Signé et enregistré.</translation>
    </message>
    <message>
        <source>Solid: mean so far, dotted: its limits. Dashed: mean of about 40 bags. Touch a bag.</source>
        <translation type="unfinished">Plein : moyenne actuelle ; points : ses limites. Tirets : moyenne d'environ 40 sacs. Touchez un sac.</translation>
    </message>
    <message>
        <source>Start a run</source>
        <translation type="unfinished">Ouvrir une série</translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished">Poste</translation>
    </message>
    <message>
        <source>Stop and start the station to use it</source>
        <translation type="unfinished">Arrêtez et relancez le poste pour l'utiliser</translation>
    </message>
    <message>
        <source>Study kept: mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">Étude gardée : moyenne {mean}, s {spread}, {count} sacs</translation>
    </message>
    <message>
        <source>Sun {number}</source>
        <translation type="unfinished">dim. {number}</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished">dimanche</translation>
    </message>
    <message>
        <source>Suspect window of {what}: {count} bags are held</source>
        <translation type="unfinished">Fenêtre suspecte de {what} : {count} sacs bloqués</translation>
    </message>
    <message>
        <source>T1 packs in the official sample</source>
        <translation type="unfinished">sacs T1 dans l'échantillon officiel</translation>
    </message>
    <message>
        <source>T1 packs of the whole batch</source>
        <translation type="unfinished">sacs T1 du lot entier</translation>
    </message>
    <message>
        <source>T2 packs in the long run</source>
        <translation type="unfinished">sacs T2 à la longue</translation>
    </message>
    <message>
        <source>T2 packs in the official sample</source>
        <translation type="unfinished">sacs T2 dans l'échantillon officiel</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, nominal</translation>
    </message>
    <message>
        <source>TAKE INTO USE</source>
        <translation type="unfinished">METTRE EN SERVICE</translation>
    </message>
    <message>
        <source>TAKE LINE</source>
        <translation type="unfinished">PRENDRE LIGNE</translation>
    </message>
    <message>
        <source>TAKE OUT</source>
        <translation type="unfinished">RETIREZ</translation>
    </message>
    <message>
        <source>TAKE READING</source>
        <translation type="unfinished">PRENDRE LA MESURE</translation>
    </message>
    <message>
        <source>TARE</source>
        <translation type="unfinished">TARE</translation>
    </message>
    <message>
        <source>TARGET</source>
        <translation type="unfinished">CIBLE</translation>
    </message>
    <message>
        <source>TEACH</source>
        <translation type="unfinished">APPRENDRE</translation>
    </message>
    <message>
        <source>TELL</source>
        <translation type="unfinished">À SAVOIR</translation>
    </message>
    <message>
        <source>THE BAG</source>
        <translation type="unfinished">LE SAC</translation>
    </message>
    <message>
        <source>THE DAY</source>
        <translation type="unfinished">LE JOUR</translation>
    </message>
    <message>
        <source>THE SCALE FAILS: its bags are held, call maintenance</source>
        <translation type="unfinished">LA BALANCE ÉCHOUE : ses sacs sont bloqués, appelez la maintenance</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS</source>
        <translation type="unfinished">LA BALANCE EST BONNE</translation>
    </message>
    <message>
        <source>THE SCALE HOLDS, beyond its first limit: have it adjusted soon</source>
        <translation type="unfinished">LA BALANCE EST BONNE, au-delà de sa première limite : faites-la régler bientôt</translation>
    </message>
    <message>
        <source>THIN</source>
        <translation type="unfinished">LIMITE</translation>
    </message>
    <message>
        <source>THIS HOUR</source>
        <translation type="unfinished">CETTE HEURE</translation>
    </message>
    <message>
        <source>TIME</source>
        <translation type="unfinished">TEMPS</translation>
    </message>
    <message>
        <source>TOPPED UP</source>
        <translation type="unfinished">COMPLÉTÉ</translation>
    </message>
    <message>
        <source>TRACE</source>
        <translation type="unfinished">TRAÇAGE</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">FORMATION</translation>
    </message>
    <message>
        <source>TRAINING IS OVER</source>
        <translation type="unfinished">FORMATION EXPIRÉE</translation>
    </message>
    <message>
        <source>Take a line, mark its value and say the unit first.</source>
        <translation type="unfinished">Prenez d'abord une ligne, marquez sa valeur et dites l'unité.</translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished">Cible</translation>
    </message>
    <message>
        <source>Target {target} instead of {now}, held up by {what}: {then} given away a bag instead of {old}.</source>
        <translation type="unfinished">Cible {target} au lieu de {now}, retenue par {what} : {then} donnés par sac au lieu de {old}.</translation>
    </message>
    <message>
        <source>The bin of {day} is counted: {count}.</source>
        <translation type="unfinished">Le bac du {day} est compté : {count}.</translation>
    </message>
    <message>
        <source>The clock</source>
        <translation type="unfinished">L'horloge</translation>
    </message>
    <message>
        <source>The line is the lowest mean that holds for a spread. Touch it to read it.</source>
        <translation type="unfinished">La ligne est la moyenne minimale qui tient pour une dispersion. Touchez-la pour la lire.</translation>
    </message>
    <message>
        <source>The next check is {stage}.</source>
        <translation type="unfinished">Le prochain contrôle : {stage}.</translation>
    </message>
    <message>
        <source>The port is opened again. What the scale says of itself stands beside.</source>
        <translation type="unfinished">Le port est rouvert. À côté : ce que la balance dit d'elle.</translation>
    </message>
    <message>
        <source>The proposal is on record. A manager approves it, as a new version.</source>
        <translation type="unfinished">Proposition enregistrée. Un responsable l'approuve, en nouvelle version.</translation>
    </message>
    <message>
        <source>The recording ended: {why}</source>
        <translation type="unfinished">L'enregistrement a pris fin : {why}</translation>
    </message>
    <message>
        <source>The reject bin of {day} was not counted</source>
        <translation type="unfinished">Le bac de rebuts du {day} n'a pas été compté</translation>
    </message>
    <message>
        <source>The run ended: nothing is recorded.</source>
        <translation type="unfinished">La série est close : rien n'est enregistré.</translation>
    </message>
    <message>
        <source>The run ended: the check was given up.</source>
        <translation type="unfinished">La série est close : contrôle abandonné.</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">L'indication de la balance fait foi. Si cet écran et la balance diffèrent, c'est la balance qui compte : arrêtez et appelez le chef.</translation>
    </message>
    <message>
        <source>The scan of label {serial} does not match</source>
        <translation type="unfinished">La lecture de l'étiquette {serial} diffère</translation>
    </message>
    <message>
        <source>The test is on record, as {what}.</source>
        <translation type="unfinished">L'essai est enregistré, comme {what}.</translation>
    </message>
    <message>
        <source>There is no chart to keep.</source>
        <translation type="unfinished">Aucun graphique à garder.</translation>
    </message>
    <message>
        <source>There is no recording: make one on the page WIRE.</source>
        <translation type="unfinished">Aucun enregistrement : faites-en un à la page CÂBLE.</translation>
    </message>
    <message>
        <source>There is no run before</source>
        <translation type="unfinished">Aucune série avant</translation>
    </message>
    <message>
        <source>There is nothing to keep yet.</source>
        <translation type="unfinished">Rien à garder encore.</translation>
    </message>
    <message>
        <source>This run stays as it is.</source>
        <translation type="unfinished">Cette série reste telle quelle.</translation>
    </message>
    <message>
        <source>This screen is left at RUN, MORE, LEAVE, by somebody who may</source>
        <translation type="unfinished">On quitte cet écran par SÉRIE, PLUS, QUITTER, si on en a le droit</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation type="unfinished">Fils</translation>
    </message>
    <message>
        <source>Thu {number}</source>
        <translation type="unfinished">jeu. {number}</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished">jeudi</translation>
    </message>
    <message>
        <source>Touch PASSED or FAILED.</source>
        <translation type="unfinished">Touchez BON ou ÉCHEC.</translation>
    </message>
    <message>
        <source>Touch a line.</source>
        <translation type="unfinished">Touchez une ligne.</translation>
    </message>
    <message>
        <source>Touch the rejects it is about first.</source>
        <translation type="unfinished">Touchez d'abord les rebuts.</translation>
    </message>
    <message>
        <source>Touch what becomes of it first.</source>
        <translation type="unfinished">Touchez d'abord ce qu'il devient.</translation>
    </message>
    <message>
        <source>Touch what is checked first.</source>
        <translation type="unfinished">Touchez d'abord ce qui est contrôlé.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Touchez d'abord votre nom.</translation>
    </message>
    <message>
        <source>Tue {number}</source>
        <translation type="unfinished">mar. {number}</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished">mardi</translation>
    </message>
    <message>
        <source>UNDO</source>
        <translation type="unfinished">ANNULER</translation>
    </message>
    <message>
        <source>UNIT</source>
        <translation type="unfinished">UNITÉ</translation>
    </message>
    <message>
        <source>UNIT {code}</source>
        <translation type="unfinished">UNITÉ {code}</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">À consommer jusqu'au</translation>
    </message>
    <message>
        <source>Use by {day}</source>
        <translation type="unfinished">À consommer jusqu'au {day}</translation>
    </message>
    <message>
        <source>VALUE</source>
        <translation type="unfinished">VALEUR</translation>
    </message>
    <message>
        <source>VOIDED</source>
        <translation type="unfinished">ANNULÉE</translation>
    </message>
    <message>
        <source>Version</source>
        <translation type="unfinished">Version</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">ATTENDEZ</translation>
    </message>
    <message>
        <source>WARN</source>
        <translation type="unfinished">ALERTE</translation>
    </message>
    <message>
        <source>WASH RECORD</source>
        <translation type="unfinished">RELEVÉ DE LAVAGE</translation>
    </message>
    <message>
        <source>WASTE</source>
        <translation type="unfinished">PERTE</translation>
    </message>
    <message>
        <source>WEIGH AN EMPTY BAG</source>
        <translation type="unfinished">PESEZ UN SAC VIDE</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">PESER UN SAC</translation>
    </message>
    <message>
        <source>WEIGHED AGAIN</source>
        <translation type="unfinished">REPESÉ</translation>
    </message>
    <message>
        <source>WEIGHTS</source>
        <translation type="unfinished">POIDS</translation>
    </message>
    <message>
        <source>WHO</source>
        <translation type="unfinished">QUI</translation>
    </message>
    <message>
        <source>WHOLE RUN</source>
        <translation type="unfinished">SÉRIE ENTIÈRE</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">ESSUYEZ</translation>
    </message>
    <message>
        <source>WIRE</source>
        <translation type="unfinished">CÂBLE</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">CALCULER</translation>
    </message>
    <message>
        <source>WOULD BE ACCEPTED</source>
        <translation type="unfinished">SERAIT ACCEPTÉ</translation>
    </message>
    <message>
        <source>WOULD NOT BE ACCEPTED</source>
        <translation type="unfinished">NE SERAIT PAS ACCEPTÉ</translation>
    </message>
    <message>
        <source>Wait until the day is read.</source>
        <translation type="unfinished">Attendez que le jour soit lu.</translation>
    </message>
    <message>
        <source>Wed {number}</source>
        <translation type="unfinished">mer. {number}</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished">mercredi</translation>
    </message>
    <message>
        <source>Weigh again in this order: net as shown, less the whole error, less even growth</source>
        <translation type="unfinished">Repeser dans cet ordre : net affiché, moins l'erreur entière, moins la dérive régulière</translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished">Quoi</translation>
    </message>
    <message>
        <source>What becomes of the bags?</source>
        <translation type="unfinished">Que deviennent les sacs ?</translation>
    </message>
    <message>
        <source>What becomes of {bags}?</source>
        <translation type="unfinished">Que devient {bags} ?</translation>
    </message>
    <message>
        <source>Who decides?</source>
        <translation type="unfinished">Qui décide ?</translation>
    </message>
    <message>
        <source>Who is touched first signs; who is touched second witnesses or releases too</source>
        <translation type="unfinished">Le premier touché signe ; le second est témoin ou libère aussi</translation>
    </message>
    <message>
        <source>Who leads touches why the line may go on</source>
        <translation type="unfinished">Le chef touche pourquoi la ligne peut continuer</translation>
    </message>
    <message>
        <source>Why does the line stop?</source>
        <translation type="unfinished">Pourquoi la ligne s'arrête-t-elle ?</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">Pourquoi l'écarter ?</translation>
    </message>
    <message>
        <source>Why? Choose or type the reason.</source>
        <translation type="unfinished">Pourquoi ? Choisissez ou tapez la raison.</translation>
    </message>
    <message>
        <source>Working a target out from the bags …</source>
        <translation type="unfinished">Calcul d'une cible à partir des sacs …</translation>
    </message>
    <message>
        <source>Working a target out from the bags: {count} tried …</source>
        <translation type="unfinished">Calcul d'une cible à partir des sacs : {count} essayées …</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation type="unfinished">Écriture …</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation type="unfinished">Écrit : {file}</translation>
    </message>
    <message>
        <source>Written: {file} and {count} more in {folder}</source>
        <translation type="unfinished">Écrits : {file} et {count} autres dans {folder}</translation>
    </message>
    <message>
        <source>YIELD OF LOTS</source>
        <translation type="unfinished">RENDEMENT DES LOTS</translation>
    </message>
    <message>
        <source>ZERO</source>
        <translation type="unfinished">ZÉRO</translation>
    </message>
    <message>
        <source>Zero stepped by {step} between {before} and {after}.</source>
        <translation type="unfinished">Le zéro a sauté de {step} entre {before} et {after}.</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">un sac est sur le plateau : finissez-le, levez-le, puis closez la série</translation>
    </message>
    <message>
        <source>a bag that is {what} has no new bag</source>
        <translation type="unfinished">un sac {what} n'a pas de nouveau sac</translation>
    </message>
    <message>
        <source>a bag that is {what} wants a witness: a second person signs</source>
        <translation type="unfinished">un sac {what} demande un témoin : une seconde personne signe</translation>
    </message>
    <message>
        <source>a case was packed short or over</source>
        <translation type="unfinished">une caisse mal comptée</translation>
    </message>
    <message>
        <source>a check failed</source>
        <translation type="unfinished">un contrôle a échoué</translation>
    </message>
    <message>
        <source>a check goes on at the scale: put no bag on it</source>
        <translation type="unfinished">contrôle de la balance en cours : ne posez pas de sac</translation>
    </message>
    <message>
        <source>a check is due soon</source>
        <translation type="unfinished">contrôle bientôt dû</translation>
    </message>
    <message>
        <source>a check is overdue</source>
        <translation type="unfinished">un contrôle est en retard</translation>
    </message>
    <message>
        <source>a check needs test weights: name at least one</source>
        <translation type="unfinished">un contrôle demande des poids étalons : nommez-en au moins un</translation>
    </message>
    <message>
        <source>a copy was printed</source>
        <translation type="unfinished">une copie a été imprimée</translation>
    </message>
    <message>
        <source>a cover is open: close it</source>
        <translation type="unfinished">un capot est ouvert : fermez-le</translation>
    </message>
    <message>
        <source>a decision needs a reason: choose or write why</source>
        <translation type="unfinished">une décision demande une raison : choisissez ou tapez</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">une porte est ouverte : fermez-la</translation>
    </message>
    <message>
        <source>a figure</source>
        <translation type="unfinished">un chiffre</translation>
    </message>
    <message>
        <source>a forecast needs at least two packs</source>
        <translation type="unfinished">une prévision demande au moins deux sacs</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">un lot bloqué est sur la ligne</translation>
    </message>
    <message>
        <source>a hold needs a reason: write why</source>
        <translation type="unfinished">bloquer demande une raison : écrivez-la</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">une étiquette diffère</translation>
    </message>
    <message>
        <source>a load was taken for zero when the scale came back: with the pan empty set the scale to zero, or switch it off and on</source>
        <translation type="unfinished">une charge a été prise pour zéro au retour de la balance : plateau vide, remettez-la à zéro, ou éteignez et rallumez-la</translation>
    </message>
    <message>
        <source>a lot ends soon</source>
        <translation type="unfinished">un lot finit bientôt</translation>
    </message>
    <message>
        <source>a lot should be empty</source>
        <translation type="unfinished">un lot devrait être vide</translation>
    </message>
    <message>
        <source>a new bag</source>
        <translation type="unfinished">un nouveau sac</translation>
    </message>
    <message>
        <source>a new code is made</source>
        <translation type="unfinished">un nouveau code est créé</translation>
    </message>
    <message>
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">un nouveau rouleau commence par une première étiquette</translation>
    </message>
    <message>
        <source>a numbered copy</source>
        <translation type="unfinished">une copie numérotée</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">une pause</translation>
    </message>
    <message>
        <source>a release needs a reason: write why</source>
        <translation type="unfinished">libérer demande une raison : écrivez-la</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">une série est ouverte : closez-la avant la suivante</translation>
    </message>
    <message>
        <source>a run needs a lead and a person on the scale</source>
        <translation type="unfinished">une série demande un chef et une personne à la balance</translation>
    </message>
    <message>
        <source>a scale that says nothing</source>
        <translation type="unfinished">une balance qui ne dit rien</translation>
    </message>
    <message>
        <source>a suspect window of {what} is open ({count} bags)</source>
        <translation type="unfinished">fenêtre suspecte de {what} ouverte ({count} sacs)</translation>
    </message>
    <message>
        <source>a version is not refused</source>
        <translation type="unfinished">une version ne se refuse pas</translation>
    </message>
    <message>
        <source>a weight every {gap} ms</source>
        <translation type="unfinished">un poids toutes les {gap} ms</translation>
    </message>
    <message>
        <source>a whole run is not dumped: hold its bags first</source>
        <translation type="unfinished">on ne jette pas une série entière : bloquez d'abord ses sacs</translation>
    </message>
    <message>
        <source>about {mass} in bags of {loaded} loaded</source>
        <translation type="unfinished">environ {mass} en sacs sur {loaded} chargés</translation>
    </message>
    <message>
        <source>above the highest of the description, {number}</source>
        <translation type="unfinished">au-dessus du maximum décrit, {number}</translation>
    </message>
    <message>
        <source>adds up</source>
        <translation type="unfinished">le compte y est</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">après un arrêt</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation type="unfinished">en avant</translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished">air</translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished">tous</translation>
    </message>
    <message>
        <source>all 999 lot codes of {day} are used: give a code by hand</source>
        <translation type="unfinished">les 999 codes de lot du {day} sont pris : donnez un code à la main</translation>
    </message>
    <message>
        <source>all days</source>
        <translation type="unfinished">tous les jours</translation>
    </message>
    <message>
        <source>all found</source>
        <translation type="unfinished">toutes trouvées</translation>
    </message>
    <message>
        <source>all loads are taken</source>
        <translation type="unfinished">toutes les charges sont prises</translation>
    </message>
    <message>
        <source>all reviewed</source>
        <translation type="unfinished">tout revu</translation>
    </message>
    <message>
        <source>all {count} lines are weights: compare them with what the scale showed</source>
        <translation type="unfinished">les {count} lignes sont des poids : comparez-les à l'affichage</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation type="unfinished">permis</translation>
    </message>
    <message>
        <source>allowed {floor} to {upper}, T1 {t1}, T2 {t2}</source>
        <translation type="unfinished">permis {floor} à {upper}, T1 {t1}, T2 {t2}</translation>
    </message>
    <message>
        <source>an aid to the inspector, no official result</source>
        <translation type="unfinished">une aide à l'inspecteur, pas un résultat officiel</translation>
    </message>
    <message>
        <source>an alarm is not shelved for {minutes} minutes: allowed are {allowed}</source>
        <translation type="unfinished">une alarme ne se reporte pas de {minutes} minutes : permis {allowed}</translation>
    </message>
    <message>
        <source>an empty bag weighs {mass}, {more} more than the tare taken off</source>
        <translation type="unfinished">un sac vide pèse {mass}, {more} de plus que la tare retirée</translation>
    </message>
    <message>
        <source>an order of {count} bags: give 1 or more, or leave it open</source>
        <translation type="unfinished">une commande de {count} sacs : donnez 1 ou plus, ou laissez ouvert</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished">et {count} de plus</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">et {count} de plus, au-dessous</translation>
    </message>
    <message>
        <source>another code was scanned</source>
        <translation type="unfinished">un autre code a été lu</translation>
    </message>
    <message>
        <source>another device is at {code}</source>
        <translation type="unfinished">un autre appareil est sur {code}</translation>
    </message>
    <message>
        <source>another one is set</source>
        <translation type="unfinished">une autre est réglée</translation>
    </message>
    <message>
        <source>another program has it: close that program, or name another port</source>
        <translation type="unfinished">un autre programme l'utilise : fermez-le, ou nommez un autre port</translation>
    </message>
    <message>
        <source>another scale is here, {here}; in use is {known}: take it into use, {where}</source>
        <translation type="unfinished">une autre balance est là, {here} ; en service : {known} : mettez-la en service, {where}</translation>
    </message>
    <message>
        <source>any number</source>
        <translation type="unfinished">tout nombre</translation>
    </message>
    <message>
        <source>applied</source>
        <translation type="unfinished">collée</translation>
    </message>
    <message>
        <source>approve a label</source>
        <translation type="unfinished">approuver une étiquette</translation>
    </message>
    <message>
        <source>approve a product version</source>
        <translation type="unfinished">approuver une version de produit</translation>
    </message>
    <message>
        <source>approve or refuse a target</source>
        <translation type="unfinished">approuver ou refuser une cible</translation>
    </message>
    <message>
        <source>approved</source>
        <translation type="unfinished">approuvée</translation>
    </message>
    <message>
        <source>as far as one approval goes</source>
        <translation type="unfinished">jusqu'où va une approbation</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">avant réglage</translation>
    </message>
    <message>
        <source>as left</source>
        <translation type="unfinished">après réglage</translation>
    </message>
    <message>
        <source>as left, after its adjustment</source>
        <translation type="unfinished">après son réglage</translation>
    </message>
    <message>
        <source>as people.toml says</source>
        <translation type="unfinished">selon people.toml</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation type="unfinished">comme pesé</translation>
    </message>
    <message>
        <source>asked by, as in W\r\n</source>
        <translation type="unfinished">demandé par, comme W\r\n</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">demandé à la ligne …</translation>
    </message>
    <message>
        <source>at least {least} {unit}</source>
        <translation type="unfinished">au moins {least} {unit}</translation>
    </message>
    <message>
        <source>at most {most} {unit}</source>
        <translation type="unfinished">au plus {most} {unit}</translation>
    </message>
    <message>
        <source>at once</source>
        <translation type="unfinished">tout de suite</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">au hasard</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation type="unfinished">au repos</translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">en arrière</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">sac</translation>
    </message>
    <message>
        <source>bag of the run</source>
        <translation type="unfinished">sac de la série</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">sac {code}, lot de film {lot} sans étude de tare : faites-la : {where}</translation>
    </message>
    <message>
        <source>bag {code}: rework of {lot}, last day {day}</source>
        <translation type="unfinished">sac {code} : reprise de {lot}, dernier jour {day}</translation>
    </message>
    <message>
        <source>bag {serial} has had {copies} already: the lead signs for the next one</source>
        <translation type="unfinished">le sac {serial} a déjà eu {copies} : le chef signe la suivante</translation>
    </message>
    <message>
        <source>bag {serial} has had {count} copies: set it aside</source>
        <translation type="unfinished">le sac {serial} a eu {count} copies : écartez-le</translation>
    </message>
    <message>
        <source>bag {serial} is held: it gets no label before QA has released it</source>
        <translation type="unfinished">sac {serial} bloqué : pas d'étiquette avant que la qualité le libère</translation>
    </message>
    <message>
        <source>bag {serial} is of blend lot {lot}, the case of {other}: close this case and begin another</source>
        <translation type="unfinished">le sac {serial} est du lot {lot}, la caisse du {other} : fermez cette caisse et commencez-en une autre</translation>
    </message>
    <message>
        <source>bag {serial} is {what}: scan the label of the new bag</source>
        <translation type="unfinished">sac {serial} {what} : lisez l'étiquette du nouveau</translation>
    </message>
    <message>
        <source>bag {serial} lies under the hold of {what}: have it released first, or dump it</source>
        <translation type="unfinished">le sac {serial} est sous le blocage de {what} : faites-le libérer d'abord, ou jetez-le</translation>
    </message>
    <message>
        <source>bag {serial} was picked already</source>
        <translation type="unfinished">le sac {serial} est déjà pris</translation>
    </message>
    <message>
        <source>bag {serial} was scanned already</source>
        <translation type="unfinished">le sac {serial} est déjà lu</translation>
    </message>
    <message>
        <source>bag, case, pallet or lot</source>
        <translation type="unfinished">sac, caisse, palette ou lot</translation>
    </message>
    <message>
        <source>bag, record</source>
        <translation type="unfinished">sac, relevé</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">sacs</translation>
    </message>
    <message>
        <source>bags are taken again: {why}</source>
        <translation type="unfinished">les sacs sont repris : {why}</translation>
    </message>
    <message>
        <source>bags left on the line were set aside or cooled</source>
        <translation type="unfinished">les sacs restés sur la ligne sont écartés ou refroidis</translation>
    </message>
    <message>
        <source>bags since then looked at</source>
        <translation type="unfinished">sacs depuis lors vérifiés</translation>
    </message>
    <message>
        <source>before bag {count}</source>
        <translation type="unfinished">avant le sac {count}</translation>
    </message>
    <message>
        <source>below T1</source>
        <translation type="unfinished">sous T1</translation>
    </message>
    <message>
        <source>below T1: {count} of at most {most}</source>
        <translation type="unfinished">sous T1 : {count} sur {most} permis</translation>
    </message>
    <message>
        <source>below T2</source>
        <translation type="unfinished">sous T2</translation>
    </message>
    <message>
        <source>below T2: {count}</source>
        <translation type="unfinished">sous T2 : {count}</translation>
    </message>
    <message>
        <source>below T2: {count} of at most {most}</source>
        <translation type="unfinished">sous T2 : {count} sur {most} permis</translation>
    </message>
    <message>
        <source>below floor</source>
        <translation type="unfinished">sous le plancher</translation>
    </message>
    <message>
        <source>below the lowest of the description, {number}</source>
        <translation type="unfinished">sous le minimum décrit, {number}</translation>
    </message>
    <message>
        <source>between the fields stands {one} and also {other}: mark what changes</source>
        <translation type="unfinished">entre les champs il y a {one} et aussi {other} : marquez ce qui change</translation>
    </message>
    <message>
        <source>bin and belt empty</source>
        <translation type="unfinished">bac et tapis vides</translation>
    </message>
    <message>
        <source>bin count</source>
        <translation type="unfinished">compte du bac</translation>
    </message>
    <message>
        <source>blend</source>
        <translation type="unfinished">mélange</translation>
    </message>
    <message>
        <source>blend lot</source>
        <translation type="unfinished">lot de mélange</translation>
    </message>
    <message>
        <source>blend lot code</source>
        <translation type="unfinished">code du lot de mélange</translation>
    </message>
    <message>
        <source>blend {lot}, use-by {day}</source>
        <translation type="unfinished">mélange {lot}, à consommer jusqu'au {day}</translation>
    </message>
    <message>
        <source>both on the label</source>
        <translation type="unfinished">les deux sur l'étiquette</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">pause</translation>
    </message>
    <message>
        <source>burst after its label, destroyed</source>
        <translation type="unfinished">éclaté après étiquette, détruit</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">soudure ouverte</translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished">par</translation>
    </message>
    <message>
        <source>by the record</source>
        <translation type="unfinished">enregistré</translation>
    </message>
    <message>
        <source>by {code}</source>
        <translation type="unfinished">par {code}</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity ({here}), and that this is the scale</source>
        <translation type="unfinished">des octets arrivent mais aucune ligne ne commence ni ne finit : vérifiez débit et parité ({here}), et que c'est bien la balance</translation>
    </message>
    <message>
        <source>bytes arrive but no line ever starts or ends: check baud rate and parity of the converter, and that this is the scale</source>
        <translation type="unfinished">des octets arrivent mais aucune ligne ne commence ni ne finit : vérifiez débit et parité du convertisseur, et que c'est bien la balance</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity ({here})</source>
        <translation type="unfinished">des octets arrivent mais aucune trame : vérifiez débit et parité ({here})</translation>
    </message>
    <message>
        <source>bytes arrive but none is a frame: check baud rate and parity of the converter</source>
        <translation type="unfinished">des octets arrivent mais aucune trame : vérifiez débit et parité du convertisseur</translation>
    </message>
    <message>
        <source>bytes that belong to no frame</source>
        <translation type="unfinished">octets d'aucune trame</translation>
    </message>
    <message>
        <source>bytes that belong to no line</source>
        <translation type="unfinished">octets d'aucune ligne</translation>
    </message>
    <message>
        <source>call QA</source>
        <translation type="unfinished">appelez la qualité</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">appeler quelqu'un</translation>
    </message>
    <message>
        <source>case</source>
        <translation type="unfinished">caisse</translation>
    </message>
    <message>
        <source>case opened</source>
        <translation type="unfinished">caisse ouverte</translation>
    </message>
    <message>
        <source>case {code}</source>
        <translation type="unfinished">caisse {code}</translation>
    </message>
    <message>
        <source>category-b</source>
        <translation type="unfinished">catégorie B</translation>
    </message>
    <message>
        <source>centre of zero</source>
        <translation type="unfinished">centre du zéro</translation>
    </message>
    <message>
        <source>chance to pass the official test</source>
        <translation type="unfinished">chance de passer le test officiel</translation>
    </message>
    <message>
        <source>change every {count} ms</source>
        <translation type="unfinished">changent toutes les {count} ms</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">changer ou expliquer un rouleau</translation>
    </message>
    <message>
        <source>changed after weighing</source>
        <translation type="unfinished">changé après pesée</translation>
    </message>
    <message>
        <source>changed after weighing: {net} is recorded, {found} is on the pan</source>
        <translation type="unfinished">changé après pesée : {net} enregistré, {found} sur le plateau</translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished">contrôle</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">contrôle : {what}</translation>
    </message>
    <message>
        <source>check the plug</source>
        <translation type="unfinished">vérifiez la prise</translation>
    </message>
    <message>
        <source>check the plug, the cable and the {what}'s power</source>
        <translation type="unfinished">vérifiez la prise, le câble et le courant ({what})</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">contrôlez la balance après {what} : {where}</translation>
    </message>
    <message>
        <source>checked again, good</source>
        <translation type="unfinished">recontrôlé, bon</translation>
    </message>
    <message>
        <source>checked was {known}, here is {found}: CHECK IT again</source>
        <translation type="unfinished">contrôlée : {known}, ici : {found} : touchez encore LA CONTRÔLER</translation>
    </message>
    <message>
        <source>checking …</source>
        <translation type="unfinished">vérification …</translation>
    </message>
    <message>
        <source>checks made</source>
        <translation type="unfinished">contrôles faits</translation>
    </message>
    <message>
        <source>checksum {code} does not agree</source>
        <translation type="unfinished">la somme {code} ne concorde pas</translation>
    </message>
    <message>
        <source>choose a lot of {component}</source>
        <translation type="unfinished">choisissez un lot de {component}</translation>
    </message>
    <message>
        <source>choose a product</source>
        <translation type="unfinished">choisissez un produit</translation>
    </message>
    <message>
        <source>choose the product first, then its lots</source>
        <translation type="unfinished">choisissez d'abord le produit, puis ses lots</translation>
    </message>
    <message>
        <source>class {code}</source>
        <translation type="unfinished">classe {code}</translation>
    </message>
    <message>
        <source>class {code} knows no scale interval of {interval} (R 76 Table 3)</source>
        <translation type="unfinished">la classe {code} n'a pas d'échelon de {interval} (R 76 tableau 3)</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation type="unfinished">nettoyage</translation>
    </message>
    <message>
        <source>clear a scan that differed</source>
        <translation type="unfinished">régler une lecture différente</translation>
    </message>
    <message>
        <source>clear the line and sign for it: {where}</source>
        <translation type="unfinished">videz la ligne et signez : {where}</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">fermée</translation>
    </message>
    <message>
        <source>code</source>
        <translation type="unfinished">code</translation>
    </message>
    <message>
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">comparez l'étiquette, puis réglez la lecture</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">complet</translation>
    </message>
    <message>
        <source>component {component} is not known: allowed are {allowed}</source>
        <translation type="unfinished">composant {component} inconnu : permis {allowed}</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">confirmer date et heure</translation>
    </message>
    <message>
        <source>connected by {device}</source>
        <translation type="unfinished">reliée par {device}</translation>
    </message>
    <message>
        <source>cooler temperature</source>
        <translation type="unfinished">température de la chambre froide</translation>
    </message>
    <message>
        <source>correct what was recorded</source>
        <translation type="unfinished">corriger ce qui est enregistré</translation>
    </message>
    <message>
        <source>count on the core was wrong</source>
        <translation type="unfinished">le compte du rouleau était faux</translation>
    </message>
    <message>
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">comptez les sacs de la série d'avant : {where}</translation>
    </message>
    <message>
        <source>counted {count}</source>
        <translation type="unfinished">comptés {count}</translation>
    </message>
    <message>
        <source>counted {count}, agrees</source>
        <translation type="unfinished">comptés {count}, le compte y est</translation>
    </message>
    <message>
        <source>counted {count}, {difference}</source>
        <translation type="unfinished">comptés {count}, {difference}</translation>
    </message>
    <message>
        <source>counted {count}, {difference}: {why}</source>
        <translation type="unfinished">comptés {count}, {difference} : {why}</translation>
    </message>
    <message>
        <source>customer's own limits</source>
        <translation type="unfinished">limites du client</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">date ou heure douteuse</translation>
    </message>
    <message>
        <source>dated step</source>
        <translation type="unfinished">saut daté</translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished">jour</translation>
    </message>
    <message>
        <source>day after</source>
        <translation type="unfinished">jour suivant</translation>
    </message>
    <message>
        <source>day before</source>
        <translation type="unfinished">veille</translation>
    </message>
    <message>
        <source>day, month</source>
        <translation type="unfinished">jour, mois</translation>
    </message>
    <message>
        <source>decide about suspect bags</source>
        <translation type="unfinished">décider des sacs suspects</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">décider du sort d'un sac</translation>
    </message>
    <message>
        <source>declared tare {mass}</source>
        <translation type="unfinished">tare déclarée {mass}</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation type="unfinished">détruite</translation>
    </message>
    <message>
        <source>destructive</source>
        <translation type="unfinished">destructif</translation>
    </message>
    <message>
        <source>destructive-e-mark</source>
        <translation type="unfinished">destructif (℮)</translation>
    </message>
    <message>
        <source>device {code}</source>
        <translation type="unfinished">appareil {code}</translation>
    </message>
    <message>
        <source>differs</source>
        <translation type="unfinished">diffère</translation>
    </message>
    <message>
        <source>digest</source>
        <translation type="unfinished">empreinte</translation>
    </message>
    <message>
        <source>digits it shows</source>
        <translation type="unfinished">chiffres affichés</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation type="unfinished">ne convient pas</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">fait</translation>
    </message>
    <message>
        <source>double</source>
        <translation type="unfinished">double</translation>
    </message>
    <message>
        <source>downgraded</source>
        <translation type="unfinished">déclassé</translation>
    </message>
    <message>
        <source>dumped</source>
        <translation type="unfinished">jeté</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation type="unfinished">vidé</translation>
    </message>
    <message>
        <source>empty</source>
        <translation type="unfinished">vide</translation>
    </message>
    <message>
        <source>empty bag</source>
        <translation type="unfinished">sac vide</translation>
    </message>
    <message>
        <source>empty by now?</source>
        <translation type="unfinished">déjà vide ?</translation>
    </message>
    <message>
        <source>empty pan</source>
        <translation type="unfinished">plateau vide</translation>
    </message>
    <message>
        <source>end a run</source>
        <translation type="unfinished">clore une série</translation>
    </message>
    <message>
        <source>end the run</source>
        <translation type="unfinished">closez la série</translation>
    </message>
    <message>
        <source>enter this</source>
        <translation type="unfinished">enregistrer ceci</translation>
    </message>
    <message>
        <source>equal</source>
        <translation type="unfinished">égal</translation>
    </message>
    <message>
        <source>even</source>
        <translation type="unfinished">régul.</translation>
    </message>
    <message>
        <source>even growth</source>
        <translation type="unfinished">dérive régulière</translation>
    </message>
    <message>
        <source>even parity</source>
        <translation type="unfinished">parité paire</translation>
    </message>
    <message>
        <source>event</source>
        <translation type="unfinished">événement</translation>
    </message>
    <message>
        <source>example {number}, {line}</source>
        <translation type="unfinished">exemple {number}, {line}</translation>
    </message>
    <message>
        <source>expired</source>
        <translation type="unfinished">périmé</translation>
    </message>
    <message>
        <source>expired – take it off the line</source>
        <translation type="unfinished">périmé – retirez-le de la ligne</translation>
    </message>
    <message>
        <source>explained</source>
        <translation type="unfinished">expliqué</translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished">échec</translation>
    </message>
    <message>
        <source>failed: what is done</source>
        <translation type="unfinished">échec : ce qui est fait</translation>
    </message>
    <message>
        <source>fetch the next lot</source>
        <translation type="unfinished">apportez le lot suivant</translation>
    </message>
    <message>
        <source>fetch the next roll</source>
        <translation type="unfinished">apportez le rouleau suivant</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation type="unfinished">de moins</translation>
    </message>
    <message>
        <source>fewer than {count} labels are left</source>
        <translation type="unfinished">il reste moins de {count} étiquettes</translation>
    </message>
    <message>
        <source>field {code}</source>
        <translation type="unfinished">champ {code}</translation>
    </message>
    <message>
        <source>figures do not convince</source>
        <translation type="unfinished">les chiffres ne convainquent pas</translation>
    </message>
    <message>
        <source>fill a case or close a pallet</source>
        <translation type="unfinished">remplir un carton ou clore une palette</translation>
    </message>
    <message>
        <source>fill a little more, look at NUMBERS</source>
        <translation type="unfinished">remplissez un peu plus, voyez CHIFFRES</translation>
    </message>
    <message>
        <source>film or labels</source>
        <translation type="unfinished">film ou étiquettes</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation type="unfinished">se termine</translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished">premier</translation>
    </message>
    <message>
        <source>first label</source>
        <translation type="unfinished">première étiquette</translation>
    </message>
    <message>
        <source>first serial</source>
        <translation type="unfinished">premier numéro</translation>
    </message>
    <message>
        <source>first-off</source>
        <translation type="unfinished">première pièce</translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished">convient</translation>
    </message>
    <message>
        <source>flag</source>
        <translation type="unfinished">drapeau</translation>
    </message>
    <message>
        <source>flags that contradict</source>
        <translation type="unfinished">drapeaux contradictoires</translation>
    </message>
    <message>
        <source>floor {mass}</source>
        <translation type="unfinished">plancher {mass}</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">plancher, cible, maximum</translation>
    </message>
    <message>
        <source>for every product</source>
        <translation type="unfinished">pour chaque produit</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">corps étranger</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">trouvé</translation>
    </message>
    <message>
        <source>frame cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">trame coupée après {count} octets par la suivante</translation>
    </message>
    <message>
        <source>frame of {count} bytes, a weight has {number}</source>
        <translation type="unfinished">trame de {count} octets, un poids en a {number}</translation>
    </message>
    <message>
        <source>frame without an end within {count} bytes</source>
        <translation type="unfinished">trame sans fin en {count} octets</translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished">libre</translation>
    </message>
    <message>
        <source>from {code}</source>
        <translation type="unfinished">dès {code}</translation>
    </message>
    <message>
        <source>from, such as 09:00</source>
        <translation type="unfinished">de, comme 09:00</translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished">complet</translation>
    </message>
    <message>
        <source>gate</source>
        <translation type="unfinished">passage</translation>
    </message>
    <message>
        <source>given away</source>
        <translation type="unfinished">donné en trop</translation>
    </message>
    <message>
        <source>gives away</source>
        <translation type="unfinished">donne en trop</translation>
    </message>
    <message>
        <source>go on after a pause</source>
        <translation type="unfinished">reprendre après une pause</translation>
    </message>
    <message>
        <source>go on after a stop</source>
        <translation type="unfinished">reprendre après un arrêt</translation>
    </message>
    <message>
        <source>gone on after a stop: {why}</source>
        <translation type="unfinished">repris après un arrêt : {why}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">bon</translation>
    </message>
    <message>
        <source>gross</source>
        <translation type="unfinished">brut</translation>
    </message>
    <message>
        <source>gross weight</source>
        <translation type="unfinished">poids brut</translation>
    </message>
    <message>
        <source>guards are shut and tools are counted</source>
        <translation type="unfinished">protecteurs fermés, outils comptés</translation>
    </message>
    <message>
        <source>hands and tools are washed</source>
        <translation type="unfinished">mains et outils lavés</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation type="unfinished">récolté</translation>
    </message>
    <message>
        <source>heaviest gross {mass} against Max {most}</source>
        <translation type="unfinished">brut le plus lourd {mass} pour Max {most}</translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished">bloqué</translation>
    </message>
    <message>
        <source>held at the line</source>
        <translation type="unfinished">bloqué à la ligne</translation>
    </message>
    <message>
        <source>held up by</source>
        <translation type="unfinished">retenue par</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">bloqué – appelez la qualité</translation>
    </message>
    <message>
        <source>here: {line}</source>
        <translation type="unfinished">ici : {line}</translation>
    </message>
    <message>
        <source>high resolution</source>
        <translation type="unfinished">haute résolution</translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished">bloquer</translation>
    </message>
    <message>
        <source>hold down</source>
        <translation type="unfinished">maintenir appuyé</translation>
    </message>
    <message>
        <source>hold stays</source>
        <translation type="unfinished">reste bloqué</translation>
    </message>
    <message>
        <source>hold the button</source>
        <translation type="unfinished">maintenir appuyé</translation>
    </message>
    <message>
        <source>hold, no record</source>
        <translation type="unfinished">bloquer, sans relevé</translation>
    </message>
    <message>
        <source>holds</source>
        <translation type="unfinished">blocages</translation>
    </message>
    <message>
        <source>holds from</source>
        <translation type="unfinished">vaut dès</translation>
    </message>
    <message>
        <source>hour</source>
        <translation type="unfinished">heure</translation>
    </message>
    <message>
        <source>id of the label roll</source>
        <translation type="unfinished">id du rouleau d'étiquettes</translation>
    </message>
    <message>
        <source>id of the run</source>
        <translation type="unfinished">id de la série</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation type="unfinished">douteuse</translation>
    </message>
    <message>
        <source>in money</source>
        <translation type="unfinished">en argent</translation>
    </message>
    <message>
        <source>in motion</source>
        <translation type="unfinished">en mouvement</translation>
    </message>
    <message>
        <source>in no case</source>
        <translation type="unfinished">dans aucune caisse</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">dans le sac {mass}</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation type="unfinished">en stock</translation>
    </message>
    <message>
        <source>in the printer</source>
        <translation type="unfinished">dans l'imprimante</translation>
    </message>
    <message>
        <source>in window</source>
        <translation type="unfinished">dans la fenêtre</translation>
    </message>
    <message>
        <source>in {number} min</source>
        <translation type="unfinished">dans {number} min</translation>
    </message>
    <message>
        <source>in-service error at {gross} gross {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">erreur en service à {gross} brut : {mass} pour {share} de {limit} = {most}</translation>
    </message>
    <message>
        <source>initial zero error</source>
        <translation type="unfinished">erreur de zéro initial</translation>
    </message>
    <message>
        <source>input lot</source>
        <translation type="unfinished">lot d'entrée</translation>
    </message>
    <message>
        <source>input lot code</source>
        <translation type="unfinished">code du lot d'entrée</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished">instrument</translation>
    </message>
    <message>
        <source>interval {mass}</source>
        <translation type="unfinished">échelon {mass}</translation>
    </message>
    <message>
        <source>it came too slowly, or was too short, for a scanner</source>
        <translation type="unfinished">trop lent, ou trop court, pour un lecteur</translation>
    </message>
    <message>
        <source>it came too warm, or damaged: QA decides</source>
        <translation type="unfinished">arrivé trop chaud ou abîmé : la qualité décide</translation>
    </message>
    <message>
        <source>it changes: mark it on each line</source>
        <translation type="unfinished">elle change : marquez-la sur chaque ligne</translation>
    </message>
    <message>
        <source>it comes back without help</source>
        <translation type="unfinished">la connexion revient d'elle-même</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">elle ne répond pas : allumée, câble branché ?</translation>
    </message>
    <message>
        <source>it does not end with Enter</source>
        <translation type="unfinished">il ne finit pas par Entrée</translation>
    </message>
    <message>
        <source>it does not suit {products}: use another scale</source>
        <translation type="unfinished">elle ne convient pas à {products} : prenez une autre balance</translation>
    </message>
    <message>
        <source>it failed its check with test weights: have it adjusted, then check it again</source>
        <translation type="unfinished">elle a échoué au contrôle avec poids étalons : faites-la régler, puis recontrôlez</translation>
    </message>
    <message>
        <source>it is held until a person releases it</source>
        <translation type="unfinished">elle est retenue jusqu'à ce que quelqu'un la libère</translation>
    </message>
    <message>
        <source>it is no serial port</source>
        <translation type="unfinished">ce n'est pas un port série</translation>
    </message>
    <message>
        <source>it is not there: check the plug</source>
        <translation type="unfinished">il n'est pas là : vérifiez la prise</translation>
    </message>
    <message>
        <source>it is {found}, the {what}'s is {known}: plug that one in again, or stop and start the station to take this one</source>
        <translation type="unfinished">c'est {found}, l'appareil connu ({what}) est {known} : rebranchez-le, ou arrêtez et relancez la station pour prendre celui-ci</translation>
    </message>
    <message>
        <source>it just stays without approval</source>
        <translation type="unfinished">elle reste sans approbation</translation>
    </message>
    <message>
        <source>it lacks what the station's scanner types first</source>
        <translation type="unfinished">il manque ce que le lecteur du poste tape d'abord</translation>
    </message>
    <message>
        <source>it never came out</source>
        <translation type="unfinished">jamais sortie</translation>
    </message>
    <message>
        <source>it reached the scale damaged, nothing was done</source>
        <translation type="unfinished">arrivé abîmé à la balance, rien n'a été fait</translation>
    </message>
    <message>
        <source>it was cancelled</source>
        <translation type="unfinished">elle a été annulée</translation>
    </message>
    <message>
        <source>it was cancelled before printing</source>
        <translation type="unfinished">elle a été annulée avant l'impression</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s</source>
        <translation type="unfinished">elle n'était pas sortie après {seconds} s</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s ({why})</source>
        <translation type="unfinished">elle n'était pas sortie après {seconds} s ({why})</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">pas sortie après {seconds} s : regardez si elle sort</translation>
    </message>
    <message>
        <source>its bag goes out</source>
        <translation type="unfinished">son sac sort</translation>
    </message>
    <message>
        <source>its marks overlap or leave the line</source>
        <translation type="unfinished">ses marques se chevauchent ou sortent</translation>
    </message>
    <message>
        <source>its run ended before the printer said that it came out</source>
        <translation type="unfinished">la série s'est close avant que l'imprimante confirme la sortie</translation>
    </message>
    <message>
        <source>its use-by {day} is past: end the run</source>
        <translation type="unfinished">sa date limite {day} est passée : closez la série</translation>
    </message>
    <message>
        <source>jammed in the printer</source>
        <translation type="unfinished">coincée dans l'imprimante</translation>
    </message>
    <message>
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">garder, restaurer ou purger le registre</translation>
    </message>
    <message>
        <source>kept as {file} and named in station.toml</source>
        <translation type="unfinished">gardé sous {file} et nommé dans station.toml</translation>
    </message>
    <message>
        <source>knee</source>
        <translation type="unfinished">coude</translation>
    </message>
    <message>
        <source>label</source>
        <translation type="unfinished">étiquette</translation>
    </message>
    <message>
        <source>label destroyed</source>
        <translation type="unfinished">étiquette détruite</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">étiquette annulée</translation>
    </message>
    <message>
        <source>label never printed</source>
        <translation type="unfinished">étiquette jamais imprimée</translation>
    </message>
    <message>
        <source>label of another run taken out</source>
        <translation type="unfinished">étiquette d'une autre série retirée</translation>
    </message>
    <message>
        <source>label of the roll</source>
        <translation type="unfinished">étiquette du rouleau</translation>
    </message>
    <message>
        <source>label on bag</source>
        <translation type="unfinished">étiquette sur le sac</translation>
    </message>
    <message>
        <source>label roll</source>
        <translation type="unfinished">rouleau d'étiquettes</translation>
    </message>
    <message>
        <source>label scan</source>
        <translation type="unfinished">lecture d'étiquette</translation>
    </message>
    <message>
        <source>label spoiled</source>
        <translation type="unfinished">étiquette abîmée</translation>
    </message>
    <message>
        <source>label {code}</source>
        <translation type="unfinished">étiquette {code}</translation>
    </message>
    <message>
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">étiquette {serial} douteuse : {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">l'étiquette {serial} n'est pas sortie : voyez l'imprimante</translation>
    </message>
    <message>
        <source>label {serial} is printed again, marked {mark}</source>
        <translation type="unfinished">l'étiquette {serial} est réimprimée, marquée {mark}</translation>
    </message>
    <message>
        <source>label {serial} may still come out: cancel it at the printer, or wait</source>
        <translation type="unfinished">l'étiquette {serial} peut encore sortir : annulez-la à l'imprimante ou attendez</translation>
    </message>
    <message>
        <source>labels are jammed: clear them</source>
        <translation type="unfinished">bourrage d'étiquettes : dégagez-les</translation>
    </message>
    <message>
        <source>labels are not taken away: take them away</source>
        <translation type="unfinished">étiquettes non retirées : retirez-les</translation>
    </message>
    <message>
        <source>labels on it {count}</source>
        <translation type="unfinished">étiquettes dessus {count}</translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished">dernier</translation>
    </message>
    <message>
        <source>last 7 days</source>
        <translation type="unfinished">7 derniers jours</translation>
    </message>
    <message>
        <source>last day</source>
        <translation type="unfinished">dernier jour</translation>
    </message>
    <message>
        <source>last day {day}</source>
        <translation type="unfinished">dernier jour {day}</translation>
    </message>
    <message>
        <source>last label</source>
        <translation type="unfinished">dernière étiquette</translation>
    </message>
    <message>
        <source>last of it</source>
        <translation type="unfinished">le reste</translation>
    </message>
    <message>
        <source>last serial</source>
        <translation type="unfinished">dernier numéro</translation>
    </message>
    <message>
        <source>last {what}</source>
        <translation type="unfinished">dernier {what}</translation>
    </message>
    <message>
        <source>lead</source>
        <translation type="unfinished">chef de ligne</translation>
    </message>
    <message>
        <source>lead {code}</source>
        <translation type="unfinished">chef {code}</translation>
    </message>
    <message>
        <source>lead, on the scale</source>
        <translation type="unfinished">chef, à la balance</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">quitter le plein écran</translation>
    </message>
    <message>
        <source>less the stops</source>
        <translation type="unfinished">hors arrêts</translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished">léger</translation>
    </message>
    <message>
        <source>line cleared</source>
        <translation type="unfinished">ligne vidée</translation>
    </message>
    <message>
        <source>line cut off after {count} bytes by the start of the next</source>
        <translation type="unfinished">ligne coupée après {count} octets par la suivante</translation>
    </message>
    <message>
        <source>line error</source>
        <translation type="unfinished">erreur de ligne</translation>
    </message>
    <message>
        <source>line that does not fit the pattern of its description</source>
        <translation type="unfinished">ligne hors du modèle décrit</translation>
    </message>
    <message>
        <source>line without an end within {count} bytes</source>
        <translation type="unfinished">ligne sans fin en {count} octets</translation>
    </message>
    <message>
        <source>line {code}</source>
        <translation type="unfinished">ligne {code}</translation>
    </message>
    <message>
        <source>line {number}</source>
        <translation type="unfinished">ligne {number}</translation>
    </message>
    <message>
        <source>lines</source>
        <translation type="unfinished">lignes</translation>
    </message>
    <message>
        <source>loaded</source>
        <translation type="unfinished">chargé</translation>
    </message>
    <message>
        <source>look at date and time, then sign</source>
        <translation type="unfinished">vérifiez date et heure, puis signez</translation>
    </message>
    <message>
        <source>look at the bag and its label, then GO ON</source>
        <translation type="unfinished">regardez le sac et son étiquette, puis CONTINUER</translation>
    </message>
    <message>
        <source>look at the printer</source>
        <translation type="unfinished">voyez l'imprimante</translation>
    </message>
    <message>
        <source>look at the scale's cable and power</source>
        <translation type="unfinished">vérifiez câble et courant de la balance</translation>
    </message>
    <message>
        <source>look whether a label came out</source>
        <translation type="unfinished">regardez si une étiquette est sortie</translation>
    </message>
    <message>
        <source>look whether it comes out</source>
        <translation type="unfinished">regardez si elle sort</translation>
    </message>
    <message>
        <source>look whether the label is whole</source>
        <translation type="unfinished">regardez si l'étiquette est entière</translation>
    </message>
    <message>
        <source>looked at another clock: right now</source>
        <translation type="unfinished">autre horloge vue : à l'heure</translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished">lot</translation>
    </message>
    <message>
        <source>lot code {code} cannot be printed: allowed are 1 to 20 of the characters A-Z 0-9 . / - (no blanks, no small letters)</source>
        <translation type="unfinished">le code de lot {code} ne peut être imprimé : 1 à 20 caractères A-Z 0-9 . / - (ni blancs ni minuscules)</translation>
    </message>
    <message>
        <source>lot {code}</source>
        <translation type="unfinished">lot {code}</translation>
    </message>
    <message>
        <source>lot {lot} had its last day on {day}: it must not be used</source>
        <translation type="unfinished">le dernier jour du lot {lot} était le {day} : ne pas l'utiliser</translation>
    </message>
    <message>
        <source>lot {lot} is already in the record as another delivery ({component} from {supplier}, received {day}): leave the code empty to get a new one</source>
        <translation type="unfinished">le lot {lot} est déjà enregistré pour une autre livraison ({component} de {supplier}, reçu le {day}) : laissez le code vide pour en avoir un nouveau</translation>
    </message>
    <message>
        <source>lot {lot} is held</source>
        <translation type="unfinished">lot {lot} bloqué</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">lot {lot} bloqué : retirez-le et chargez-en un autre : {where}</translation>
    </message>
    <message>
        <source>lot {lot} is nearly empty</source>
        <translation type="unfinished">lot {lot} presque vide</translation>
    </message>
    <message>
        <source>lot {lot} is not in the record: receive it before the run</source>
        <translation type="unfinished">le lot {lot} n'est pas enregistré : recevez-le avant la série</translation>
    </message>
    <message>
        <source>lot {lot} is not known: check the code</source>
        <translation type="unfinished">lot {lot} inconnu : vérifiez le code</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">lot {lot} inconnu : réceptionnez-le d'abord</translation>
    </message>
    <message>
        <source>lot {lot} is not on the line: on it are {lots}</source>
        <translation type="unfinished">le lot {lot} n'est pas sur la ligne : il y a {lots}</translation>
    </message>
    <message>
        <source>lot {lot} is on the line and on no label: take it off: {where}</source>
        <translation type="unfinished">lot {lot} sur la ligne mais sur aucune étiquette : retirez-le : {where}</translation>
    </message>
    <message>
        <source>lot {lot} is {component}, which {product} does not contain: allowed are {allowed}</source>
        <translation type="unfinished">le lot {lot} est {component}, absent de {product} : sont admis {allowed}</translation>
    </message>
    <message>
        <source>lot {lot} is {status}: it must not be used, call QA</source>
        <translation type="unfinished">lot {lot} {status} : ne pas l'utiliser, appelez la qualité</translation>
    </message>
    <message>
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lot {lot} : {why}</translation>
    </message>
    <message>
        <source>lot {lot} of {supplier} was received already on {day}: load it, do not receive it again</source>
        <translation type="unfinished">le lot {lot} de {supplier} a déjà été reçu le {day} : chargez-le, ne le recevez pas deux fois</translation>
    </message>
    <message>
        <source>lot {lot}: harvested {harvested} after it was received {received}</source>
        <translation type="unfinished">lot {lot} : récolté le {harvested}, après sa réception le {received}</translation>
    </message>
    <message>
        <source>lot {lot}: no person holds it; lots.toml says what it is</source>
        <translation type="unfinished">lot {lot} : personne ne le bloque ; lots.toml le dit</translation>
    </message>
    <message>
        <source>lot {lot}: packed {packed} after it was received {received}</source>
        <translation type="unfinished">lot {lot} : emballé le {packed}, après sa réception le {received}</translation>
    </message>
    <message>
        <source>lot {lot}: waste needs its mass: weigh it</source>
        <translation type="unfinished">lot {lot} : la perte demande son poids : pesez-la</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} came: give more than nothing, or no mass</source>
        <translation type="unfinished">lot {lot} : reçu {mass} : donnez plus que rien, ou pas de poids</translation>
    </message>
    <message>
        <source>lot {lot}: {mass} is below nothing</source>
        <translation type="unfinished">lot {lot} : {mass} est moins que rien</translation>
    </message>
    <message>
        <source>lot {lot}: {warmth} °C on arrival: allowed are {least} to {most} °C</source>
        <translation type="unfinished">lot {lot} : {warmth} °C à l'arrivée : permis {least} à {most} °C</translation>
    </message>
    <message>
        <source>lots</source>
        <translation type="unfinished">lots</translation>
    </message>
    <message>
        <source>lots changed while a bag was on the pan: lift it before the next change</source>
        <translation type="unfinished">les lots ont changé avec un sac sur le plateau : retirez-le avant le prochain changement</translation>
    </message>
    <message>
        <source>lots {lots}</source>
        <translation type="unfinished">lots {lots}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">machine</translation>
    </message>
    <message>
        <source>made by machine, not reviewed: {said}</source>
        <translation type="unfinished">faites par machine, non revues : {said}</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation type="unfinished">maintenance</translation>
    </message>
    <message>
        <source>make the check</source>
        <translation type="unfinished">faites le contrôle</translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished">responsable</translation>
    </message>
    <message>
        <source>many frames arrive damaged: check plug and cable, keep it away from motors, and see that no other program reads this port</source>
        <translation type="unfinished">beaucoup de trames arrivent abîmées : vérifiez prise et câble, éloignez-le des moteurs, et qu'aucun autre programme ne lise ce port</translation>
    </message>
    <message>
        <source>mark no control characters, and nothing after the end</source>
        <translation type="unfinished">ne marquez ni caractères de contrôle ni rien après la fin</translation>
    </message>
    <message>
        <source>mark the same fields on each line, in the same order</source>
        <translation type="unfinished">marquez les mêmes champs sur chaque ligne, dans le même ordre</translation>
    </message>
    <message>
        <source>mark the value on each line</source>
        <translation type="unfinished">marquez la valeur sur chaque ligne</translation>
    </message>
    <message>
        <source>mark two or more, with different weights on the pan</source>
        <translation type="unfinished">marquez-en deux ou plus, avec des poids différents</translation>
    </message>
    <message>
        <source>may be run</source>
        <translation type="unfinished">peut être produit</translation>
    </message>
    <message>
        <source>may not be run</source>
        <translation type="unfinished">ne peut être produit</translation>
    </message>
    <message>
        <source>mean + {factor} s ≥ {nominal}: {holds} so far</source>
        <translation type="unfinished">moyenne + {factor} s ≥ {nominal} : {holds} jusqu'ici</translation>
    </message>
    <message>
        <source>mean in the official sample</source>
        <translation type="unfinished">moyenne dans l'échantillon officiel</translation>
    </message>
    <message>
        <source>mean net</source>
        <translation type="unfinished">net moyen</translation>
    </message>
    <message>
        <source>mean of the whole batch</source>
        <translation type="unfinished">moyenne du lot entier</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}</source>
        <translation type="unfinished">moyenne {mean}, s {spread}</translation>
    </message>
    <message>
        <source>mean {mean}, s {spread}, {count} bags</source>
        <translation type="unfinished">moyenne {mean}, s {spread}, {count} sacs</translation>
    </message>
    <message>
        <source>mean {number}</source>
        <translation type="unfinished">moyenne {number}</translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished">respecté</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">détecteur de métaux</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished">minutes</translation>
    </message>
    <message>
        <source>missed {pieces}</source>
        <translation type="unfinished">manquées {pieces}</translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished">de plus</translation>
    </message>
    <message>
        <source>more bytes arrive than a scale sends: is this the scale's line?</source>
        <translation type="unfinished">il arrive plus d'octets qu'une balance n'en envoie : est-ce sa ligne ?</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">déplacer un lot sur la ligne</translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished">nom</translation>
    </message>
    <message>
        <source>name of the format</source>
        <translation type="unfinished">nom du format</translation>
    </message>
    <message>
        <source>name of the inspector</source>
        <translation type="unfinished">nom de l'inspecteur</translation>
    </message>
    <message>
        <source>name the inspector: scan or type who tests</source>
        <translation type="unfinished">nommez l'inspecteur : lisez ou tapez qui teste</translation>
    </message>
    <message>
        <source>name the wash record: tank and number, as the wash step names it</source>
        <translation type="unfinished">nommez le relevé de lavage : cuve et numéro, comme au lavage</translation>
    </message>
    <message>
        <source>near Max</source>
        <translation type="unfinished">près du max</translation>
    </message>
    <message>
        <source>near the tare</source>
        <translation type="unfinished">près de la tare</translation>
    </message>
    <message>
        <source>net</source>
        <translation type="unfinished">net</translation>
    </message>
    <message>
        <source>net below {mass}</source>
        <translation type="unfinished">net sous {mass}</translation>
    </message>
    <message>
        <source>net below {mass}; {count} below T2</source>
        <translation type="unfinished">net sous {mass} ; {count} sous T2</translation>
    </message>
    <message>
        <source>net fill</source>
        <translation type="unfinished">remplissage net</translation>
    </message>
    <message>
        <source>net {mass}: {verdict}</source>
        <translation type="unfinished">net {mass} : {verdict}</translation>
    </message>
    <message>
        <source>never came out</source>
        <translation type="unfinished">jamais sortie</translation>
    </message>
    <message>
        <source>never printed</source>
        <translation type="unfinished">jamais imprimée</translation>
    </message>
    <message>
        <source>new bag {serial}</source>
        <translation type="unfinished">nouveau sac {serial}</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">ni PIN ni badge</translation>
    </message>
    <message>
        <source>no USB device</source>
        <translation type="unfinished">aucun appareil USB</translation>
    </message>
    <message>
        <source>no bag</source>
        <translation type="unfinished">aucun sac</translation>
    </message>
    <message>
        <source>no bag is expected any more</source>
        <translation type="unfinished">plus aucun sac n'est attendu</translation>
    </message>
    <message>
        <source>no bag is on record yet</source>
        <translation type="unfinished">aucun sac enregistré</translation>
    </message>
    <message>
        <source>no bag is taken: {why}</source>
        <translation type="unfinished">aucun sac n'est pris : {why}</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">aucun de ces sacs n'est un produit</translation>
    </message>
    <message>
        <source>no bag of this run is labelled yet: pack one, then scan its label</source>
        <translation type="unfinished">aucun sac de cette série n'est étiqueté : emballez-en un, puis lisez son étiquette</translation>
    </message>
    <message>
        <source>no bag of {scope} {name} is in the record: nothing is held</source>
        <translation type="unfinished">aucun sac de {scope} {name} n'est enregistré : rien n'est bloqué</translation>
    </message>
    <message>
        <source>no checksum known here agrees on all lines: mark another field, or none</source>
        <translation type="unfinished">aucune somme connue ne concorde partout : marquez un autre champ, ou aucun</translation>
    </message>
    <message>
        <source>no copy</source>
        <translation type="unfinished">aucune copie</translation>
    </message>
    <message>
        <source>no day given</source>
        <translation type="unfinished">aucun jour donné</translation>
    </message>
    <message>
        <source>no error at any load</source>
        <translation type="unfinished">aucune erreur à aucune charge</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">aucun chiffre</translation>
    </message>
    <message>
        <source>no good bag yet</source>
        <translation type="unfinished">aucun sac bon encore</translation>
    </message>
    <message>
        <source>no good check of {what} after the last bag</source>
        <translation type="unfinished">aucun bon contrôle de {what} après le dernier sac</translation>
    </message>
    <message>
        <source>no good check of {what} in the run</source>
        <translation type="unfinished">aucun bon contrôle de {what} dans la série</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">aucun rouleau d'étiquettes : lisez-en un dans {where}</translation>
    </message>
    <message>
        <source>no labelled bag of the last run is loose</source>
        <translation type="unfinished">aucun sac étiqueté de la dernière série n'est libre</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">plus d'étiquettes : chargez un rouleau</translation>
    </message>
    <message>
        <source>no lot of {component} may be used on {day}</source>
        <translation type="unfinished">aucun lot de {component} n'est utilisable le {day}</translation>
    </message>
    <message>
        <source>no old product on line, pan or floor</source>
        <translation type="unfinished">plus d'ancien produit sur ligne, plateau, sol</translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished">sans prix</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">pas de produit</translation>
    </message>
    <message>
        <source>no product has it</source>
        <translation type="unfinished">aucun produit ne l'a</translation>
    </message>
    <message>
        <source>no proposal worked out yet</source>
        <translation type="unfinished">aucune proposition calculée</translation>
    </message>
    <message>
        <source>no rate yet</source>
        <translation type="unfinished">pas de cadence</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished">pas de mesure</translation>
    </message>
    <message>
        <source>no reading with a bag on the pan</source>
        <translation type="unfinished">pas de mesure avec un sac sur le plateau</translation>
    </message>
    <message>
        <source>no roll is in</source>
        <translation type="unfinished">aucun rouleau en place</translation>
    </message>
    <message>
        <source>no run is open</source>
        <translation type="unfinished">aucune série ouverte</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">aucune série ouverte : le chef en ouvre une</translation>
    </message>
    <message>
        <source>no run yet</source>
        <translation type="unfinished">pas encore de série</translation>
    </message>
    <message>
        <source>no scale yet</source>
        <translation type="unfinished">pas encore de balance</translation>
    </message>
    <message>
        <source>no scan differed: there is nothing to clear</source>
        <translation type="unfinished">aucune lecture n'a différé : rien à régler</translation>
    </message>
    <message>
        <source>no single test weight of {mass}: use 1, 2 or 5 times a power of ten from 1 g to 20 kg</source>
        <translation type="unfinished">pas de poids étalon unique de {mass} : 1, 2 ou 5 fois une puissance de dix, de 1 g à 20 kg</translation>
    </message>
    <message>
        <source>no target meets every clause: the fills scatter too much</source>
        <translation type="unfinished">aucune cible ne satisfait tout : les remplissages varient trop</translation>
    </message>
    <message>
        <source>no time service has kept the clock right for {time}</source>
        <translation type="unfinished">aucun service de temps n'a réglé l'horloge depuis {time}</translation>
    </message>
    <message>
        <source>no weight</source>
        <translation type="unfinished">aucun poids</translation>
    </message>
    <message>
        <source>nobody may ship them</source>
        <translation type="unfinished">à ne pas expédier</translation>
    </message>
    <message>
        <source>nobody signed</source>
        <translation type="unfinished">personne n'a signé</translation>
    </message>
    <message>
        <source>nobody who may sign has a PIN or badge: station people pin</source>
        <translation type="unfinished">personne pouvant signer n'a de PIN ni de badge : station people pin</translation>
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
        <translation type="unfinished">nominal {mass} pour Min {least}</translation>
    </message>
    <message>
        <source>nominal {mass} against {count} intervals of {interval}</source>
        <translation type="unfinished">nominal {mass} pour {count} échelons de {interval}</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">aucune</translation>
    </message>
    <message>
        <source>none left on line</source>
        <translation type="unfinished">plus rien sur la ligne</translation>
    </message>
    <message>
        <source>none of what was heard is a weight by this description</source>
        <translation type="unfinished">rien d'entendu n'est un poids selon cette description</translation>
    </message>
    <message>
        <source>none was taken into use on record yet</source>
        <translation type="unfinished">aucune mise en service enregistrée</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">aucun encore</translation>
    </message>
    <message>
        <source>not a multiple of {number}</source>
        <translation type="unfinished">pas un multiple de {number}</translation>
    </message>
    <message>
        <source>not clear yet: {point}</source>
        <translation type="unfinished">pas encore vidée : {point}</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation type="unfinished">pas encore compté</translation>
    </message>
    <message>
        <source>not due</source>
        <translation type="unfinished">pas dû</translation>
    </message>
    <message>
        <source>not fit to sell</source>
        <translation type="unfinished">impropre à la vente</translation>
    </message>
    <message>
        <source>not found: QA decides</source>
        <translation type="unfinished">introuvable : la qualité décide</translation>
    </message>
    <message>
        <source>not judged: {why}</source>
        <translation type="unfinished">non jugé : {why}</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">sans étiquette : {reason}</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">pas maintenant</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">non imprimée</translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished">non dit</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation type="unfinished">non pesé</translation>
    </message>
    <message>
        <source>not weighed in</source>
        <translation type="unfinished">pas pesé à l'entrée</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">pas encore relu</translation>
    </message>
    <message>
        <source>not yet: {what}</source>
        <translation type="unfinished">pas encore : {what}</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">note</translation>
    </message>
    <message>
        <source>nothing about the clock is open</source>
        <translation type="unfinished">rien n'est ouvert pour l'horloge</translation>
    </message>
    <message>
        <source>nothing on the pan</source>
        <translation type="unfinished">rien sur le plateau</translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished">état</translation>
    </message>
    <message>
        <source>now {number}</source>
        <translation type="unfinished">maintenant {number}</translation>
    </message>
    <message>
        <source>odd parity</source>
        <translation type="unfinished">parité impaire</translation>
    </message>
    <message>
        <source>of everything the version says</source>
        <translation type="unfinished">de tout ce que dit la version</translation>
    </message>
    <message>
        <source>of the last bag</source>
        <translation type="unfinished">du dernier sac</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">sur {count} sacs</translation>
    </message>
    <message>
        <source>old labels and film are off the line</source>
        <translation type="unfinished">anciens films et étiquettes enlevés</translation>
    </message>
    <message>
        <source>old lots are closed or returned</source>
        <translation type="unfinished">anciens lots fermés ou rendus</translation>
    </message>
    <message>
        <source>on another pallet</source>
        <translation type="unfinished">sur une autre palette</translation>
    </message>
    <message>
        <source>on no label</source>
        <translation type="unfinished">sur aucune étiquette</translation>
    </message>
    <message>
        <source>on the line</source>
        <translation type="unfinished">sur la ligne</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">à la balance : {who}</translation>
    </message>
    <message>
        <source>on the {count} bags to come</source>
        <translation type="unfinished">sur les {count} sacs à venir</translation>
    </message>
    <message>
        <source>on the {count} bags to come, any above the floor will do</source>
        <translation type="unfinished">sur les {count} sacs à venir, tout au-dessus du plancher suffit</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">sur {code} ne revient que ce que la station envoie : la balance est-elle allumée, câble, réglages ?</translation>
    </message>
    <message>
        <source>on {code} comes back what the station sends, and nothing else: check that the scale is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">sur {code} ne revient que ce que la station envoie : la balance est-elle allumée, câble, réglages ? ({here})</translation>
    </message>
    <message>
        <source>one line comes again and again and is no weight ({why}): see what the scale shows, such as an error, another unit or another mode, and set it back</source>
        <translation type="unfinished">la même ligne revient toujours et n'est pas un poids ({why}) : voyez ce que montre la balance (erreur, autre unité, autre mode) et remettez-la</translation>
    </message>
    <message>
        <source>one new bag stands for one reject: touch one alone</source>
        <translation type="unfinished">un nouveau sac vaut un rebut : touchez-en un seul</translation>
    </message>
    <message>
        <source>one of {count} bags</source>
        <translation type="unfinished">un des {count} sacs</translation>
    </message>
    <message>
        <source>only a lead goes on after a mismatch</source>
        <translation type="unfinished">seul un chef continue après un écart</translation>
    </message>
    <message>
        <source>only just suits</source>
        <translation type="unfinished">convient juste</translation>
    </message>
    <message>
        <source>only where in doubt</source>
        <translation type="unfinished">seulement si douteuse</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">ouvert</translation>
    </message>
    <message>
        <source>open order</source>
        <translation type="unfinished">commande libre</translation>
    </message>
    <message>
        <source>or scan a badge</source>
        <translation type="unfinished">ou lisez un badge</translation>
    </message>
    <message>
        <source>or the day</source>
        <translation type="unfinished">ou le jour</translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished">autre</translation>
    </message>
    <message>
        <source>other unit {found}, the line runs in {unit}: set the scale back</source>
        <translation type="unfinished">autre unité, {found} ; la ligne travaille en {unit} : réglez la balance</translation>
    </message>
    <message>
        <source>out of bags</source>
        <translation type="unfinished">sorti des sacs</translation>
    </message>
    <message>
        <source>over capacity</source>
        <translation type="unfinished">au-dessus de la portée</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">surcharge : retirez la charge</translation>
    </message>
    <message>
        <source>over capacity: take the load off the pan</source>
        <translation type="unfinished">surcharge : retirez la charge du plateau</translation>
    </message>
    <message>
        <source>packed</source>
        <translation type="unfinished">emballé</translation>
    </message>
    <message>
        <source>packed {day}</source>
        <translation type="unfinished">emballé {day}</translation>
    </message>
    <message>
        <source>packed {time} by {who}, production day {day}</source>
        <translation type="unfinished">emballé {time} par {who}, jour de production {day}</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">emballeur</translation>
    </message>
    <message>
        <source>pallet</source>
        <translation type="unfinished">palette</translation>
    </message>
    <message>
        <source>pallet broken up</source>
        <translation type="unfinished">palette défaite</translation>
    </message>
    <message>
        <source>pallet {code}</source>
        <translation type="unfinished">palette {code}</translation>
    </message>
    <message>
        <source>pan, chute and tools are clean and dry</source>
        <translation type="unfinished">plateau, goulotte, outils propres et secs</translation>
    </message>
    <message>
        <source>paper: delivery note 12</source>
        <translation type="unfinished">papier : bon de livraison 12</translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished">réussi</translation>
    </message>
    <message>
        <source>pause</source>
        <translation type="unfinished">pause</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">prévoyez le contrôle</translation>
    </message>
    <message>
        <source>plate {code}</source>
        <translation type="unfinished">plaque {code}</translation>
    </message>
    <message>
        <source>plus or minus</source>
        <translation type="unfinished">plus ou moins</translation>
    </message>
    <message>
        <source>poor print</source>
        <translation type="unfinished">mauvaise impression</translation>
    </message>
    <message>
        <source>port {code}</source>
        <translation type="unfinished">port {code}</translation>
    </message>
    <message>
        <source>position</source>
        <translation type="unfinished">poste</translation>
    </message>
    <message>
        <source>present are</source>
        <translation type="unfinished">présents</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">réimprimer une étiquette</translation>
    </message>
    <message>
        <source>print unreadable</source>
        <translation type="unfinished">impression illisible</translation>
    </message>
    <message>
        <source>product</source>
        <translation type="unfinished">produit</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">température du produit</translation>
    </message>
    <message>
        <source>product {product} cannot run on this scale: {why}</source>
        <translation type="unfinished">le produit {product} ne peut passer sur cette balance : {why}</translation>
    </message>
    <message>
        <source>product {product} is at version {version} now, not {other}: choose it again</source>
        <translation type="unfinished">le produit {product} est maintenant en version {version}, pas {other} : choisissez-le à nouveau</translation>
    </message>
    <message>
        <source>product {product} is not known: choose one of {allowed}</source>
        <translation type="unfinished">produit {product} inconnu : choisissez parmi {allowed}</translation>
    </message>
    <message>
        <source>product {product} version {version}, as it is set</source>
        <translation type="unfinished">produit {product} version {version}, tel que réglé</translation>
    </message>
    <message>
        <source>production day</source>
        <translation type="unfinished">jour de production</translation>
    </message>
    <message>
        <source>propose a target</source>
        <translation type="unfinished">proposer une cible</translation>
    </message>
    <message>
        <source>proposed</source>
        <translation type="unfinished">proposé</translation>
    </message>
    <message>
        <source>purge old runs</source>
        <translation type="unfinished">supprimer les vieilles séries</translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished">mis en place</translation>
    </message>
    <message>
        <source>put it right, then check again</source>
        <translation type="unfinished">corrigez, puis recontrôlez</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">qualité</translation>
    </message>
    <message>
        <source>qa check</source>
        <translation type="unfinished">contrôle qualité</translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished">cadence</translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished">lu</translation>
    </message>
    <message>
        <source>reason</source>
        <translation type="unfinished">raison</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">réceptionner une livraison</translation>
    </message>
    <message>
        <source>received {day}</source>
        <translation type="unfinished">reçu {day}</translation>
    </message>
    <message>
        <source>record a check of quality</source>
        <translation type="unfinished">enregistrer un contrôle qualité</translation>
    </message>
    <message>
        <source>record a good check of the scale</source>
        <translation type="unfinished">enregistrer un bon contrôle balance</translation>
    </message>
    <message>
        <source>record a study of empty bags</source>
        <translation type="unfinished">enregistrer une étude de sacs vides</translation>
    </message>
    <message>
        <source>record an empty bag that fits</source>
        <translation type="unfinished">enregistrer un sac vide conforme</translation>
    </message>
    <message>
        <source>record that a check failed</source>
        <translation type="unfinished">enregistrer un contrôle raté</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation type="unfinished">enregistré</translation>
    </message>
    <message>
        <source>recounted, stays open</source>
        <translation type="unfinished">recomptées, reste ouvert</translation>
    </message>
    <message>
        <source>reference</source>
        <translation type="unfinished">référence</translation>
    </message>
    <message>
        <source>refuse a label</source>
        <translation type="unfinished">refuser une étiquette</translation>
    </message>
    <message>
        <source>refused</source>
        <translation type="unfinished">refusé</translation>
    </message>
    <message>
        <source>refused: {why}</source>
        <translation type="unfinished">refusé : {why}</translation>
    </message>
    <message>
        <source>reject</source>
        <translation type="unfinished">rebut</translation>
    </message>
    <message>
        <source>reject ticket</source>
        <translation type="unfinished">ticket de rebut</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">libérer ce qui est bloqué</translation>
    </message>
    <message>
        <source>released</source>
        <translation type="unfinished">libéré</translation>
    </message>
    <message>
        <source>released at the line by QA</source>
        <translation type="unfinished">libéré à la ligne par la qualité</translation>
    </message>
    <message>
        <source>released before the step</source>
        <translation type="unfinished">libéré avant le saut</translation>
    </message>
    <message>
        <source>remark on what is open</source>
        <translation type="unfinished">remarque sur ce qui reste</translation>
    </message>
    <message>
        <source>repacked</source>
        <translation type="unfinished">réemballé</translation>
    </message>
    <message>
        <source>rest N2</source>
        <translation type="unfinished">reste N2</translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished">résultat</translation>
    </message>
    <message>
        <source>returned</source>
        <translation type="unfinished">rendu</translation>
    </message>
    <message>
        <source>returned {count}</source>
        <translation type="unfinished">rendues {count}</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">relire et signer une journée</translation>
    </message>
    <message>
        <source>reviewed</source>
        <translation type="unfinished">revu</translation>
    </message>
    <message>
        <source>reviewed with exceptions</source>
        <translation type="unfinished">revu avec réserves</translation>
    </message>
    <message>
        <source>rework</source>
        <translation type="unfinished">reprise</translation>
    </message>
    <message>
        <source>rework of {lot} was packed {time} ago: it may go back on the line for {most}</source>
        <translation type="unfinished">la reprise de {lot} a été emballée il y a {time} : elle peut revenir sur la ligne pendant {most}</translation>
    </message>
    <message>
        <source>reworked</source>
        <translation type="unfinished">repris</translation>
    </message>
    <message>
        <source>ribbon or ink is missing: put it in</source>
        <translation type="unfinished">ruban ou encre absent : mettez-le</translation>
    </message>
    <message>
        <source>ribbon or ink is used up: change it</source>
        <translation type="unfinished">ruban ou encre épuisé : changez-le</translation>
    </message>
    <message>
        <source>roll {code}</source>
        <translation type="unfinished">rouleau {code}</translation>
    </message>
    <message>
        <source>roll {roll} is in: take it out first</source>
        <translation type="unfinished">le rouleau {roll} est en place : sortez-le d'abord</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation type="unfinished">température de la salle</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">règles</translation>
    </message>
    <message>
        <source>run</source>
        <translation type="unfinished">série</translation>
    </message>
    <message>
        <source>run of {product} ended</source>
        <translation type="unfinished">série de {product} close</translation>
    </message>
    <message>
        <source>run of {product} open, blend lot {lot}</source>
        <translation type="unfinished">série de {product} ouverte, lot de mélange {lot}</translation>
    </message>
    <message>
        <source>run reconciled</source>
        <translation type="unfinished">série rapprochée</translation>
    </message>
    <message>
        <source>sample</source>
        <translation type="unfinished">échantillon</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation type="unfinished">échantillon</translation>
    </message>
    <message>
        <source>samples {count}</source>
        <translation type="unfinished">échantillons {count}</translation>
    </message>
    <message>
        <source>say that an alarm is seen</source>
        <translation type="unfinished">dire qu'une alarme est vue</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">dire ce qu'est devenue une étiquette</translation>
    </message>
    <message>
        <source>say which lot is empty</source>
        <translation type="unfinished">dites quel lot est vide</translation>
    </message>
    <message>
        <source>say which lot is on the line</source>
        <translation type="unfinished">dites quel lot est sur la ligne</translation>
    </message>
    <message>
        <source>say who is on the scale</source>
        <translation type="unfinished">dites qui est à la balance</translation>
    </message>
    <message>
        <source>say who leads</source>
        <translation type="unfinished">dites qui dirige</translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished">balance</translation>
    </message>
    <message>
        <source>scale check</source>
        <translation type="unfinished">contrôle balance</translation>
    </message>
    <message>
        <source>scale check at the end of the run</source>
        <translation type="unfinished">contrôle balance en fin de série</translation>
    </message>
    <message>
        <source>scale interval {mass} against at most {most} for {nominal}</source>
        <translation type="unfinished">échelon {mass} pour {most} au plus à {nominal}</translation>
    </message>
    <message>
        <source>scale interval {mass} against {share} of {limit} = {most}</source>
        <translation type="unfinished">échelon {mass} pour {share} de {limit} = {most}</translation>
    </message>
    <message>
        <source>scale line</source>
        <translation type="unfinished">liaison balance</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">la balance indique {mass}, c'est elle qui fait foi</translation>
    </message>
    <message>
        <source>scale's port {code} cannot be opened</source>
        <translation type="unfinished">le port {code} de la balance ne s'ouvre pas</translation>
    </message>
    <message>
        <source>scan a case or pallet</source>
        <translation type="unfinished">lisez une caisse ou palette</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">lire une étiquette</translation>
    </message>
    <message>
        <source>scan a label or lot</source>
        <translation type="unfinished">lisez une étiquette ou un lot</translation>
    </message>
    <message>
        <source>scan a lot</source>
        <translation type="unfinished">lisez un lot</translation>
    </message>
    <message>
        <source>scan a lot, or touch one</source>
        <translation type="unfinished">lisez un lot, ou touchez-en un</translation>
    </message>
    <message>
        <source>scan a picked bag</source>
        <translation type="unfinished">lisez un sac choisi</translation>
    </message>
    <message>
        <source>scan a ticket or label</source>
        <translation type="unfinished">lisez un ticket ou une étiquette</translation>
    </message>
    <message>
        <source>scan back</source>
        <translation type="unfinished">lecture d'étiquette</translation>
    </message>
    <message>
        <source>scan of a label</source>
        <translation type="unfinished">lecture d'étiquette</translation>
    </message>
    <message>
        <source>scan or type a lot code, then Enter</source>
        <translation type="unfinished">lisez ou tapez un code de lot, puis Entrée</translation>
    </message>
    <message>
        <source>scan or type the film lot</source>
        <translation type="unfinished">lisez ou tapez le lot de film</translation>
    </message>
    <message>
        <source>scan pallets and cases</source>
        <translation type="unfinished">lisez palettes et caisses</translation>
    </message>
    <message>
        <source>scan the bags</source>
        <translation type="unfinished">lisez les sacs</translation>
    </message>
    <message>
        <source>scan the bags of the case first</source>
        <translation type="unfinished">lisez d'abord les sacs de la caisse</translation>
    </message>
    <message>
        <source>scan the case label</source>
        <translation type="unfinished">lisez l'étiquette de caisse</translation>
    </message>
    <message>
        <source>scan the cases</source>
        <translation type="unfinished">lisez les caisses</translation>
    </message>
    <message>
        <source>scan the cases of the pallet first</source>
        <translation type="unfinished">lisez d'abord les caisses de la palette</translation>
    </message>
    <message>
        <source>scan the label</source>
        <translation type="unfinished">lisez l'étiquette</translation>
    </message>
    <message>
        <source>scan the label of the new bag</source>
        <translation type="unfinished">lisez l'étiquette du nouveau sac</translation>
    </message>
    <message>
        <source>scan the label, or type its serial</source>
        <translation type="unfinished">lisez l'étiquette, ou tapez son numéro</translation>
    </message>
    <message>
        <source>scan the last label</source>
        <translation type="unfinished">lisez la dernière étiquette</translation>
    </message>
    <message>
        <source>scan the pallets and cases that leave</source>
        <translation type="unfinished">lisez les palettes et caisses qui partent</translation>
    </message>
    <message>
        <source>scan the roll, then Enter</source>
        <translation type="unfinished">lisez le rouleau, puis Entrée</translation>
    </message>
    <message>
        <source>scan the {what}: {where}</source>
        <translation type="unfinished">lisez la {what} : {where}</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">soudure</translation>
    </message>
    <message>
        <source>seal in doubt</source>
        <translation type="unfinished">soudure douteuse</translation>
    </message>
    <message>
        <source>seal open</source>
        <translation type="unfinished">soudure ouverte</translation>
    </message>
    <message>
        <source>seen on its bag</source>
        <translation type="unfinished">vue sur son sac</translation>
    </message>
    <message>
        <source>sent to the laboratory</source>
        <translation type="unfinished">envoyé au laboratoire</translation>
    </message>
    <message>
        <source>sent to the scale</source>
        <translation type="unfinished">envoyé à la balance</translation>
    </message>
    <message>
        <source>serial</source>
        <translation type="unfinished">numéro</translation>
    </message>
    <message>
        <source>serial number on its plate</source>
        <translation type="unfinished">numéro de série de sa plaque</translation>
    </message>
    <message>
        <source>serial number {shown}: give the 1 to 40 characters of the plate</source>
        <translation type="unfinished">numéro de série {shown} : donnez les 1 à 40 caractères de la plaque</translation>
    </message>
    <message>
        <source>serial {code}</source>
        <translation type="unfinished">série {code}</translation>
    </message>
    <message>
        <source>serials</source>
        <translation type="unfinished">numéros</translation>
    </message>
    <message>
        <source>service</source>
        <translation type="unfinished">service</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">écarté</translation>
    </message>
    <message>
        <source>set aside: {reason}</source>
        <translation type="unfinished">écarté : {reason}</translation>
    </message>
    <message>
        <source>set on purpose</source>
        <translation type="unfinished">changée exprès</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">gérer personnes, PIN et badges</translation>
    </message>
    <message>
        <source>set to {mass} in the settings</source>
        <translation type="unfinished">réglé à {mass} dans les paramètres</translation>
    </message>
    <message>
        <source>set unit, interval and capacity under [scale] of station.toml first</source>
        <translation type="unfinished">réglez d'abord unité, échelon et portée sous [scale] de station.toml</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">mise à l'écart : {reason}</translation>
    </message>
    <message>
        <source>setting bag {serial} aside needs a reason: choose one</source>
        <translation type="unfinished">écarter le sac {serial} demande une raison : choisissez-en une</translation>
    </message>
    <message>
        <source>shelve an alarm</source>
        <translation type="unfinished">différer une alarme</translation>
    </message>
    <message>
        <source>shelved until {time}</source>
        <translation type="unfinished">différée jusqu'à {time}</translation>
    </message>
    <message>
        <source>shift</source>
        <translation type="unfinished">équipe</translation>
    </message>
    <message>
        <source>shift {shift}</source>
        <translation type="unfinished">équipe {shift}</translation>
    </message>
    <message>
        <source>ship</source>
        <translation type="unfinished">expédier</translation>
    </message>
    <message>
        <source>shipment</source>
        <translation type="unfinished">expédition</translation>
    </message>
    <message>
        <source>shipment came back</source>
        <translation type="unfinished">expédition revenue</translation>
    </message>
    <message>
        <source>shipment withdrawn</source>
        <translation type="unfinished">expédition annulée</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">signer un changement de série</translation>
    </message>
    <message>
        <source>signed with a difference</source>
        <translation type="unfinished">signé avec un écart</translation>
    </message>
    <message>
        <source>since</source>
        <translation type="unfinished">depuis</translation>
    </message>
    <message>
        <source>since {time}</source>
        <translation type="unfinished">depuis {time}</translation>
    </message>
    <message>
        <source>since {time}, seen by {who}</source>
        <translation type="unfinished">depuis {time}, vu par {who}</translation>
    </message>
    <message>
        <source>software</source>
        <translation type="unfinished">logiciel</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing</source>
        <translation type="unfinished">trait plein : {error} dès le premier sac ; tirets : croissante</translation>
    </message>
    <message>
        <source>solid: {error} from the first bag on, dashed: growing, step: as dated</source>
        <translation type="unfinished">trait plein : {error} dès le premier sac ; tirets : croissante ; saut : daté</translation>
    </message>
    <message>
        <source>spoiled ones not counted</source>
        <translation type="unfinished">gâchées non comptées</translation>
    </message>
    <message>
        <source>spoiled {count}</source>
        <translation type="unfinished">gâchées {count}</translation>
    </message>
    <message>
        <source>spooled</source>
        <translation type="unfinished">en file</translation>
    </message>
    <message>
        <source>spread of the fills</source>
        <translation type="unfinished">dispersion des remplissages</translation>
    </message>
    <message>
        <source>spread {spread}: a mean of {mean} or more, by the {what} rule</source>
        <translation type="unfinished">dispersion {spread} : moyenne de {mean} ou plus, par la règle {what}</translation>
    </message>
    <message>
        <source>start a run</source>
        <translation type="unfinished">ouvrir une série</translation>
    </message>
    <message>
        <source>state</source>
        <translation type="unfinished">état</translation>
    </message>
    <message>
        <source>status {code} with the weight {shown}, it needs ten dashes</source>
        <translation type="unfinished">état {code} avec poids {shown} : il faut dix tirets</translation>
    </message>
    <message>
        <source>stood</source>
        <translation type="unfinished">arrêt</translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished">arrêt</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">arrêter la ligne</translation>
    </message>
    <message>
        <source>stops</source>
        <translation type="unfinished">arrêts</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">sacs stockés</translation>
    </message>
    <message>
        <source>stuck on askew</source>
        <translation type="unfinished">collée de travers</translation>
    </message>
    <message>
        <source>study of its film lot: {study}</source>
        <translation type="unfinished">étude de son lot de film : {study}</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation type="unfinished">envoyée</translation>
    </message>
    <message>
        <source>suits</source>
        <translation type="unfinished">convient</translation>
    </message>
    <message>
        <source>suspect</source>
        <translation type="unfinished">suspect</translation>
    </message>
    <message>
        <source>suspect window</source>
        <translation type="unfinished">fenêtre suspecte</translation>
    </message>
    <message>
        <source>suspect window of {what}</source>
        <translation type="unfinished">fenêtre suspecte de {what}</translation>
    </message>
    <message>
        <source>take it off the line</source>
        <translation type="unfinished">retirez-le de la ligne</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">retirez-le : {where}</translation>
    </message>
    <message>
        <source>take old files off the disk</source>
        <translation type="unfinished">retirez de vieux fichiers du disque</translation>
    </message>
    <message>
        <source>take over changed settings</source>
        <translation type="unfinished">reprendre des réglages changés</translation>
    </message>
    <message>
        <source>take the lot off and load another</source>
        <translation type="unfinished">retirez le lot et chargez-en un autre</translation>
    </message>
    <message>
        <source>take the old lot off and load the next in one step, or end the run</source>
        <translation type="unfinished">retirez l'ancien lot et chargez le suivant d'un coup, ou clôturez la série</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation type="unfinished">démontés</translation>
    </message>
    <message>
        <source>taken by QA</source>
        <translation type="unfinished">pris par la qualité</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation type="unfinished">sorti</translation>
    </message>
    <message>
        <source>tare</source>
        <translation type="unfinished">tare</translation>
    </message>
    <message>
        <source>tare error</source>
        <translation type="unfinished">erreur de tare</translation>
    </message>
    <message>
        <source>tare {mass}</source>
        <translation type="unfinished">tare {mass}</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">cible</translation>
    </message>
    <message>
        <source>target of {product}</source>
        <translation type="unfinished">cible de {product}</translation>
    </message>
    <message>
        <source>target {mass} now</source>
        <translation type="unfinished">cible {mass} actuelle</translation>
    </message>
    <message>
        <source>target {mass} proposed</source>
        <translation type="unfinished">cible {mass} proposée</translation>
    </message>
    <message>
        <source>teach a scale of your own</source>
        <translation type="unfinished">apprenez une balance à vous</translation>
    </message>
    <message>
        <source>tell maintenance</source>
        <translation type="unfinished">prévenez la maintenance</translation>
    </message>
    <message>
        <source>tenths</source>
        <translation type="unfinished">dixièmes</translation>
    </message>
    <message>
        <source>test weights of class {code} for {mass} may be wrong by {own}, more than a third of the {allowed} the scale may be: use a finer class</source>
        <translation type="unfinished">les poids de classe {code} pour {mass} peuvent errer de {own}, plus d'un tiers des {allowed} de la balance : prenez une classe plus fine</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity ({here})</source>
        <translation type="unfinished">du texte arrive mais aucun poids de ce protocole : un autre appareil sur ce port, ou un autre format sur la balance ? Sinon, vérifiez débit et parité ({here})</translation>
    </message>
    <message>
        <source>text arrives but none of it is a weight of this protocol: is another device on this port, or another output format set on the scale? If not, check baud rate and parity of the converter</source>
        <translation type="unfinished">du texte arrive mais aucun poids de ce protocole : un autre appareil sur ce port, ou un autre format sur la balance ? Sinon, vérifiez débit et parité du convertisseur</translation>
    </message>
    <message>
        <source>the bag on the pan may hold lot {lot}, which is held: set it aside and lift it, then change the lot</source>
        <translation type="unfinished">le sac sur le plateau peut contenir le lot {lot}, bloqué : écartez-le et retirez-le, puis changez le lot</translation>
    </message>
    <message>
        <source>the bags scatter too much for a mean tare ({study}): use other bags</source>
        <translation type="unfinished">les sacs varient trop pour une tare moyenne ({study}) : prenez d'autres sacs</translation>
    </message>
    <message>
        <source>the centre is not reached</source>
        <translation type="unfinished">centrale injoignable</translation>
    </message>
    <message>
        <source>the centre stops {what} {code} ({reason}): {end}</source>
        <translation type="unfinished">la centrale arrête {what} {code} ({reason}) : {end}</translation>
    </message>
    <message>
        <source>the check of the scale is overdue: {where}</source>
        <translation type="unfinished">le contrôle de la balance est en retard : {where}</translation>
    </message>
    <message>
        <source>the check of {what} is overdue: {where}</source>
        <translation type="unfinished">le contrôle ({what}) est en retard : {where}</translation>
    </message>
    <message>
        <source>the clock is {time} behind the newest entry of the record</source>
        <translation type="unfinished">l'horloge retarde de {time} sur la dernière entrée</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}</source>
        <translation type="unfinished">l'horloge a sauté de {time} {way}</translation>
    </message>
    <message>
        <source>the clock jumped {way} by {time}, to another day</source>
        <translation type="unfinished">l'horloge a sauté de {time} {way}, à un autre jour</translation>
    </message>
    <message>
        <source>the clock was set between the checks: the bags have no sure order in time</source>
        <translation type="unfinished">l'horloge a été réglée entre les contrôles : l'ordre des sacs n'est pas sûr</translation>
    </message>
    <message>
        <source>the code holds a character that no code of ours has</source>
        <translation type="unfinished">le code contient un caractère qu'aucun des nôtres n'a</translation>
    </message>
    <message>
        <source>the code presses keys that are no text</source>
        <translation type="unfinished">le code presse des touches qui ne sont pas du texte</translation>
    </message>
    <message>
        <source>the computer slept or was held up: what the scale sent is too old</source>
        <translation type="unfinished">l'ordinateur a dormi ou a été retenu : ce que la balance a envoyé est trop vieux</translation>
    </message>
    <message>
        <source>the demo's settings stay as they are</source>
        <translation type="unfinished">les paramètres de la démo ne changent pas</translation>
    </message>
    <message>
        <source>the device is gone, or another program reads the same port</source>
        <translation type="unfinished">l'appareil n'est plus là, ou un autre programme lit le même port</translation>
    </message>
    <message>
        <source>the disk cannot be asked: {why}</source>
        <translation type="unfinished">le disque ne répond pas : {why}</translation>
    </message>
    <message>
        <source>the disk fills up</source>
        <translation type="unfinished">le disque se remplit</translation>
    </message>
    <message>
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">disque plein : libérez de la place, puis réimprimez</translation>
    </message>
    <message>
        <source>the disk is nearly full: free {more} on it, then packing goes on by itself</source>
        <translation type="unfinished">le disque est presque plein : libérez encore {more}, puis l'emballage reprend seul</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: take old files off it, or call maintenance</source>
        <translation type="unfinished">disque plein à {percent} %, {free} libres : retirez de vieux fichiers ou appelez la maintenance</translation>
    </message>
    <message>
        <source>the disk is {percent} % full, {free} free: {why}</source>
        <translation type="unfinished">disque plein à {percent} %, {free} libres : {why}</translation>
    </message>
    <message>
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">le sac vide de {mass} ne convient pas ({what}) : pesez-en un autre : {where}</translation>
    </message>
    <message>
        <source>the empty pan does not show zero</source>
        <translation type="unfinished">le plateau vide n'indique pas zéro</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">le plateau vide indique {mass} : essuyez-le, puis remettez à zéro</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation type="unfinished">le plancher</translation>
    </message>
    <message>
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">le dossier d'étiquettes manque : recréez {folder}</translation>
    </message>
    <message>
        <source>the known fault of older versions is mended in this one</source>
        <translation type="unfinished">le défaut connu des anciennes versions est corrigé dans celle-ci</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}, so it was printed: destroy it first</source>
        <translation type="unfinished">l'étiquette du sac {serial} est {state}, donc imprimée : détruisez-la d'abord</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: nothing to answer</source>
        <translation type="unfinished">l'étiquette du sac {serial} est {state} : rien à répondre</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: only one that is {states} is printed again</source>
        <translation type="unfinished">l'étiquette du sac {serial} est {state} : on ne réimprime que {states}</translation>
    </message>
    <message>
        <source>the label of bag {serial} is {state}: {fate}</source>
        <translation type="unfinished">l'étiquette du sac {serial} est {state} : {fate}</translation>
    </message>
    <message>
        <source>the label roll ends soon</source>
        <translation type="unfinished">le rouleau finit bientôt</translation>
    </message>
    <message>
        <source>the label was refused ({why}): end the run, or approve it at {where}</source>
        <translation type="unfinished">étiquette refusée ({why}) : closez la série ou approuvez dans {where}</translation>
    </message>
    <message>
        <source>the line does not stand</source>
        <translation type="unfinished">la ligne n'est pas arrêtée</translation>
    </message>
    <message>
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">la ligne est arrêtée, {reason} : SÉRIE, puis CHANGEMENT (F8) pour continuer</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">la ligne s'est arrêtée</translation>
    </message>
    <message>
        <source>the machine slept for {time}</source>
        <translation type="unfinished">la machine a dormi {time}</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">la moyenne est sous le nominal</translation>
    </message>
    <message>
        <source>the new bag has a serial of its own: scan its label</source>
        <translation type="unfinished">le nouveau sac a son propre numéro : lisez son étiquette</translation>
    </message>
    <message>
        <source>the new film or roll is the right one</source>
        <translation type="unfinished">le nouveau film ou rouleau est le bon</translation>
    </message>
    <message>
        <source>the newest entry of the record is {time} old</source>
        <translation type="unfinished">la dernière entrée date de {time}</translation>
    </message>
    <message>
        <source>the offset from UTC changed by {time}, as daylight saving does</source>
        <translation type="unfinished">le décalage d'UTC a changé de {time}, comme à l'heure d'été</translation>
    </message>
    <message>
        <source>the oldest entry has waited for more than 30 minutes</source>
        <translation type="unfinished">la plus ancienne entrée attend depuis plus de 30 minutes</translation>
    </message>
    <message>
        <source>the pan is clean, dry and at zero</source>
        <translation type="unfinished">le plateau est propre, sec et à zéro</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">le plateau doit être vide avant le sac suivant</translation>
    </message>
    <message>
        <source>the plan takes {count} packs, the batch will have only {lot}</source>
        <translation type="unfinished">le plan prend {count} sacs, le lot n'en aura que {lot}</translation>
    </message>
    <message>
        <source>the port is not open yet</source>
        <translation type="unfinished">le port n'est pas encore ouvert</translation>
    </message>
    <message>
        <source>the port is open, no weight was read yet</source>
        <translation type="unfinished">le port est ouvert, aucun poids lu encore</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">l'imprimante a abandonné</translation>
    </message>
    <message>
        <source>the printer gives no known job state</source>
        <translation type="unfinished">l'imprimante ne donne aucun état connu du travail</translation>
    </message>
    <message>
        <source>the printer has stopped: see its panel</source>
        <translation type="unfinished">l'imprimante s'est arrêtée : voyez son panneau</translation>
    </message>
    <message>
        <source>the printer is offline: switch it on, check its cable</source>
        <translation type="unfinished">imprimante hors ligne : allumez-la, vérifiez le câble</translation>
    </message>
    <message>
        <source>the printer is paused: press its button to go on</source>
        <translation type="unfinished">imprimante en pause : pressez son bouton</translation>
    </message>
    <message>
        <source>the printer is switched off</source>
        <translation type="unfinished">l'imprimante est éteinte</translation>
    </message>
    <message>
        <source>the printer needs somebody</source>
        <translation type="unfinished">l'imprimante a besoin de quelqu'un</translation>
    </message>
    <message>
        <source>the printer says that it is out, but its reply to the page was lost</source>
        <translation type="unfinished">l'imprimante dit qu'elle est sortie, mais sa réponse à la page s'est perdue</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">l'imprimante : {why}</translation>
    </message>
    <message>
        <source>the proposal is for version {number}</source>
        <translation type="unfinished">la proposition vaut pour la version {number}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">la file n'atteint pas l'imprimante : allumez-la, vérifiez le câble</translation>
    </message>
    <message>
        <source>the record's log takes {size}: another program has been reading the record for long, close it</source>
        <translation type="unfinished">le journal de l'enregistrement prend {size} : un autre programme le lit depuis longtemps, fermez-le</translation>
    </message>
    <message>
        <source>the run begins with a check of the scale: {where}</source>
        <translation type="unfinished">la série commence par un contrôle de la balance : {where}</translation>
    </message>
    <message>
        <source>the run begins with a check of {what}: {where}</source>
        <translation type="unfinished">la série commence par un contrôle ({what}) : {where}</translation>
    </message>
    <message>
        <source>the run begins with a first-off</source>
        <translation type="unfinished">la série commence par une première étiquette</translation>
    </message>
    <message>
        <source>the run is open</source>
        <translation type="unfinished">la série est ouverte</translation>
    </message>
    <message>
        <source>the scale</source>
        <translation type="unfinished">la balance</translation>
    </message>
    <message>
        <source>the scale came back at zero and a load lay on the pan before: take everything off, then press the pan once with a hand</source>
        <translation type="unfinished">la balance est revenue à zéro et une charge était sur le plateau : retirez tout, puis appuyez une fois de la main sur le plateau</translation>
    </message>
    <message>
        <source>the scale does not do that</source>
        <translation type="unfinished">la balance ne fait pas cela</translation>
    </message>
    <message>
        <source>the scale failed its check</source>
        <translation type="unfinished">la balance a échoué au contrôle</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">la balance a échoué au contrôle : réglez-la, puis recontrôlez : {where}</translation>
    </message>
    <message>
        <source>the scale found no zero when it was switched on: empty the pan and switch it on again</source>
        <translation type="unfinished">la balance n'a pas trouvé de zéro à l'allumage : videz le plateau et rallumez-la</translation>
    </message>
    <message>
        <source>the scale gave no answer, look at its display</source>
        <translation type="unfinished">la balance n'a pas répondu, regardez son écran</translation>
    </message>
    <message>
        <source>the scale has just come back: its weights count in a moment</source>
        <translation type="unfinished">la balance vient de revenir : ses poids compteront dans un instant</translation>
    </message>
    <message>
        <source>the scale is a recording: no bag is taken from it</source>
        <translation type="unfinished">la balance est un enregistrement : aucun sac n'en est pris</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">la balance ne répond pas : vérifiez câble et courant</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings</source>
        <translation type="unfinished">la balance sur {code} n'a rien envoyé depuis {number} s : est-elle allumée, câble, réglages ?</translation>
    </message>
    <message>
        <source>the scale on {code} has sent nothing for {number} s: check that it is switched on, its cable, and its communication settings ({here})</source>
        <translation type="unfinished">la balance sur {code} n'a rien envoyé depuis {number} s : est-elle allumée, câble, réglages ? ({here})</translation>
    </message>
    <message>
        <source>the scale read high at some loads and low at others</source>
        <translation type="unfinished">la balance a lu trop à certaines charges et trop peu à d'autres</translation>
    </message>
    <message>
        <source>the scale read high: packs may be short</source>
        <translation type="unfinished">la balance a lu trop : il peut manquer du produit</translation>
    </message>
    <message>
        <source>the scale read low: product was given away</source>
        <translation type="unfinished">la balance a lu trop peu : du produit a été donné</translation>
    </message>
    <message>
        <source>the scale refused to set zero: empty the pan</source>
        <translation type="unfinished">la balance a refusé le zéro : videz le plateau</translation>
    </message>
    <message>
        <source>the scale reports a tare error: empty the pan and clear the tare</source>
        <translation type="unfinished">la balance signale une erreur de tare : videz le plateau et annulez la tare</translation>
    </message>
    <message>
        <source>the scale reports a zero error: empty the pan and set it to zero</source>
        <translation type="unfinished">la balance signale une erreur de zéro : videz le plateau et remettez-la à zéro</translation>
    </message>
    <message>
        <source>the scale says centre of zero and shows {mass}</source>
        <translation type="unfinished">la balance dit centre de zéro et affiche {mass}</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set bits 7 and {same} for this port ({here}), or 8N1 on the scale</source>
        <translation type="unfinished">la balance envoie 7 bits de données avec {parity} : mettez bits 7 et {same} pour ce port ({here}), ou 8N1 sur la balance</translation>
    </message>
    <message>
        <source>the scale sends 7 data bits with {parity}: set the same on the converter, or 8N1 on the scale</source>
        <translation type="unfinished">la balance envoie 7 bits de données avec {parity} : mettez de même sur le convertisseur, ou 8N1 sur la balance</translation>
    </message>
    <message>
        <source>the scale sent dashes instead of a weight</source>
        <translation type="unfinished">la balance a envoyé des tirets au lieu d'un poids</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">la balance affiche un net : annulez sa tare, la station déduit le sac</translation>
    </message>
    <message>
        <source>the scale shows less than zero: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">la balance affiche moins que zéro : voyez que le plateau pose bien et que rien ne le soulève, videz-le et remettez la balance à zéro</translation>
    </message>
    <message>
        <source>the scale shows no weight</source>
        <translation type="unfinished">la balance n'affiche aucun poids</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">la balance est en {unit}, la série en {other} : réglez la balance</translation>
    </message>
    <message>
        <source>the scale's line is not open</source>
        <translation type="unfinished">la ligne de la balance n'est pas ouverte</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">la lecture d'une étiquette est en retard : {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} did not match</source>
        <translation type="unfinished">la lecture de l'étiquette {serial} a différé</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">la lecture de l'étiquette {serial} diffère : le chef la règle dans {where}</translation>
    </message>
    <message>
        <source>the settings are in {code}</source>
        <translation type="unfinished">les paramètres sont en {code}</translation>
    </message>
    <message>
        <source>the settings before are in station.toml.before</source>
        <translation type="unfinished">les paramètres d'avant sont dans station.toml.before</translation>
    </message>
    <message>
        <source>the settings say so</source>
        <translation type="unfinished">d'après les paramètres</translation>
    </message>
    <message>
        <source>the station ended before the label's fate was recorded</source>
        <translation type="unfinished">le poste s'est arrêté avant de noter le sort de l'étiquette</translation>
    </message>
    <message>
        <source>the station fills no cases: customers.toml is missing</source>
        <translation type="unfinished">le poste ne remplit pas de caisses : customers.toml manque</translation>
    </message>
    <message>
        <source>the station has a fault ({what}): call maintenance</source>
        <translation type="unfinished">le poste a un défaut ({what}) : appelez la maintenance</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">la station est en retard : levez le sac et attendez</translation>
    </message>
    <message>
        <source>the station stood for long</source>
        <translation type="unfinished">le poste est resté arrêté longtemps</translation>
    </message>
    <message>
        <source>the station writes and checkpoints through one, so it cannot happen here</source>
        <translation type="unfinished">le poste n'écrit que par une seule, cela ne peut arriver ici</translation>
    </message>
    <message>
        <source>the store is closed</source>
        <translation type="unfinished">l'enregistrement est fermé</translation>
    </message>
    <message>
        <source>the study has {study}, more than the tare {tare} taken off: raise the tare of {bag}</source>
        <translation type="unfinished">l'étude donne {study}, plus que la tare retirée {tare} : augmentez la tare de {bag}</translation>
    </message>
    <message>
        <source>the test weights come to {total} for the load {load} of {mass}: at least {percent} of it are needed</source>
        <translation type="unfinished">les poids étalons font {total} pour la charge {load} de {mass} : il en faut au moins {percent}</translation>
    </message>
    <message>
        <source>the year {year} is not believed</source>
        <translation type="unfinished">l'année {year} n'est pas crue</translation>
    </message>
    <message>
        <source>then its number, its verification and who answers for it</source>
        <translation type="unfinished">puis son numéro, sa vérification et qui en répond</translation>
    </message>
    <message>
        <source>there is no run before: nothing is to be counted</source>
        <translation type="unfinished">aucune série avant : rien à compter</translation>
    </message>
    <message>
        <source>there is nothing to report</source>
        <translation type="unfinished">rien à rapporter</translation>
    </message>
    <message>
        <source>there is room again: {free} free</source>
        <translation type="unfinished">il y a de nouveau de la place : {free} libres</translation>
    </message>
    <message>
        <source>these lines are in {units}</source>
        <translation type="unfinished">ces lignes sont en {units}</translation>
    </message>
    <message>
        <source>they do not all end with the same control characters</source>
        <translation type="unfinished">elles ne finissent pas toutes par les mêmes caractères</translation>
    </message>
    <message>
        <source>this PIN is not right</source>
        <translation type="unfinished">ce PIN n'est pas le bon</translation>
    </message>
    <message>
        <source>this PIN is not right: wait {time}</source>
        <translation type="unfinished">ce PIN n'est pas le bon : attendez {time}</translation>
    </message>
    <message>
        <source>this badge is not right</source>
        <translation type="unfinished">ce badge n'est pas le bon</translation>
    </message>
    <message>
        <source>this badge is not right: wait {time}</source>
        <translation type="unfinished">ce badge n'est pas le bon : attendez {time}</translation>
    </message>
    <message>
        <source>this bag in it</source>
        <translation type="unfinished">ce sac est dedans</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">ce sac n'est ni enregistré ni étiqueté : {why}</translation>
    </message>
    <message>
        <source>this cannot be shelved, {what}: {answer}</source>
        <translation type="unfinished">ceci ne peut être reporté, {what} : {answer}</translation>
    </message>
    <message>
        <source>this hour: all {count} bags</source>
        <translation type="unfinished">cette heure : les {count} sacs</translation>
    </message>
    <message>
        <source>this hour: {count} of about {all} bags</source>
        <translation type="unfinished">cette heure : {count} d'environ {all} sacs</translation>
    </message>
    <message>
        <source>this one is destroyed</source>
        <translation type="unfinished">celle-ci est détruite</translation>
    </message>
    <message>
        <source>this user may not use it: add the user to the group that owns it (on most Linux systems dialout) and sign in again</source>
        <translation type="unfinished">cet utilisateur n'y a pas droit : ajoutez-le au groupe propriétaire (dialout sur la plupart des Linux) et reconnectez-vous</translation>
    </message>
    <message>
        <source>this version can damage a file that two connections write at once</source>
        <translation type="unfinished">cette version peut abîmer un fichier écrit par deux connexions à la fois</translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished">heure</translation>
    </message>
    <message>
        <source>time, with a lot</source>
        <translation type="unfinished">heure, avec un lot</translation>
    </message>
    <message>
        <source>too many wrong PINs: wait {time}</source>
        <translation type="unfinished">trop de PIN faux : attendez {time}</translation>
    </message>
    <message>
        <source>too many wrong badges: wait {time}</source>
        <translation type="unfinished">trop de badges faux : attendez {time}</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation type="unfinished">trop chaud</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation type="unfinished">complété</translation>
    </message>
    <message>
        <source>torn or creased</source>
        <translation type="unfinished">déchirée ou froissée</translation>
    </message>
    <message>
        <source>torn up, seen by me</source>
        <translation type="unfinished">déchirée, vue par moi</translation>
    </message>
    <message>
        <source>touch an alarm first</source>
        <translation type="unfinished">touchez d'abord une alarme</translation>
    </message>
    <message>
        <source>touch and key in all three counts first</source>
        <translation type="unfinished">touchez et tapez d'abord les trois comptes</translation>
    </message>
    <message>
        <source>touch the rejects it is about first</source>
        <translation type="unfinished">touchez d'abord les rebuts</translation>
    </message>
    <message>
        <source>touch to change</source>
        <translation type="unfinished">toucher pour changer</translation>
    </message>
    <message>
        <source>touch when thrown out</source>
        <translation type="unfinished">touchez si éjecté</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">touchez d'abord qui vous êtes</translation>
    </message>
    <message>
        <source>two lots overlap for long</source>
        <translation type="unfinished">deux lots se chevauchent longtemps</translation>
    </message>
    <message>
        <source>two people release: the second one is missing</source>
        <translation type="unfinished">deux personnes libèrent : la seconde manque</translation>
    </message>
    <message>
        <source>two people sign</source>
        <translation type="unfinished">deux personnes signent</translation>
    </message>
    <message>
        <source>typed below</source>
        <translation type="unfinished">saisi dessous</translation>
    </message>
    <message>
        <source>under capacity</source>
        <translation type="unfinished">au-dessous de la portée</translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished">unité</translation>
    </message>
    <message>
        <source>unit {shown} is not in the description</source>
        <translation type="unfinished">l'unité {shown} n'est pas décrite</translation>
    </message>
    <message>
        <source>unknown command</source>
        <translation type="unfinished">commande inconnue</translation>
    </message>
    <message>
        <source>until, such as 09:40</source>
        <translation type="unfinished">jusqu'à, comme 09:40</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">maximum</translation>
    </message>
    <message>
        <source>upper {mass}</source>
        <translation type="unfinished">plafond {mass}</translation>
    </message>
    <message>
        <source>use by</source>
        <translation type="unfinished">à consommer</translation>
    </message>
    <message>
        <source>use by {day}</source>
        <translation type="unfinished">à consommer jusqu'au {day}</translation>
    </message>
    <message>
        <source>used to set the printer up</source>
        <translation type="unfinished">utilisées pour régler l'imprimante</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation type="unfinished">sous vide</translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished">valeur</translation>
    </message>
    <message>
        <source>value is {number}, {why}</source>
        <translation type="unfinished">valeur {number} : {why}</translation>
    </message>
    <message>
        <source>value is {shown}, not a number as described</source>
        <translation type="unfinished">valeur {shown} : pas un nombre décrit</translation>
    </message>
    <message>
        <source>verified {code}</source>
        <translation type="unfinished">vérifiée {code}</translation>
    </message>
    <message>
        <source>verified {day}: give a day from {first} to today, {today}</source>
        <translation type="unfinished">vérifiée {day} : un jour de {first} à ce jour, {today}</translation>
    </message>
    <message>
        <source>verified {shown}: give the day as in {day}</source>
        <translation type="unfinished">vérifiée {shown} : donnez le jour comme {day}</translation>
    </message>
    <message>
        <source>verified, as in 2026-03-31</source>
        <translation type="unfinished">vérifiée, comme 2026-03-31</translation>
    </message>
    <message>
        <source>version</source>
        <translation type="unfinished">version</translation>
    </message>
    <message>
        <source>voided</source>
        <translation type="unfinished">annulée</translation>
    </message>
    <message>
        <source>wait until the scale shows a steady weight</source>
        <translation type="unfinished">attendez que la balance montre un poids stable</translation>
    </message>
    <message>
        <source>wait until the scale stands still: it is never set to zero in motion</source>
        <translation type="unfinished">attendez que la balance soit immobile : jamais de zéro en mouvement</translation>
    </message>
    <message>
        <source>waiting for QA</source>
        <translation type="unfinished">attente de la qualité</translation>
    </message>
    <message>
        <source>waiting for the scale's first reading</source>
        <translation type="unfinished">attente de la première mesure de la balance</translation>
    </message>
    <message>
        <source>warm or damaged</source>
        <translation type="unfinished">chaud ou abîmé</translation>
    </message>
    <message>
        <source>was wrong, is set right</source>
        <translation type="unfinished">était fausse, est réglée</translation>
    </message>
    <message>
        <source>wash record</source>
        <translation type="unfinished">relevé de lavage</translation>
    </message>
    <message>
        <source>washed where allergens change</source>
        <translation type="unfinished">lavé si les allergènes changent</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation type="unfinished">jeté</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">pesez un sac vide d'ici {count} sacs</translation>
    </message>
    <message>
        <source>weigh it</source>
        <translation type="unfinished">pesez-la</translation>
    </message>
    <message>
        <source>weigh the rest</source>
        <translation type="unfinished">pesez le reste</translation>
    </message>
    <message>
        <source>weighed again</source>
        <translation type="unfinished">repesés</translation>
    </message>
    <message>
        <source>weighed again, good</source>
        <translation type="unfinished">repesé, bon</translation>
    </message>
    <message>
        <source>weighed now</source>
        <translation type="unfinished">pesé</translation>
    </message>
    <message>
        <source>weight is {shown}, not a number of the standard's form</source>
        <translation type="unfinished">poids {shown} : pas un nombre de la norme</translation>
    </message>
    <message>
        <source>weight not displayed</source>
        <translation type="unfinished">poids non affiché</translation>
    </message>
    <message>
        <source>weighted average {mean}</source>
        <translation type="unfinished">moyenne pondérée {mean}</translation>
    </message>
    <message>
        <source>weights arrive and are used</source>
        <translation type="unfinished">les poids arrivent et servent</translation>
    </message>
    <message>
        <source>weights come {number} s apart, and one counts for {most} s: set the scale, or the converter on its line, to send more often and at once</source>
        <translation type="unfinished">un poids toutes les {number} s, et il compte {most} s : réglez la balance, ou le convertisseur de sa ligne, pour envoyer plus souvent et aussitôt</translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished">quoi</translation>
    </message>
    <message>
        <source>what is open</source>
        <translation type="unfinished">ce qui reste</translation>
    </message>
    <message>
        <source>what the station sends comes back in front of the answers: switch the echo of the converter or of the scale off</source>
        <translation type="unfinished">ce que la station envoie revient devant les réponses : coupez l'écho du convertisseur ou de la balance</translation>
    </message>
    <message>
        <source>which label?</source>
        <translation type="unfinished">quelle étiquette ?</translation>
    </message>
    <message>
        <source>which {what}? Scan or type it first</source>
        <translation type="unfinished">quel {what} ? Lisez ou tapez d'abord</translation>
    </message>
    <message>
        <source>who decides? Choose a name first</source>
        <translation type="unfinished">qui décide ? Choisissez d'abord un nom</translation>
    </message>
    <message>
        <source>who says so? Touch WHO and choose your name</source>
        <translation type="unfinished">qui le dit ? Touchez QUI et votre nom</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">tout</translation>
    </message>
    <message>
        <source>whole error</source>
        <translation type="unfinished">erreur entière</translation>
    </message>
    <message>
        <source>whole run: all {count} bags</source>
        <translation type="unfinished">série entière : les {count} sacs</translation>
    </message>
    <message>
        <source>whole run: {count} of about {all} bags</source>
        <translation type="unfinished">série entière : {count} d'environ {all} sacs</translation>
    </message>
    <message>
        <source>whom does it go to? Choose a customer</source>
        <translation type="unfinished">pour qui ? Choisissez un client</translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished">pourquoi</translation>
    </message>
    <message>
        <source>why it differs: scan or type</source>
        <translation type="unfinished">pourquoi l'écart : lisez ou tapez</translation>
    </message>
    <message>
        <source>why it may go, or must be dumped</source>
        <translation type="unfinished">pourquoi libérer, ou jeter</translation>
    </message>
    <message>
        <source>why: scan or type the reason</source>
        <translation type="unfinished">pourquoi : lisez ou tapez</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation type="unfinished">essuyer</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">essuyez le plateau, puis remettez à zéro</translation>
    </message>
    <message>
        <source>with a witness</source>
        <translation type="unfinished">avec témoin</translation>
    </message>
    <message>
        <source>with {customer}</source>
        <translation type="unfinished">chez {customer}</translation>
    </message>
    <message>
        <source>within both bounds</source>
        <translation type="unfinished">dans les deux limites</translation>
    </message>
    <message>
        <source>without it</source>
        <translation type="unfinished">sans elle</translation>
    </message>
    <message>
        <source>witness {who}</source>
        <translation type="unfinished">témoin {who}</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">travailler sur cet écran</translation>
    </message>
    <message>
        <source>wrong date</source>
        <translation type="unfinished">date fausse</translation>
    </message>
    <message>
        <source>wrong label</source>
        <translation type="unfinished">mauvaise étiquette</translation>
    </message>
    <message>
        <source>wrong lots</source>
        <translation type="unfinished">lots faux</translation>
    </message>
    <message>
        <source>wrong roll taken out</source>
        <translation type="unfinished">mauvais rouleau retiré</translation>
    </message>
    <message>
        <source>wrong text</source>
        <translation type="unfinished">texte faux</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">mauvais poids</translation>
    </message>
    <message>
        <source>you approve</source>
        <translation type="unfinished">vous approuvez</translation>
    </message>
    <message>
        <source>zero error</source>
        <translation type="unfinished">erreur de zéro</translation>
    </message>
    <message>
        <source>{begin_code} to {end_code}</source>
        <translation type="unfinished">{begin_code} à {end_code}</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: FAILS</source>
        <translation type="unfinished">{case} : moyenne {mean}, {count} sous T1 : ÉCHEC</translation>
    </message>
    <message>
        <source>{case}: mean {mean}, {count} below T1: passes</source>
        <translation type="unfinished">{case} : moyenne {mean}, {count} sous T1 : passe</translation>
    </message>
    <message>
        <source>{code} is at {number}</source>
        <translation type="unfinished">{code} en est à {number}</translation>
    </message>
    <message>
        <source>{code} is not known: receive it first</source>
        <translation type="unfinished">{code} inconnu : recevez-le d'abord</translation>
    </message>
    <message>
        <source>{code} {count} of {whole}</source>
        <translation type="unfinished">{code} {count} sur {whole}</translation>
    </message>
    <message>
        <source>{count} BAGS HELD OR OUT</source>
        <translation type="unfinished">{count} SACS BLOQUÉS OU SORTIS</translation>
    </message>
    <message>
        <source>{count} bag is {what}.</source>
        <translation type="unfinished">{count} sac {what}.</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} sacs</translation>
    </message>
    <message>
        <source>{count} bags an hour</source>
        <translation type="unfinished">{count} sacs par heure</translation>
    </message>
    <message>
        <source>{count} bags are dumped: they lie in the reject bin. Release the empty hold.</source>
        <translation type="unfinished">{count} sacs jetés : ils sont dans le bac de rebuts. Libérez le blocage vide.</translation>
    </message>
    <message>
        <source>{count} bags are held</source>
        <translation type="unfinished">{count} sacs bloqués</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} sacs bloqués après un contrôle raté : la qualité décide : {where}</translation>
    </message>
    <message>
        <source>{count} bags are in the bin, {expected} by the record: say why they differ</source>
        <translation type="unfinished">{count} sacs dans le bac, {expected} enregistrés : dites pourquoi</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} sacs emballés : le chef clôt la série</translation>
    </message>
    <message>
        <source>{count} bags are released.</source>
        <translation type="unfinished">{count} sacs libérés.</translation>
    </message>
    <message>
        <source>{count} bags are {what}.</source>
        <translation type="unfinished">{count} sacs : {what}.</translation>
    </message>
    <message>
        <source>{count} bags from {begin} to {end} are held: {why}.</source>
        <translation type="unfinished">{count} sacs de {begin} à {end} bloqués : {why}.</translation>
    </message>
    <message>
        <source>{count} bags held or out</source>
        <translation type="unfinished">{count} sacs bloqués ou sortis</translation>
    </message>
    <message>
        <source>{count} bags held, packed after {begin} until {end}</source>
        <translation type="unfinished">{count} sacs bloqués, emballés de {begin} à {end}</translation>
    </message>
    <message>
        <source>{count} bags in the batch; {plan}</source>
        <translation type="unfinished">{count} sacs dans le lot ; {plan}</translation>
    </message>
    <message>
        <source>{count} bags lie in the bin by the record</source>
        <translation type="unfinished">{count} sacs dans le bac d'après l'enregistrement</translation>
    </message>
    <message>
        <source>{count} bags of one run</source>
        <translation type="unfinished">{count} sacs d'une série</translation>
    </message>
    <message>
        <source>{count} bags weigh less than {mass} in the mean</source>
        <translation type="unfinished">{count} sacs pèsent en moyenne moins de {mass}</translation>
    </message>
    <message>
        <source>{count} bags {more} than recorded: count again, or say why</source>
        <translation type="unfinished">{count} sacs {more} que l'enregistré : recomptez, ou dites pourquoi</translation>
    </message>
    <message>
        <source>{count} case</source>
        <translation type="unfinished">{count} caisse</translation>
    </message>
    <message>
        <source>{count} cases</source>
        <translation type="unfinished">{count} caisses</translation>
    </message>
    <message>
        <source>{count} cases and pallets stand here</source>
        <translation type="unfinished">{count} caisses et palettes ici</translation>
    </message>
    <message>
        <source>{count} characters, allowed are {least} to {most}</source>
        <translation type="unfinished">{count} caractères, permis {least} à {most}</translation>
    </message>
    <message>
        <source>{count} characters, at most {most}</source>
        <translation type="unfinished">{count} caractères, au plus {most}</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation type="unfinished">{count} jours</translation>
    </message>
    <message>
        <source>{count} days ago</source>
        <translation type="unfinished">il y a {count} jours</translation>
    </message>
    <message>
        <source>{count} fills are too few for a proposal: weigh {least} or more</source>
        <translation type="unfinished">{count} remplissages, trop peu pour proposer : pesez-en {least} ou plus</translation>
    </message>
    <message>
        <source>{count} held or set aside</source>
        <translation type="unfinished">{count} bloqués ou écartés</translation>
    </message>
    <message>
        <source>{count} issued, {used} used so far</source>
        <translation type="unfinished">{count} sorties, {used} utilisées jusqu'ici</translation>
    </message>
    <message>
        <source>{count} kept.</source>
        <translation type="unfinished">{count} gardées.</translation>
    </message>
    <message>
        <source>{count} labels</source>
        <translation type="unfinished">{count} étiquettes</translation>
    </message>
    <message>
        <source>{count} labels are in doubt</source>
        <translation type="unfinished">{count} étiquettes douteuses</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} étiquettes douteuses, première {serial} : répondez dans {where}</translation>
    </message>
    <message>
        <source>{count} labels to answer for: look at each bag</source>
        <translation type="unfinished">{count} étiquettes à régler : regardez chaque sac</translation>
    </message>
    <message>
        <source>{count} lines are weights, {number} are not: look at each of them</source>
        <translation type="unfinished">{count} lignes sont des poids, {number} non : regardez chacune</translation>
    </message>
    <message>
        <source>{count} minutes</source>
        <translation type="unfinished">{count} minutes</translation>
    </message>
    <message>
        <source>{count} more windows wait.</source>
        <translation type="unfinished">{count} autres fenêtres attendent.</translation>
    </message>
    <message>
        <source>{count} of its bags are held</source>
        <translation type="unfinished">{count} de ses sacs bloqués</translation>
    </message>
    <message>
        <source>{count} of {draws} rehearsed samples of the stored bags pass (failed: mean {mean}, T1 {t1}, T2 {t2})</source>
        <translation type="unfinished">{count} des {draws} échantillons répétés passent (échecs : moyenne {mean}, T1 {t1}, T2 {t2})</translation>
    </message>
    <message>
        <source>{count} packs are weighed already, more than the {lot} expected</source>
        <translation type="unfinished">{count} sacs déjà pesés, plus que les {lot} attendus</translation>
    </message>
    <message>
        <source>{count} rejects are undecided</source>
        <translation type="unfinished">{count} rebuts à décider</translation>
    </message>
    <message>
        <source>{count} rejects of {day} wait for a decision</source>
        <translation type="unfinished">{count} rebuts du {day} attendent une décision</translation>
    </message>
    <message>
        <source>{count} runs were purged on {day}, export {folder}</source>
        <translation type="unfinished">{count} séries supprimées le {day}, export {folder}</translation>
    </message>
    <message>
        <source>{count} runs were purged, the last on {day}, export {folder}</source>
        <translation type="unfinished">{count} séries supprimées, la dernière le {day}, export {folder}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} écartés</translation>
    </message>
    <message>
        <source>{count} stops</source>
        <translation type="unfinished">{count} arrêts</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} sacs suspects bloqués : qualité ou chef décide : {where}</translation>
    </message>
    <message>
        <source>{count} things are open</source>
        <translation type="unfinished">{count} points ouverts</translation>
    </message>
    <message>
        <source>{count} things are open, first: {what}. Settle them, or write why the day is signed all the same</source>
        <translation type="unfinished">{count} points ouverts, le premier : {what}. Réglez-les, ou écrivez pourquoi le jour est signé quand même</translation>
    </message>
    <message>
        <source>{count} things happened on {day}</source>
        <translation type="unfinished">{count} faits le {day}</translation>
    </message>
    <message>
        <source>{count} things open, not signed</source>
        <translation type="unfinished">{count} points ouverts, non signé</translation>
    </message>
    <message>
        <source>{count} unit</source>
        <translation type="unfinished">{count} unité</translation>
    </message>
    <message>
        <source>{count} units</source>
        <translation type="unfinished">{count} unités</translation>
    </message>
    <message>
        <source>{count} with customers</source>
        <translation type="unfinished">{count} chez des clients</translation>
    </message>
    <message>
        <source>{count} {code} free</source>
        <translation type="unfinished">{count} {code} libres</translation>
    </message>
    <message>
        <source>{day} is not reviewed and signed</source>
        <translation type="unfinished">le {day} n'est pas revu et signé</translation>
    </message>
    <message>
        <source>{day} is reviewed and signed.</source>
        <translation type="unfinished">{day} revu et signé.</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects, {filter}; {open} open</source>
        <translation type="unfinished">{day} : {shown} sur {all} rebuts, {filter} ; {open} ouverts</translation>
    </message>
    <message>
        <source>{day}: {shown} of {all} rejects; {open} open</source>
        <translation type="unfinished">{day} : {shown} sur {all} rebuts ; {open} ouverts</translation>
    </message>
    <message>
        <source>{digits} is no day: give day and month, like 2411 for 24 November</source>
        <translation type="unfinished">{digits} n'est pas un jour : donnez jour et mois, comme 2411 pour le 24 novembre</translation>
    </message>
    <message>
        <source>{error}, beyond {limit}</source>
        <translation type="unfinished">{error}, au-delà de {limit}</translation>
    </message>
    <message>
        <source>{error}, may be {limit}</source>
        <translation type="unfinished">{error}, permis {limit}</translation>
    </message>
    <message>
        <source>{field} is read as {shown}, not {due}</source>
        <translation type="unfinished">{field} est lu {shown}, non {due}</translation>
    </message>
    <message>
        <source>{field} is {shown}, allowed is {allowed}</source>
        <translation type="unfinished">{field} vaut {shown}, permis : {allowed}</translation>
    </message>
    <message>
        <source>{first} and {count} more</source>
        <translation type="unfinished">{first} et {count} de plus</translation>
    </message>
    <message>
        <source>{first}, and {count} more</source>
        <translation type="unfinished">{first}, et {count} de plus</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind} : {count} sacs, au plus {most} sous T1 ({clause})</translation>
    </message>
    <message>
        <source>{kind}: {count} packs, then {second} more, at most {most} below T1 ({clause})</source>
        <translation type="unfinished">{kind} : {count} sacs, puis {second} de plus, au plus {most} sous T1 ({clause})</translation>
    </message>
    <message>
        <source>{last} comes before {first}: give the first serial first</source>
        <translation type="unfinished">{last} vient avant {first} : donnez d'abord le premier numéro</translation>
    </message>
    <message>
        <source>{mass} DOES NOT FIT ({against})</source>
        <translation type="unfinished">{mass} NE CONVIENT PAS ({against})</translation>
    </message>
    <message>
        <source>{mass} FITS ({against})</source>
        <translation type="unfinished">{mass} CONVIENT ({against})</translation>
    </message>
    <message>
        <source>{mass} a bag</source>
        <translation type="unfinished">{mass} par sac</translation>
    </message>
    <message>
        <source>{mass} g a bag</source>
        <translation type="unfinished">{mass} g par sac</translation>
    </message>
    <message>
        <source>{mass} is below what the scale weighs: see that the pan lies right and nothing lifts it, empty it and set the scale to zero</source>
        <translation type="unfinished">{mass} est en dessous de ce que pèse la balance : voyez que le plateau pose bien et que rien ne le soulève, videz-le et remettez la balance à zéro</translation>
    </message>
    <message>
        <source>{mass} is in high resolution, which is not the indication</source>
        <translation type="unfinished">{mass} est en haute résolution, ce n'est pas l'indication</translation>
    </message>
    <message>
        <source>{mass} is more than the scale weighs, {most}</source>
        <translation type="unfinished">{mass} dépasse ce que pèse la balance, {most}</translation>
    </message>
    <message>
        <source>{mass} is not a multiple of {interval}</source>
        <translation type="unfinished">{mass} n'est pas un multiple de {interval}</translation>
    </message>
    <message>
        <source>{mass} is the tare, not the load</source>
        <translation type="unfinished">{mass} est la tare, pas la charge</translation>
    </message>
    <message>
        <source>{mass} now</source>
        <translation type="unfinished">{mass} maintenant</translation>
    </message>
    <message>
        <source>{mass} proposed</source>
        <translation type="unfinished">{mass} proposé</translation>
    </message>
    <message>
        <source>{mass} this run</source>
        <translation type="unfinished">{mass} cette série</translation>
    </message>
    <message>
        <source>{mass} this run, {money} in money</source>
        <translation type="unfinished">{mass} cette série, {money} en argent</translation>
    </message>
    <message>
        <source>{mass}: {count} bags, {percent} %</source>
        <translation type="unfinished">{mass} : {count} sacs, {percent} %</translation>
    </message>
    <message>
        <source>{mean} OUTSIDE {least} to {most}</source>
        <translation type="unfinished">{mean} HORS de {least} à {most}</translation>
    </message>
    <message>
        <source>{mean} within {least} to {most}</source>
        <translation type="unfinished">{mean} dans {least} à {most}</translation>
    </message>
    <message>
        <source>{name} not installed</source>
        <translation type="unfinished">{name} non installé</translation>
    </message>
    <message>
        <source>{name} serial {code}</source>
        <translation type="unfinished">{name} série {code}</translation>
    </message>
    <message>
        <source>{name} stands for {first} and for {second}: look at the case and keep one</source>
        <translation type="unfinished">{name} : {first} et aussi {second} : regardez la caisse et gardez-en un</translation>
    </message>
    <message>
        <source>{name} waits: a bag is on the pan</source>
        <translation type="unfinished">{name} attend : un sac est sur le plateau</translation>
    </message>
    <message>
        <source>{name} would change what the bags of the open run weigh: end the run</source>
        <translation type="unfinished">{name} changerait le poids des sacs de la série ouverte : terminez la série</translation>
    </message>
    <message>
        <source>{name}: mean {mean}, spread {spread}</source>
        <translation type="unfinished">{name} : moyenne {mean}, dispersion {spread}</translation>
    </message>
    <message>
        <source>{name}: {code} from {who}</source>
        <translation type="unfinished">{name} : {code} de {who}</translation>
    </message>
    <message>
        <source>{number} % full</source>
        <translation type="unfinished">plein à {number} %</translation>
    </message>
    <message>
        <source>{number} % of nominal</source>
        <translation type="unfinished">{number} % du nominal</translation>
    </message>
    <message>
        <source>{number} April {count}</source>
        <translation type="unfinished">{number} avril {count}</translation>
    </message>
    <message>
        <source>{number} August {count}</source>
        <translation type="unfinished">{number} août {count}</translation>
    </message>
    <message>
        <source>{number} December {count}</source>
        <translation type="unfinished">{number} décembre {count}</translation>
    </message>
    <message>
        <source>{number} February {count}</source>
        <translation type="unfinished">{number} février {count}</translation>
    </message>
    <message>
        <source>{number} January {count}</source>
        <translation type="unfinished">{number} janvier {count}</translation>
    </message>
    <message>
        <source>{number} July {count}</source>
        <translation type="unfinished">{number} juillet {count}</translation>
    </message>
    <message>
        <source>{number} June {count}</source>
        <translation type="unfinished">{number} juin {count}</translation>
    </message>
    <message>
        <source>{number} March {count}</source>
        <translation type="unfinished">{number} mars {count}</translation>
    </message>
    <message>
        <source>{number} May {count}</source>
        <translation type="unfinished">{number} mai {count}</translation>
    </message>
    <message>
        <source>{number} November {count}</source>
        <translation type="unfinished">{number} novembre {count}</translation>
    </message>
    <message>
        <source>{number} October {count}</source>
        <translation type="unfinished">{number} octobre {count}</translation>
    </message>
    <message>
        <source>{number} September {count}</source>
        <translation type="unfinished">{number} septembre {count}</translation>
    </message>
    <message>
        <source>{number} bags</source>
        <translation type="unfinished">{number} sacs</translation>
    </message>
    <message>
        <source>{number} failed</source>
        <translation type="unfinished">échec à {number}</translation>
    </message>
    <message>
        <source>{number} held</source>
        <translation type="unfinished">bloqué dès {number}</translation>
    </message>
    <message>
        <source>{number} in money</source>
        <translation type="unfinished">{number} en argent</translation>
    </message>
    <message>
        <source>{number} missing</source>
        <translation type="unfinished">{number} manquantes</translation>
    </message>
    <message>
        <source>{number} of {whole}</source>
        <translation type="unfinished">{number} sur {whole}</translation>
    </message>
    <message>
        <source>{number} of {whole} allowed</source>
        <translation type="unfinished">{number} sur {whole} permis</translation>
    </message>
    <message>
        <source>{number} of {whole} bags</source>
        <translation type="unfinished">{number} sur {whole} sacs</translation>
    </message>
    <message>
        <source>{number} of {whole}: {what}</source>
        <translation type="unfinished">{number} sur {whole} : {what}</translation>
    </message>
    <message>
        <source>{number} to {count} days</source>
        <translation type="unfinished">{number} à {count} jours</translation>
    </message>
    <message>
        <source>{number} to {whole} {unit}</source>
        <translation type="unfinished">{number} à {whole} {unit}</translation>
    </message>
    <message>
        <source>{number} too many</source>
        <translation type="unfinished">{number} de trop</translation>
    </message>
    <message>
        <source>{picked} picked, {count} weighed</source>
        <translation type="unfinished">{picked} choisis, {count} pesés</translation>
    </message>
    <message>
        <source>{product}, version {version}</source>
        <translation type="unfinished">{product}, version {version}</translation>
    </message>
    <message>
        <source>{product}, weighed {time}</source>
        <translation type="unfinished">{product}, pesé à {time}</translation>
    </message>
    <message>
        <source>{product}: {mass} kg net</source>
        <translation type="unfinished">{product} : {mass} kg nets</translation>
    </message>
    <message>
        <source>{result} by {code}</source>
        <translation type="unfinished">{result} par {code}</translation>
    </message>
    <message>
        <source>{seconds} s: {frames} weights, {garbage} not understood ({percent} %, 5 % are allowed), {bytes} bytes</source>
        <translation type="unfinished">{seconds} s : {frames} poids, {garbage} non compris ({percent} %, 5 % permis), {bytes} octets</translation>
    </message>
    <message>
        <source>{serial} must say</source>
        <translation type="unfinished">{serial} doit dire</translation>
    </message>
    <message>
        <source>{serial}: as recorded</source>
        <translation type="unfinished">{serial} : conforme</translation>
    </message>
    <message>
        <source>{sscc} had its use-by date on {day}: it must not leave</source>
        <translation type="unfinished">{sscc} : sa date limite était le {day} ; il ne doit pas partir</translation>
    </message>
    <message>
        <source>{sscc} is a pallet: a pallet holds cases</source>
        <translation type="unfinished">{sscc} est une palette : une palette porte des caisses</translation>
    </message>
    <message>
        <source>{sscc} is gone with {shipment}</source>
        <translation type="unfinished">{sscc} est parti avec {shipment}</translation>
    </message>
    <message>
        <source>{sscc} is on pallet {pallet}</source>
        <translation type="unfinished">{sscc} est sur la palette {pallet}</translation>
    </message>
    <message>
        <source>{sscc} is undone</source>
        <translation type="unfinished">{sscc} est annulé</translation>
    </message>
    <message>
        <source>{sscc} is undone.</source>
        <translation type="unfinished">{sscc} annulé.</translation>
    </message>
    <message>
        <source>{text} is no figure: key in digits, such as 3.4</source>
        <translation type="unfinished">{text} n'est pas un chiffre : tapez comme 3.4</translation>
    </message>
    <message>
        <source>{text} is no serial of a bag, such as A1-7K-000042</source>
        <translation type="unfinished">{text} n'est pas un numéro de sac, comme A1-7K-000042</translation>
    </message>
    <message>
        <source>{text} is no time: write {form}</source>
        <translation type="unfinished">{text} n'est pas une heure : écrivez {form}</translation>
    </message>
    <message>
        <source>{time}: {mass}; mean so far {mean}</source>
        <translation type="unfinished">{time} : {mass} ; moyenne actuelle {mean}</translation>
    </message>
    <message>
        <source>{value} cannot be: allowed is {low} to {high}</source>
        <translation type="unfinished">{value} impossible : permis {low} à {high}</translation>
    </message>
    <message>
        <source>{what} by {code}: {why}</source>
        <translation type="unfinished">{what} par {code} : {why}</translation>
    </message>
    <message>
        <source>{what} cannot be released: {why}</source>
        <translation type="unfinished">{what} ne peut être libéré : {why}</translation>
    </message>
    <message>
        <source>{what} failed its check</source>
        <translation type="unfinished">{what} : échec du contrôle</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} a échoué au contrôle : corrigez, puis recontrôlez : {where}</translation>
    </message>
    <message>
        <source>{what} failed its last check</source>
        <translation type="unfinished">{what} : échec au dernier contrôle</translation>
    </message>
    <message>
        <source>{what} failed: write what is done about it before it is recorded</source>
        <translation type="unfinished">{what} en échec : écrivez ce qui est fait avant de l'enregistrer</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} dans {minutes} min</translation>
    </message>
    <message>
        <source>{what} is on record.</source>
        <translation type="unfinished">Enregistré : {what}.</translation>
    </message>
    <message>
        <source>{what} keeps no bag any more: release the hold</source>
        <translation type="unfinished">{what} ne bloque plus de sac : libérez le blocage</translation>
    </message>
    <message>
        <source>{what} lost on {code}</source>
        <translation type="unfinished">{what} : connexion perdue sur {code}</translation>
    </message>
    <message>
        <source>{what} needs {thing}</source>
        <translation type="unfinished">{what} demande {thing}</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} maintenant</translation>
    </message>
    <message>
        <source>{what} was released already</source>
        <translation type="unfinished">{what} est déjà libéré</translation>
    </message>
    <message>
        <source>{what} was scanned already</source>
        <translation type="unfinished">{what} est déjà lu</translation>
    </message>
    <message>
        <source>{what} was {usual}, now {seen}: is this still the same product?</source>
        <translation type="unfinished">{what} : {usual} avant, {seen} maintenant : est-ce encore le même produit ?</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what} : vérifiez date et heure, puis signez dans {where}</translation>
    </message>
    <message>
        <source>{what}: no checks in the settings</source>
        <translation type="unfinished">{what} : aucun contrôle dans les réglages</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} ne peut pas signer ceci</translation>
    </message>
    <message>
        <source>{who} cannot witness a decision of {other}: choose another person</source>
        <translation type="unfinished">{who} ne peut être témoin d'une décision de {other} : choisissez quelqu'un d'autre</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} n'a pas signé : pour {act}, il faut un PIN ou un badge</translation>
    </message>
    <message>
        <source>{who} does not lead: the lead signs first</source>
        <translation type="unfinished">{who} n'est pas chef : le chef signe d'abord</translation>
    </message>
    <message>
        <source>{who} has no PIN: the manager sets one, station people pin {id}</source>
        <translation type="unfinished">{who} n'a pas de PIN : le responsable en donne un, station people pin {id}</translation>
    </message>
    <message>
        <source>{who} is nobody in people.toml</source>
        <translation type="unfinished">{who} n'est pas dans people.toml</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} ne peut pas signer ici</translation>
    </message>
    <message>
        <source>{who} signs first: another person signs second</source>
        <translation type="unfinished">{who} signe d'abord : une autre personne signe ensuite</translation>
    </message>
    <message>
        <source>{why}, after a page was out</source>
        <translation type="unfinished">{why}, après la sortie d'une page</translation>
    </message>
    <message>
        <source>{why}, after printing may have begun</source>
        <translation type="unfinished">{why}, alors que l'impression avait peut-être commencé</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why} : deux personnes approuvent l'étiquette dans {where}</translation>
    </message>
</context>
</TS>
