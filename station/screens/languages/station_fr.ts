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
        <translation type="unfinished">Un code a été lu, mais aucun champ ne l'attend : ouvrez sa page</translation>
    </message>
    <message>
        <source>ADD</source>
        <translation type="unfinished">AJOUTEZ</translation>
    </message>
    <message>
        <source>BACK</source>
        <translation type="unfinished">RETOUR</translation>
    </message>
    <message>
        <source>BAG ON</source>
        <translation type="unfinished">POSEZ SAC</translation>
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
        <source>DO NOT SIGN</source>
        <translation type="unfinished">NE PAS SIGNER</translation>
    </message>
    <message>
        <source>EMPTY PAN</source>
        <translation type="unfinished">VIDEZ</translation>
    </message>
    <message>
        <source>END RUN</source>
        <translation type="unfinished">CLORE SÉRIE</translation>
    </message>
    <message>
        <source>FIRST-OFF</source>
        <translation type="unfinished">PREMIÈRE</translation>
    </message>
    <message>
        <source>GO ON</source>
        <translation type="unfinished">CONTINUER</translation>
    </message>
    <message>
        <source>Good bags: {count} of {order}, set aside: {aside}</source>
        <translation type="unfinished">Sacs bons : {count} sur {order}, écartés : {aside}</translation>
    </message>
    <message>
        <source>Good bags: {count}, set aside: {aside}</source>
        <translation type="unfinished">Sacs bons : {count}, écartés : {aside}</translation>
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
        <source>LIFT BAG</source>
        <translation type="unfinished">LEVEZ SAC</translation>
    </message>
    <message>
        <source>LINE</source>
        <translation type="unfinished">LIGNE</translation>
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
        <translation type="unfinished">Langue de l'écran du conditionneur</translation>
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
        <source>NO READING</source>
        <translation type="unfinished">SANS POIDS</translation>
    </message>
    <message>
        <source>NUMBERS</source>
        <translation type="unfinished">CHIFFRES</translation>
    </message>
    <message>
        <source>Next: {what}</source>
        <translation type="unfinished">Ensuite : {what}</translation>
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
        <source>O2</source>
        <translation type="unfinished">O2</translation>
    </message>
    <message>
        <source>OF THE PACKER</source>
        <translation type="unfinished">DU CONDITIONNEUR</translation>
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
        <translation type="unfinished">Commande : libre</translation>
    </message>
    <message>
        <source>Order: {count} bags</source>
        <translation type="unfinished">Commande : {count} sacs</translation>
    </message>
    <message>
        <source>PACKER</source>
        <translation type="unfinished">CONDITIONNEMENT</translation>
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
        <source>SHIPPING</source>
        <translation type="unfinished">EXPÉDITION</translation>
    </message>
    <message>
        <source>SIGN</source>
        <translation type="unfinished">SIGNER</translation>
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
        <source>TARE</source>
        <translation type="unfinished">TARE</translation>
    </message>
    <message>
        <source>TRACE</source>
        <translation type="unfinished">TRAÇAGE</translation>
    </message>
    <message>
        <source>The scale's own indication counts. If this screen and the scale differ, the scale counts: stop and call the lead.</source>
        <translation type="unfinished">L'indication de la balance fait foi. Si cet écran et la balance diffèrent, c'est la balance qui compte : arrêtez et appelez le chef.</translation>
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
        <source>WIPE PAN</source>
        <translation type="unfinished">ESSUYEZ</translation>
    </message>
    <message>
        <source>Why is it set aside?</source>
        <translation type="unfinished">Pourquoi l'écarter ?</translation>
    </message>
    <message>
        <source>a bag is on the pan: finish it and lift it, then end the run</source>
        <translation type="unfinished">un sac est sur le plateau : finissez-le, levez-le, puis closez la série</translation>
    </message>
    <message>
        <source>a check goes on at the scale: put no bag on it</source>
        <translation type="unfinished">contrôle de la balance en cours : ne posez pas de sac</translation>
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
        <translation type="unfinished">une série est ouverte : closez-la avant la suivante</translation>
    </message>
    <message>
        <source>after a stop</source>
        <translation type="unfinished">après un arrêt</translation>
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
        <source>bag</source>
        <translation type="unfinished">sac</translation>
    </message>
    <message>
        <source>bag {code}, film lot {lot} has no tare study: make one: {where}</source>
        <translation type="unfinished">sac {code}, lot de film {lot} sans étude de tare : faites-la : {where}</translation>
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
        <translation type="unfinished">contrôle : {what}</translation>
    </message>
    <message>
        <source>check the scale after {what}: {where}</source>
        <translation type="unfinished">contrôlez la balance après {what} : {where}</translation>
    </message>
    <message>
        <source>checking …</source>
        <translation type="unfinished">vérification …</translation>
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
        <translation type="unfinished">videz la ligne et signez : {where}</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">fermée</translation>
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
        <translation type="unfinished">comptez les sacs de la série d'avant : {where}</translation>
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
        <source>fill a case or close a pallet</source>
        <translation type="unfinished">remplir un carton ou clore une palette</translation>
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
        <source>in the bag {mass}</source>
        <translation type="unfinished">dans le sac {mass}</translation>
    </message>
    <message>
        <source>it was not out after {seconds} s: look whether it comes out</source>
        <translation type="unfinished">pas sortie après {seconds} s : regardez si elle sort</translation>
    </message>
    <message>
        <source>its run ended before the printer said that it came out</source>
        <translation type="unfinished">la série s'est close avant que l'imprimante confirme la sortie</translation>
    </message>
    <message>
        <source>its use-by {day} is past: end the run</source>
        <translation type="unfinished">sa date limite {day} est passée : closez la série</translation>
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
        <translation type="unfinished">étiquette {serial} douteuse : {why}</translation>
    </message>
    <message>
        <source>label {serial} is not out yet: look at the printer</source>
        <translation type="unfinished">l'étiquette {serial} n'est pas sortie : voyez l'imprimante</translation>
    </message>
    <message>
        <source>label {serial} may still come out: cancel it at the printer, or wait</source>
        <translation type="unfinished">l'étiquette {serial} peut encore sortir : annulez-la à l'imprimante ou attendez</translation>
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
        <source>lot {lot} is held: take it off and load another: {where}</source>
        <translation type="unfinished">lot {lot} bloqué : retirez-le et chargez-en un autre : {where}</translation>
    </message>
    <message>
        <source>lot {lot} is not known: receive it first</source>
        <translation type="unfinished">lot {lot} inconnu : réceptionnez-le d'abord</translation>
    </message>
    <message>
        <source>lot {lot} is on the line and on no label: take it off: {where}</source>
        <translation type="unfinished">lot {lot} sur la ligne mais sur aucune étiquette : retirez-le : {where}</translation>
    </message>
    <message>
        <source>lot {lot} is {component}, which {product} does not contain: allowed are {allowed}</source>
        <translation type="unfinished">le lot {lot} est {component}, absent de {product} : sont admis {allowed}</translation>
    </message>
    <message>
        <source>lot {lot} is {why}</source>
        <translation type="unfinished">lot {lot} : {why}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished">machine</translation>
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
        <source>no label roll is in: scan one in at {where}</source>
        <translation type="unfinished">aucun rouleau d'étiquettes : lisez-en un dans {where}</translation>
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
        <source>no run is open</source>
        <translation type="unfinished">aucune série ouverte</translation>
    </message>
    <message>
        <source>no run is open: the lead starts one</source>
        <translation type="unfinished">aucune série ouverte : le chef en ouvre une</translation>
    </message>
    <message>
        <source>nobody signed</source>
        <translation type="unfinished">personne n'a signé</translation>
    </message>
    <message>
        <source>nobody who may sign has a PIN or badge: station people pin</source>
        <translation type="unfinished">personne pouvant signer n'a de PIN ni de badge : station people pin</translation>
    </message>
    <message>
        <source>not labelled: {reason}</source>
        <translation type="unfinished">sans étiquette : {reason}</translation>
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
        <translation type="unfinished">à la balance : {who}</translation>
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
        <source>other</source>
        <translation type="unfinished">autre</translation>
    </message>
    <message>
        <source>over capacity: take the load off</source>
        <translation type="unfinished">surcharge : retirez la charge</translation>
    </message>
    <message>
        <source>packer</source>
        <translation type="unfinished">conditionneur</translation>
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
        <translation type="unfinished">lisez la {what} : {where}</translation>
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
        <translation type="unfinished">mise à l'écart : {reason}</translation>
    </message>
    <message>
        <source>shelve an alarm</source>
        <translation type="unfinished">différer une alarme</translation>
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
        <source>take it off: {where}</source>
        <translation type="unfinished">retirez-le : {where}</translation>
    </message>
    <message>
        <source>take over changed settings</source>
        <translation type="unfinished">reprendre des réglages changés</translation>
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
        <source>the centre stops {what} {code} ({reason}): {end}</source>
        <translation type="unfinished">la centrale arrête {what} {code} ({reason}) : {end}</translation>
    </message>
    <message>
        <source>the check of the scale is overdue: {where}</source>
        <translation type="unfinished">le contrôle de la balance est en retard : {where}</translation>
    </message>
    <message>
        <source>the check of {what} is overdue: {where}</source>
        <translation type="unfinished">le contrôle ({what}) est en retard : {where}</translation>
    </message>
    <message>
        <source>the empty bag of {mass} does not fit its {what}: weigh another: {where}</source>
        <translation type="unfinished">le sac vide de {mass} ne convient pas ({what}) : pesez-en un autre : {where}</translation>
    </message>
    <message>
        <source>the empty pan shows {mass}: wipe it, then zero the scale</source>
        <translation type="unfinished">le plateau vide indique {mass} : essuyez-le, puis remettez à zéro</translation>
    </message>
    <message>
        <source>the label was refused ({why}): end the run, or approve it at {where}</source>
        <translation type="unfinished">étiquette refusée ({why}) : closez la série ou approuvez dans {where}</translation>
    </message>
    <message>
        <source>the line stands, {reason}: RUN, then CHANGE (F8) to go on</source>
        <translation type="unfinished">la ligne est arrêtée, {reason} : SÉRIE, puis CHANGEMENT (F8) pour continuer</translation>
    </message>
    <message>
        <source>the pan must be empty before the next bag counts</source>
        <translation type="unfinished">le plateau doit être vide avant le sac suivant</translation>
    </message>
    <message>
        <source>the printer: {why}</source>
        <translation type="unfinished">l'imprimante : {why}</translation>
    </message>
    <message>
        <source>the run begins with a check of the scale: {where}</source>
        <translation type="unfinished">la série commence par un contrôle de la balance : {where}</translation>
    </message>
    <message>
        <source>the run begins with a check of {what}: {where}</source>
        <translation type="unfinished">la série commence par un contrôle ({what}) : {where}</translation>
    </message>
    <message>
        <source>the run begins with a first-off</source>
        <translation type="unfinished">la série commence par une première étiquette</translation>
    </message>
    <message>
        <source>the scale failed its check: adjust it, then check it as left: {where}</source>
        <translation type="unfinished">la balance a échoué au contrôle : réglez-la, puis recontrôlez : {where}</translation>
    </message>
    <message>
        <source>the scale is silent: check its cable and power</source>
        <translation type="unfinished">la balance ne répond pas : vérifiez câble et courant</translation>
    </message>
    <message>
        <source>the scale shows a net weight: clear its tare, the station subtracts the bag itself</source>
        <translation type="unfinished">la balance affiche un net : annulez sa tare, la station déduit le sac</translation>
    </message>
    <message>
        <source>the scale shows {unit}, the run is in {other}: set the scale back</source>
        <translation type="unfinished">la balance est en {unit}, la série en {other} : réglez la balance</translation>
    </message>
    <message>
        <source>the scan of a label is overdue: {where}</source>
        <translation type="unfinished">la lecture d'une étiquette est en retard : {where}</translation>
    </message>
    <message>
        <source>the scan of label {serial} does not match: the lead clears it at {where}</source>
        <translation type="unfinished">la lecture de l'étiquette {serial} diffère : le chef la règle dans {where}</translation>
    </message>
    <message>
        <source>the station is behind the scale: lift the bag off and wait</source>
        <translation type="unfinished">la station est en retard : levez le sac et attendez</translation>
    </message>
    <message>
        <source>this PIN is not right</source>
        <translation type="unfinished">ce PIN n'est pas le bon</translation>
    </message>
    <message>
        <source>this PIN is not right: wait {time}</source>
        <translation type="unfinished">ce PIN n'est pas le bon : attendez {time}</translation>
    </message>
    <message>
        <source>this badge is not right</source>
        <translation type="unfinished">ce badge n'est pas le bon</translation>
    </message>
    <message>
        <source>this badge is not right: wait {time}</source>
        <translation type="unfinished">ce badge n'est pas le bon : attendez {time}</translation>
    </message>
    <message>
        <source>this bag is not recorded and has no label: {why}</source>
        <translation type="unfinished">ce sac n'est ni enregistré ni étiqueté : {why}</translation>
    </message>
    <message>
        <source>too many wrong PINs: wait {time}</source>
        <translation type="unfinished">trop de PIN faux : attendez {time}</translation>
    </message>
    <message>
        <source>too many wrong badges: wait {time}</source>
        <translation type="unfinished">trop de badges faux : attendez {time}</translation>
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
        <source>wash record</source>
        <translation type="unfinished">relevé de lavage</translation>
    </message>
    <message>
        <source>weigh an empty bag within {count} bags</source>
        <translation type="unfinished">pesez un sac vide d'ici {count} sacs</translation>
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
        <translation type="unfinished">{count} sacs bloqués après un contrôle raté : la qualité décide : {where}</translation>
    </message>
    <message>
        <source>{count} bags are packed: the lead ends the run</source>
        <translation type="unfinished">{count} sacs emballés : le chef clôt la série</translation>
    </message>
    <message>
        <source>{count} labels in doubt, first {serial}: answer in {where}</source>
        <translation type="unfinished">{count} étiquettes douteuses, première {serial} : répondez dans {where}</translation>
    </message>
    <message>
        <source>{count} set aside</source>
        <translation type="unfinished">{count} écartés</translation>
    </message>
    <message>
        <source>{count} suspect bags are held: QA or the lead decides: {where}</source>
        <translation type="unfinished">{count} sacs suspects bloqués : qualité ou chef décide : {where}</translation>
    </message>
    <message>
        <source>{what} failed its check: put it right, then check it again: {where}</source>
        <translation type="unfinished">{what} a échoué au contrôle : corrigez, puis recontrôlez : {where}</translation>
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
        <translation type="unfinished">{what} : vérifiez date et heure, puis signez dans {where}</translation>
    </message>
    <message>
        <source>{who} cannot sign this</source>
        <translation type="unfinished">{who} ne peut pas signer ceci</translation>
    </message>
    <message>
        <source>{who} did not sign: to {act}, a PIN or badge is needed</source>
        <translation type="unfinished">{who} n'a pas signé : pour {act}, il faut un PIN ou un badge</translation>
    </message>
    <message>
        <source>{who} may not sign here</source>
        <translation type="unfinished">{who} ne peut pas signer ici</translation>
    </message>
    <message>
        <source>{why}: two people approve the label at {where}</source>
        <translation type="unfinished">{why} : deux personnes approuvent l'étiquette dans {where}</translation>
    </message>
</context>
</TS>
