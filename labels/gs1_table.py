"""The application identifiers a food packer needs, as data; others are refused by name.

Written from the GS1 Barcode Syntax Dictionary (copyright GS1 AISBL, Apache License 2.0): formats,
pairs and titles. Not carried over: the dictionary's look-ups of issued company prefixes.

Notation of pairs: alternatives are parted by blanks, '+' joins what must all be there, and 'n'
stands for any digit: '00+02 00+8026' is '(00) with (02), or (00) with (8026)'.
"""

from dataclasses import dataclass

from labels.gs1_components import Component, components


@dataclass(frozen=True, slots=True)
class Identifier:
    """Format and pairs of one application identifier.

    Attributes:
        title: Data title used in messages.
        parts: What its value is made of.
        predefined: True when the length is predefined (GenSpecs figure 7.8.5-2), so that no
            separator follows.
        needs: Alternatives of what must be on the same item, in the notation above.
        excludes: What must not be on the same item.
        attribute: True when a GS1 Digital Link may carry it as a query attribute.
    """

    title: str
    parts: tuple[Component, ...]
    predefined: bool
    needs: tuple[str, ...]
    excludes: tuple[str, ...]
    attribute: bool


_ITEM = "01 02 03 8006 8026"
_MEASURED = "30 31nn 32nn 35nn 36nn"

# Identifier or range; '*' predefined length, '?' Digital Link attribute; format; title;
# needs; excludes.
_ROWS = (
    ("00", "*?", "N18,csum", "SSCC", "", ""),
    ("01", "*?", "N14,csum", "GTIN", "", "255 37"),
    ("02", "*?", "N14,csum", "CONTENT", "37", "01 03"),
    ("10", "?", "X..20", "BATCH/LOT", _ITEM, ""),
    ("11", "*?", "N6,yymmd0", "PROD DATE", _ITEM, ""),
    ("13", "*?", "N6,yymmd0", "PACK DATE", _ITEM, ""),
    ("15", "*?", "N6,yymmd0", "BEST BEFORE or BEST BY", _ITEM, ""),
    ("16", "*?", "N6,yymmd0", "SELL BY", _ITEM, ""),
    ("17", "*?", "N6,yymmd0", "USE BY or EXPIRY", "01 02 03 255 8006 8026", ""),
    ("20", "*?", "N2", "VARIANT", _ITEM, ""),
    ("21", "", "X..20", "SERIAL", "01 03 8006", "235"),
    ("22", "", "X..20", "CPV", "01", ""),
    ("240", "?", "X..30", "ADDITIONAL ID", _ITEM, ""),
    ("241", "?", "X..30", "CUST. PART No.", _ITEM, ""),
    ("243", "?", "X..20", "PCN", "01 03", ""),
    ("251", "?", "X..30", "REF. TO SOURCE", "01 03 8006", ""),
    ("254", "", "X..20", "GLN EXTENSION COMPONENT", "414", ""),
    ("30", "?", "N..8", "VAR. COUNT", "01 02", ""),
    ("3100-3105", "*?", "N6", "NET WEIGHT (kg)", "01 02", "310n"),
    ("3200-3205", "*?", "N6", "NET WEIGHT (lb)", "01 02", "320n"),
    ("3300-3305", "*?", "N6", "GROSS WEIGHT (kg)", "00 01", "330n"),
    ("3400-3405", "*?", "N6", "GROSS WEIGHT (lb)", "00 01", "340n"),
    ("37", "?", "N..8", "COUNT", "00+02 00+8026", ""),
    ("3920-3929", "?", "N..15", "PRICE", "01+30 01+31nn 01+32nn 01+35nn 01+36nn", "392n 393n"),
    ("3950-3955", "?", "N6", "PRICE/UoM", _MEASURED, "392n 393n 395n 8005"),
    ("400", "?", "X..30", "ORDER NUMBER", "", ""),
    ("401", "?", "X..30", "GINC", "", ""),
    ("402", "?", "N17,csum", "GSIN", "", ""),
    ("403", "?", "X..30", "ROUTE", "00", ""),
    ("410", "*?", "N13,csum", "SHIP TO LOC", "", ""),
    ("411", "*?", "N13,csum", "BILL TO", "", ""),
    ("412", "*?", "N13,csum", "PURCHASE FROM", "", ""),
    ("413", "*?", "N13,csum", "SHIP FOR LOC", "", ""),
    ("414", "*?", "N13,csum", "LOC No.", "", ""),
    ("416", "*?", "N13,csum", "PROD/SERV LOC", "", ""),
    ("417", "*?", "N13,csum", "PARTY", "", ""),
    ("420", "?", "X..20", "SHIP TO POST", "", "421"),
    ("421", "?", "N3,iso3166 X..9", "SHIP TO POST", "", "4307"),
    ("422", "?", "N3,iso3166", "ORIGIN", _ITEM, "426"),
    (
        *("423", "?", "N3,iso3166 [N3],iso3166 [N3],iso3166 [N3],iso3166 [N3],iso3166"),
        *("COUNTRY - INITIAL PROCESS", "01 02 03", "426"),
    ),
    ("424", "?", "N3,iso3166", "COUNTRY - PROCESS", "01 02 03", "426"),
    ("426", "?", "N3,iso3166", "COUNTRY - FULL PROCESS", "01 02 03", ""),
    ("427", "?", "X..3", "ORIGIN SUBDIVISION", "01+422 02+422 03+422", ""),
    ("7003", "?", "N6,yymmdd N4,hhmi", "EXPIRY TIME", "01 02 03", ""),
    ("7007", "?", "N6,yymmdd [N6],yymmdd", "HARVEST DATE", "01 02", ""),
    ("7030-7039", "?", "N3,iso3166999 X..27", "PROCESSOR", "01 02", ""),
    ("8005", "?", "N6", "PRICE PER UNIT", "01 02", ""),
    ("8008", "?", "N6,yymmdd N2,hh [N2],mi [N2],ss", "PROD TIME", "01 02 03", ""),
    ("90", "?", "X..30", "INTERNAL", "", ""),
    ("91-99", "?", "X..90", "INTERNAL", "", ""),
)

