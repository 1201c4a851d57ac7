<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
<context>
    <name>station</name>
    <message>
        <source>1 PRODUCT</source>
        <translation type="unfinished">1 PRODUIT</translation>
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
        <source>ADD</source>
        <translation type="unfinished">AJOUTEZ</translation>
    </message>
    <message>
        <source>ALARMS</source>
        <translation type="unfinished">ALARMES</translation>
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
        <source>BEFORE</source>
        <translation type="unfinished">AVANT</translation>
    </message>
    <message>
        <source>BIN</source>
        <translation type="unfinished">BAC</translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished">À consommer de préférence avant le</translation>
    </message>
    <message>
        <source>CALL LEAD</source>
        <translation type="unfinished">APPEL CHEF</translation>
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
        <source>CHECKS</source>
        <translation type="unfinished">CONTRÔLES</translation>
    </message>
    <message>
        <source>CLEAR</source>
        <translation type="unfinished">EFFACER</translation>
    </message>
    <message>
        <source>CO2</source>
        <translation type="unfinished">CO2</translation>
    </message>
    <message>
        <source>COUNTED</source>
        <translation type="unfinished">COMPTÉ</translation>
    </message>
    <message>
        <source>CUT ON</source>
        <translation type="unfinished">COUPÉ LE</translation>
    </message>
    <message>
        <source>DECIDE</source>
        <translation type="unfinished">DÉCIDER</translation>
    </message>
    <message>
        <source>DO NOT SIGN</source>
        <translation type="unfinished">NE PAS SIGNER</translation>
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
        <source>EMPTY PAN</source>
        <translation type="unfinished">VIDEZ</translation>
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
        <source>FILTER</source>
        <translation type="unfinished">FILTRER</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">PREMIÈRE</translation>
    </message>
    <message>
        <source>GIVE UP</source>
        <translation type="unfinished">ARRÊTER</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">CONTINUER</translation>
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
        <source>I HAVE SEEN IT</source>
        <translation type="unfinished">JE L'AI VU</translation>
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
        <source>LABELS</source>
        <translation type="unfinished">ÉTIQUETTES</translation>
    </message>
    <message>
        <source>LANGUAGE</source>
        <translation type="unfinished">LANGUE</translation>
    </message>
    <message>
        <source>LEAD</source>
        <translation type="unfinished">CHEF</translation>
    </message>
    <message>
        <source>LIFT BAG</source>
        <translation type="unfinished">LEVEZ SAC</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">LIGNE</translation>
    </message>
    <message>
        <source>LOAD AGAIN</source>
        <translation type="unfinished">RECHARGER</translation>
    </message>
    <message>
        <source>LOOK UP</source>
        <translation type="unfinished">CHERCHER</translation>
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
        <source>Labels in doubt</source>
        <translation type="unfinished">Étiquettes douteuses</translation>
    </message>
    <message>
        <source>Language of the packer's screen</source>
        <translation type="unfinished">Langue de l'écran de l'emballeur</translation>
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
        <source>MANAGER</source>
        <translation type="unfinished">GÉRANT</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished">PLUS</translation>
    </message>
    <message>
        <source>Mean net {mass}</source>
        <translation type="unfinished">Net moyen {mass}</translation>
    </message>
    <message>
        <source>NEW HOLD</source>
        <translation type="unfinished">NOUVEAU BLOCAGE</translation>
    </message>
    <message>
        <source>NO READING</source>
        <translation type="unfinished">SANS POIDS</translation>
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
        <source>No good bag yet</source>
        <translation type="unfinished">Pas encore de sac bon</translation>
    </message>
    <message>
        <source>No run open</source>
        <translation type="unfinished">Aucune série ouverte</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">DE L'EMBALLEUR</translation>
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
        <source>On the scale</source>
        <translation type="unfinished">À la balance</translation>
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
        <source>PAPER</source>
        <translation type="unfinished">PAPIER</translation>
    </message>
    <message>
        <source>PRINT</source>
        <translation type="unfinished">IMPRIMER</translation>
    </message>
    <message>
        <source>QA</source>
        <translation type="unfinished">QUALITÉ</translation>
    </message>
    <message>
        <source>QUALITY</source>
        <translation type="unfinished">QUALITÉ</translation>
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
        <source>REHEARSE</source>
        <translation type="unfinished">RÉPÉTER</translation>
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
        <source>ROLL</source>
        <translation type="unfinished">ROULEAU</translation>
    </message>
    <message>
        <source>RUN</source>
        <translation type="unfinished">SÉRIE</translation>
    </message>
    <message>
        <source>RUN, then {door} ({key})</source>
        <translation type="unfinished">SÉRIE, puis {door} ({key})</translation>
    </message>
    <message>
        <source>Refused. {why}</source>
        <translation type="unfinished">Refusé. {why}</translation>
    </message>
    <message>
        <source>Run open</source>
        <translation type="unfinished">Série ouverte</translation>
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
        <source>SEAL</source>
        <translation type="unfinished">SCELLEZ</translation>
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
        <source>STOP</source>
        <translation type="unfinished">ARRÊT</translation>
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
        <source>Start a run</source>
        <translation type="unfinished">Ouvrir une série</translation>
    </message>
    <message>
        <source>T2, T1, nominal</source>
        <translation type="unfinished">T2, T1, nominal</translation>
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
        <source>TRACE</source>
        <translation type="unfinished">TRAÇAGE</translation>
    </message>
    <message>
        <source>TRAINING</source>
        <translation type="unfinished">FORMATION</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">L'indication de la balance fait foi. Si cet écran et la balance diffèrent, c'est la balance qui compte : arrêtez et appelez le chef.</translation>
    </message>
    <message>
        <source>Touch your name first.</source>
        <translation type="unfinished">Touchez d'abord votre nom.</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation type="unfinished">À consommer jusqu'au</translation>
    </message>
    <message>
        <source>WAIT</source>
        <translation type="unfinished">ATTENDEZ</translation>
    </message>
    <message>
        <source>WEIGH ONE BAG</source>
        <translation type="unfinished">PESER UN SAC</translation>
    </message>
    <message>
        <source>WIPE PAN</source>
        <translation type="unfinished">ESSUYEZ</translation>
    </message>
    <message>
        <source>WORK OUT</source>
        <translation type="unfinished">CALCULER</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">Pourquoi l'écarter ?</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">un sac est sur le plateau : finissez-le, levez-le, puis closez la série</translation>
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
        <source>a cover is open: close it</source>
        <translation type="unfinished">un capot est ouvert : fermez-le</translation>
    </message>
    <message>
        <source>a door is open: close it</source>
        <translation type="unfinished">une porte est ouverte : fermez-la</translation>
    </message>
    <message>
        <source>a held lot is on the line</source>
        <translation type="unfinished">un lot bloqué est sur la ligne</translation>
    </message>
    <message>
        <source>a label does not match</source>
        <translation type="unfinished">une étiquette diffère</translation>
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
        <source>a new roll begins with a first-off</source>
        <translation type="unfinished">un nouveau rouleau commence par une première étiquette</translation>
    </message>
    <message>
        <source>a pause</source>
        <translation type="unfinished">une pause</translation>
    </message>
    <message>
        <source>a run is open: end it before the next one starts</source>
        <translation type="unfinished">une série est ouverte : closez-la avant la suivante</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">après un arrêt</translation>
    </message>
    <message>
        <source>and {count} more, below these</source>
        <translation type="unfinished">et {count} de plus, au-dessous</translation>
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
        <source>as people.toml says</source>
        <translation type="unfinished">selon people.toml</translation>
    </message>
    <message>
        <source>asked the line …</source>
        <translation type="unfinished">demandé à la ligne …</translation>
    </message>
    <message>
        <source>at random</source>
        <translation type="unfinished">au hasard</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">sac</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">sac {code}, lot de film {lot} sans étude de tare : faites-la : {where}</translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">sacs</translation>
    </message>
    <message>
        <source>break</source>
        <translation type="unfinished">pause</translation>
    </message>
    <message>
        <source>burst seal</source>
        <translation type="unfinished">soudure ouverte</translation>
    </message>
    <message>
        <source>call somebody</source>
        <translation type="unfinished">appeler quelqu'un</translation>
    </message>
    <message>
        <source>change or explain a label roll</source>
        <translation type="unfinished">changer ou expliquer un rouleau</translation>
    </message>
    <message>
        <source>check of {what}</source>
        <translation type="unfinished">contrôle : {what}</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">contrôlez la balance après {what} : {where}</translation>
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
        <source>compare the label, then clear the scan</source>
        <translation type="unfinished">comparez l'étiquette, puis réglez la lecture</translation>
    </message>
    <message>
        <source>confirm date and time</source>
        <translation type="unfinished">confirmer date et heure</translation>
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
        <source>count the bags of the run before: {where}</source>
        <translation type="unfinished">comptez les sacs de la série d'avant : {where}</translation>
    </message>
    <message>
        <source>date or time is in doubt</source>
        <translation type="unfinished">date ou heure douteuse</translation>
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
        <source>decide about suspect bags</source>
        <translation type="unfinished">décider des sacs suspects</translation>
    </message>
    <message>
        <source>decide what becomes of a bag</source>
        <translation type="unfinished">décider du sort d'un sac</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">fait</translation>
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
        <source>expired – take it off the line</source>
        <translation type="unfinished">périmé – retirez-le de la ligne</translation>
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
        <source>first label</source>
        <translation type="unfinished">première étiquette</translation>
    </message>
    <message>
        <source>floor, target, upper</source>
        <translation type="unfinished">plancher, cible, maximum</translation>
    </message>
    <message>
        <source>foreign body</source>
        <translation type="unfinished">corps étranger</translation>
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
        <source>gross weight</source>
        <translation type="unfinished">poids brut</translation>
    </message>
    <message>
        <source>held – call QA</source>
        <translation type="unfinished">bloqué – appelez la qualité</translation>
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
        <source>hold, no record</source>
        <translation type="unfinished">bloquer, sans relevé</translation>
    </message>
    <message>
        <source>in the bag {mass}</source>
        <translation type="unfinished">dans le sac {mass}</translation>
    </message>
    <message>
        <source>it does not answer: is it switched on, is its cable in?</source>
        <translation type="unfinished">elle ne répond pas : allumée, câble branché ?</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">pas sortie après {seconds} s : regardez si elle sort</translation>
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
        <source>keep, restore or purge the record</source>
        <translation type="unfinished">garder, restaurer ou purger le registre</translation>
    </message>
    <message>
        <source>label is void</source>
        <translation type="unfinished">étiquette annulée</translation>
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
        <source>label {serial} is in doubt: {why}</source>
        <translation type="unfinished">étiquette {serial} douteuse : {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">l'étiquette {serial} n'est pas sortie : voyez l'imprimante</translation>
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
        <source>last label</source>
        <translation type="unfinished">dernière étiquette</translation>
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
        <source>lead, on the scale</source>
        <translation type="unfinished">chef, à la balance</translation>
    </message>
    <message>
        <source>leave the full screen</source>
        <translation type="unfinished">quitter le plein écran</translation>
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
        <source>look whether the label is whole</source>
        <translation type="unfinished">regardez si l'étiquette est entière</translation>
    </message>
    <message>
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">lot {lot} bloqué : retirez-le et chargez-en un autre : {where}</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">lot {lot} inconnu : réceptionnez-le d'abord</translation>
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
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lot {lot} : {why}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">machine</translation>
    </message>
    <message>
        <source>make the check</source>
        <translation type="unfinished">faites le contrôle</translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished">gérant</translation>
    </message>
    <message>
        <source>metal detector</source>
        <translation type="unfinished">détecteur de métaux</translation>
    </message>
    <message>
        <source>move a lot on the line</source>
        <translation type="unfinished">déplacer un lot sur la ligne</translation>
    </message>
    <message>
        <source>no PIN or badge yet</source>
        <translation type="unfinished">ni PIN ni badge</translation>
    </message>
    <message>
        <source>no bag of this is a product</source>
        <translation type="unfinished">aucun de ces sacs n'est un produit</translation>
    </message>
    <message>
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">aucun rouleau d'étiquettes : lisez-en un dans {where}</translation>
    </message>
    <message>
        <source>no labels left: load a roll</source>
        <translation type="unfinished">plus d'étiquettes : chargez un rouleau</translation>
    </message>
    <message>
        <source>no product</source>
        <translation type="unfinished">pas de produit</translation>
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
        <source>no run is open</source>
        <translation type="unfinished">aucune série ouverte</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">aucune série ouverte : le chef en ouvre une</translation>
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
        <source>not labelled: {reason}</source>
        <translation type="unfinished">sans étiquette : {reason}</translation>
    </message>
    <message>
        <source>not yet reviewed</source>
        <translation type="unfinished">pas encore relu</translation>
    </message>
    <message>
        <source>of {count} bags</source>
        <translation type="unfinished">sur {count} sacs</translation>
    </message>
    <message>
        <source>on the scale: {who}</source>
        <translation type="unfinished">à la balance : {who}</translation>
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
        <source>over capacity: take the load off</source>
        <translation type="unfinished">surcharge : retirez la charge</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">emballeur</translation>
    </message>
    <message>
        <source>plan the check</source>
        <translation type="unfinished">prévoyez le contrôle</translation>
    </message>
    <message>
        <source>print a label again</source>
        <translation type="unfinished">réimprimer une étiquette</translation>
    </message>
    <message>
        <source>product temperature</source>
        <translation type="unfinished">température du produit</translation>
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
        <source>put it right, then check again</source>
        <translation type="unfinished">corrigez, puis recontrôlez</translation>
    </message>
    <message>
        <source>qa</source>
        <translation type="unfinished">qualité</translation>
    </message>
    <message>
        <source>receive a delivery</source>
        <translation type="unfinished">réceptionner une livraison</translation>
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
        <source>refuse a label</source>
        <translation type="unfinished">refuser une étiquette</translation>
    </message>
    <message>
        <source>release what is held</source>
        <translation type="unfinished">libérer ce qui est bloqué</translation>
    </message>
    <message>
        <source>review and sign a day</source>
        <translation type="unfinished">relire et signer une journée</translation>
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
        <source>room temperature</source>
        <translation type="unfinished">température de la salle</translation>
    </message>
    <message>
        <source>rule set</source>
        <translation type="unfinished">règles</translation>
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
        <source>say that an alarm is seen</source>
        <translation type="unfinished">dire qu'une alarme est vue</translation>
    </message>
    <message>
        <source>say what became of a label</source>
        <translation type="unfinished">dire ce qu'est devenue une étiquette</translation>
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
        <source>scale line</source>
        <translation type="unfinished">liaison balance</translation>
    </message>
    <message>
        <source>scale shows {mass}, the scale's own indication counts</source>
        <translation type="unfinished">la balance indique {mass}, c'est elle qui fait foi</translation>
    </message>
    <message>
        <source>scan a label</source>
        <translation type="unfinished">lire une étiquette</translation>
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
        <source>scan the last label</source>
        <translation type="unfinished">lisez la dernière étiquette</translation>
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
        <source>service</source>
        <translation type="unfinished">service</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished">écarté</translation>
    </message>
    <message>
        <source>set people, PINs and badges</source>
        <translation type="unfinished">gérer personnes, PIN et badges</translation>
    </message>
    <message>
        <source>setting aside: {reason}</source>
        <translation type="unfinished">mise à l'écart : {reason}</translation>
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
        <source>ship</source>
        <translation type="unfinished">expédier</translation>
    </message>
    <message>
        <source>sign a change of run</source>
        <translation type="unfinished">signer un changement de série</translation>
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
        <source>start a run</source>
        <translation type="unfinished">ouvrir une série</translation>
    </message>
    <message>
        <source>stop the line</source>
        <translation type="unfinished">arrêter la ligne</translation>
    </message>
    <message>
        <source>stored bags</source>
        <translation type="unfinished">sacs stockés</translation>
    </message>
    <message>
        <source>take it off: {where}</source>
        <translation type="unfinished">retirez-le : {where}</translation>
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
        <source>tare</source>
        <translation type="unfinished">tare</translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished">cible</translation>
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
        <source>the disk is full: free some space, then print again</source>
        <translation type="unfinished">disque plein : libérez de la place, puis réimprimez</translation>
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
        <source>the folder for labels is gone: make {folder} again</source>
        <translation type="unfinished">le dossier d'étiquettes manque : recréez {folder}</translation>
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
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">la ligne est arrêtée, {reason} : SÉRIE, puis CHANGEMENT (F8) pour continuer</translation>
    </message>
    <message>
        <source>the line stopped</source>
        <translation type="unfinished">la ligne s'est arrêtée</translation>
    </message>
    <message>
        <source>the mean is below nominal</source>
        <translation type="unfinished">la moyenne est sous le nominal</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">le plateau doit être vide avant le sac suivant</translation>
    </message>
    <message>
        <source>the printer gave up</source>
        <translation type="unfinished">l'imprimante a abandonné</translation>
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
        <source>the printer: {why}</source>
        <translation type="unfinished">l'imprimante : {why}</translation>
    </message>
    <message>
        <source>the queue cannot reach the printer: switch it on, check its cable</source>
        <translation type="unfinished">la file n'atteint pas l'imprimante : allumez-la, vérifiez le câble</translation>
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
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">la balance a échoué au contrôle : réglez-la, puis recontrôlez : {where}</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">la balance ne répond pas : vérifiez câble et courant</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">la balance affiche un net : annulez sa tare, la station déduit le sac</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">la balance est en {unit}, la série en {other} : réglez la balance</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">la lecture d'une étiquette est en retard : {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">la lecture de l'étiquette {serial} diffère : le chef la règle dans {where}</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">la station est en retard : levez le sac et attendez</translation>
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
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">ce sac n'est ni enregistré ni étiqueté : {why}</translation>
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
        <source>touch an alarm first</source>
        <translation type="unfinished">touchez d'abord une alarme</translation>
    </message>
    <message>
        <source>touch who you are first</source>
        <translation type="unfinished">touchez d'abord qui vous êtes</translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished">maximum</translation>
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
        <source>wash record</source>
        <translation type="unfinished">relevé de lavage</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">pesez un sac vide d'ici {count} sacs</translation>
    </message>
    <message>
        <source>wipe the pan, then zero the scale</source>
        <translation type="unfinished">essuyez le plateau, puis remettez à zéro</translation>
    </message>
    <message>
        <source>work at this screen</source>
        <translation type="unfinished">travailler sur cet écran</translation>
    </message>
    <message>
        <source>wrong weight</source>
        <translation type="unfinished">mauvais poids</translation>
    </message>
    <message>
        <source>{count} bags</source>
        <translation type="unfinished">{count} sacs</translation>
    </message>
    <message>
        <source>{count} bags are held after a failed check: QA decides: {where}</source>
        <translation type="unfinished">{count} sacs bloqués après un contrôle raté : la qualité décide : {where}</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} sacs emballés : le chef clôt la série</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} étiquettes douteuses, première {serial} : répondez dans {where}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} écartés</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} sacs suspects bloqués : qualité ou chef décide : {where}</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} a échoué au contrôle : corrigez, puis recontrôlez : {where}</translation>
    </message>
    <message>
        <source>{what} in {minutes} min</source>
        <translation type="unfinished">{what} dans {minutes} min</translation>
    </message>
    <message>
        <source>{what} now</source>
        <translation type="unfinished">{what} maintenant</translation>
    </message>
    <message>
        <source>{what}: look at date and time, then sign at {where}</source>
        <translation type="unfinished">{what} : vérifiez date et heure, puis signez dans {where}</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} ne peut pas signer ceci</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} n'a pas signé : pour {act}, il faut un PIN ou un badge</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} ne peut pas signer ici</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why} : deux personnes approuvent l'étiquette dans {where}</translation>
    </message>
</context>
</TS>