# Known to the dictionary and of no use on a packer's labels.
_OTHERS = """
03 MTO GTIN; 12 DUE DATE; 235 TPX; 242 MTO VARIANT; 250 SECONDARY SERIAL; 253 GDTI; 255 GCN;
3110-3115 LENGTH (m); 3120-3125 WIDTH (m); 3130-3135 HEIGHT (m); 3140-3145 AREA (m²);
3150-3155 NET VOLUME (l); 3160-3165 NET VOLUME (m³); 3210-3215 LENGTH (in); 3220-3225 LENGTH (ft);
3230-3235 LENGTH (yd); 3240-3245 WIDTH (in); 3250-3255 WIDTH (ft); 3260-3265 WIDTH (yd);
3270-3275 HEIGHT (in); 3280-3285 HEIGHT (ft); 3290-3295 HEIGHT (yd); 3310-3315 LENGTH (m), log;
3320-3325 WIDTH (m), log; 3330-3335 HEIGHT (m), log; 3340-3345 AREA (m²), log;
3350-3355 VOLUME (l), log; 3360-3365 VOLUME (m³), log; 3370-3375 KG PER m²;
3410-3415 LENGTH (in), log; 3420-3425 LENGTH (ft), log; 3430-3435 LENGTH (yd), log;
3440-3445 WIDTH (in), log; 3450-3455 WIDTH (ft), log; 3460-3465 WIDTH (yd), log;
3470-3475 HEIGHT (in), log; 3480-3485 HEIGHT (ft), log; 3490-3495 HEIGHT (yd), log;
3500-3505 AREA (in²); 3510-3515 AREA (ft²); 3520-3525 AREA (yd²); 3530-3535 AREA (in²), log;
3540-3545 AREA (ft²), log; 3550-3555 AREA (yd²), log; 3560-3565 NET WEIGHT (tr oz);
3570-3575 NET VOLUME (oz); 3600-3605 NET VOLUME (qt (US)); 3610-3615 NET VOLUME (gal.);
3620-3625 VOLUME (qt (US)), log; 3630-3635 VOLUME (gal (US)), log; 3640-3645 NET VOLUME (in³);
3650-3655 NET VOLUME (ft³); 3660-3665 NET VOLUME (yd³); 3670-3675 VOLUME (in³), log;
3680-3685 VOLUME (ft³), log; 3690-3695 VOLUME (yd³), log; 3900-3909 AMOUNT; 3910-3919 AMOUNT;
3930-3939 PRICE with currency; 3940-3943 PRCNT OFF; 415 PAY TO; 425 COUNTRY - DISASSEMBLY;
4300-4309 ship-to address; 4310-4319 return-to address; 4320 SRV DESCRIPTION; 4321 DANGEROUS GOODS;
4322 AUTH TO LEAVE; 4323 SIG REQUIRED; 4324 NOT BEF DEL DT; 4325 NOT AFT DEL DT; 4326 REL DATE;
4330 MAX TEMP F.; 4331 MAX TEMP C.; 4332 MIN TEMP F.; 4333 MIN TEMP C.; 7001 NSN; 7002 MEAT CUT;
7004 ACTIVE POTENCY; 7005 CATCH AREA; 7006 FIRST FREEZE DATE; 7008 AQUATIC SPECIES;
7009 FISHING GEAR TYPE; 7010 PROD METHOD; 7011 TEST BY DATE; 7020 REFURB LOT; 7021 FUNC STAT;
7022 REV STAT; 7023 GIAI - ASSEMBLY; 7040 UIC+EXT; 7041 UFRGT UNIT TYPE; 710-717 NHRN;
7230-7239 CERT; 7240 PROTOCOL; 7241 AIDC MEDIA TYPE; 7242 VCN; 7250-7259 data of a person;
8001 DIMENSIONS; 8002 CMT No.; 8003 GRAI; 8004 GIAI; 8006 ITIP; 8007 IBAN; 8009 OPTSEN; 8010 CPID;
8011 CPID SERIAL; 8012 VERSION; 8013 GMN; 8014 MUDI; 8017 GSRN - PROVIDER; 8018 GSRN - RECIPIENT;
8019 SRIN; 8020 REF No.; 8026 ITIP CONTENT; 8030 DIGSIG; 8040 IMEI; 8041 IMEI2; 8042 ESIM;
8043 PSIM; 8110 coupon; 8111 POINTS; 8112 coupon; 8200 PRODUCT URL
"""


def _spread(names: str) -> list[str]:
    """Return the identifiers of one, such as '10', or of a range, such as '3100-3105'."""
    first, _, last = names.partition("-")
    return [str(n).zfill(len(first)) for n in range(int(first), int(last or first) + 1)]


IDENTIFIERS = {
    ai: Identifier(
        title,
        components(notation),
        "*" in flags,
        tuple(needs.split()),
        tuple(excludes.split()),
        "?" in flags,
    )
    for names, flags, notation, title, needs, excludes in _ROWS
    for ai in _spread(names)
}

NOT_PRINTED = {
    ai: title
    for names, title in (entry.strip().split(" ", 1) for entry in _OTHERS.strip().split(";"))
    for ai in _spread(names)
}

# Primary keys of a GS1 Digital Link and the qualifiers that may follow, in this order.
LINK_KEYS: dict[str, tuple[str, ...]] = {
    "00": (),
    "01": ("22", "10", "21"),
    "401": (),
    "402": (),
    "414": ("254",),
    "417": (),
}
