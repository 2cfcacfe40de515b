"""Writes unit-factors.csv and land-units.csv: python3 factors.py

Exact arithmetic from the definitions in feet, pounds and gallons; nothing here is taken from the
library under test.
"""

from fractions import Fraction as F

FOOT = F("0.3048")
SURVEY_FOOT = F(1200, 3937)
OLD_FOOT = 12 * F("0.02539998")
US_GALLON = 231 * F("0.254") ** 3
IMPERIAL_GALLON = F("4.54609")
POUND = 7000 * F("0.06479891") / 1000
SQUARE_FOOT = FOOT**2
SQUARE_YARD = 9 * SQUARE_FOOT
ACRE = 43560 * SQUARE_FOOT
PSI = POUND * F("9.80665") / F("0.0254") ** 2 / 1000

HEAD = """\
# {title}
# Source: {source}.
# Values: computed by factors.py beside this file with fractions.Fraction of Python 3.
# Tolerance: none, the ratios are exact.
"""

FACTORS = [
    # kind, unit, size in the base unit, source, standing
    ("Length", "FOOT", FOOT, "Federal Register 85 FR 62698 (2020)", "read"),
    ("Length", "US_SURVEY_FOOT", SURVEY_FOOT, "UCUM 2.2", "read"),
    ("Length", "INCH", FOOT / 12, "UCUM 2.2", "read"),
    ("Length", "YARD", 3 * FOOT, "UCUM 2.2", "read"),
    ("Length", "MILE", 5280 * FOOT, "UCUM 2.2", "read"),
    ("Area", "ACRE", ACRE, "NIST Handbook 44 appendix C", "value from memory"),
    ("Area", "ACRE", 4840 * SQUARE_YARD, "NIST Handbook 44 appendix C", "value from memory"),
    ("Area", "ACRE", 10 * (66 * FOOT) ** 2, "NIST Handbook 44 appendix C", "value from memory"),
    ("Area", "ACRE", 160 * (F("16.5") * FOOT) ** 2, "NIST Handbook 44 appendix C", "value from memory"),
    ("Area", "SQUARE_MILE", 640 * ACRE, "NIST Handbook 44 appendix C", "value from memory"),
    ("Area", "US_SURVEY_ACRE", F(62726400000, 15499969), "UCUM 2.2", "read"),
    ("Area", "US_SURVEY_ACRE", 43560 * SURVEY_FOOT**2, "UCUM 2.2", "read"),
    ("Area", "OLD_BRITISH_ACRE", 4840 * (3 * OLD_FOOT) ** 2, "UCUM 2.2", "read"),
    ("Area", "HECTARE", F(10000), "UCUM 2.2", "read"),
    ("Area", "ARE", F(100), "UCUM 2.2", "read"),
    ("Area", "SQUARE_FOOT", SQUARE_FOOT, "UCUM 2.2", "read"),
    ("Area", "SQUARE_YARD", SQUARE_YARD, "UCUM 2.2", "read"),
    ("Volume", "US_GALLON", US_GALLON, "UCUM 2.2", "read"),
    ("Volume", "US_GALLON", F("3.785411784"), "NIST Handbook 44 appendix C", "read"),
    ("Volume", "IMPERIAL_GALLON", IMPERIAL_GALLON, "UCUM 2.2", "read"),
    ("Volume", "US_QUART", US_GALLON / 4, "UCUM 2.2", "read"),
    ("Volume", "US_QUART", F("0.946352946"), "computed", "computed here"),
    ("Volume", "US_PINT", F("0.473176473"), "computed", "computed here"),
    ("Volume", "US_CUP", F("0.2365882365"), "computed", "computed here"),
    ("Volume", "US_GILL", F("0.11829411825"), "computed", "computed here"),
    ("Volume", "US_FLUID_OUNCE", US_GALLON / 128, "NIST Handbook 44 appendix C", "read"),
    ("Volume", "US_FLUID_OUNCE", F("0.0295735295625"), "computed", "computed here"),
    ("Volume", "IMPERIAL_QUART", F("1.1365225"), "computed", "computed here"),
    ("Volume", "IMPERIAL_PINT", F("0.56826125"), "computed", "computed here"),
    ("Volume", "IMPERIAL_GILL", IMPERIAL_GALLON / 32, "UCUM 2.2", "read"),
    ("Volume", "IMPERIAL_FLUID_OUNCE", IMPERIAL_GALLON / 160, "NIST Handbook 44 appendix C", "read"),
    ("Volume", "IMPERIAL_FLUID_OUNCE", F("0.0284130625"), "computed", "computed here"),
    ("Volume", "US_TABLESPOON", F("0.01478676478125"), "UCUM 2.2", "read"),
    ("Volume", "US_TEASPOON", F("0.00492892159375"), "UCUM 2.2", "read"),
    ("Volume", "METRIC_TABLESPOON", F("0.015"), "UCUM 2.2", "read"),
    ("Volume", "METRIC_TEASPOON", F("0.005"), "UCUM 2.2", "read"),
    ("Volume", "METRIC_CUP", F("0.24"), "UCUM 2.2", "read"),
    ("Volume", "METRIC_FLUID_OUNCE", F("0.03"), "UCUM 2.2", "read"),
    ("Volume", "AUSTRALIAN_TABLESPOON", F("0.02"), "Australian standard spoon", "value from memory"),
    ("Mass", "POUND", POUND, "UCUM 2.2", "read"),
    ("Mass", "POUND", F("0.45359237"), "UCUM 2.2", "read"),
    ("Mass", "OUNCE", F("0.028349523125"), "UCUM 2.2", "read"),
    ("Mass", "GRAIN", F("0.00006479891"), "UCUM 2.2", "read"),
    ("Mass", "SHORT_TON", F("907.18474"), "UCUM 2.2", "read"),
    ("Mass", "LONG_TON", F("1016.0469088"), "UCUM 2.2", "read"),
    ("Mass", "TONNE", F(1000), "UCUM 2.2", "read"),
    ("Mass", "SHORT_HUNDREDWEIGHT", F("45.359237"), "UCUM 2.2", "read"),
    ("Mass", "LONG_HUNDREDWEIGHT", F("50.80234544"), "UCUM 2.2", "read"),
    ("Mass", "QUINTAL", F(100), "trade unit", "value from memory"),
    ("Pressure", "BAR", F(100), "UCUM 2.2", "read"),
    ("Pressure", "POUND_PER_SQUARE_INCH", PSI, "UCUM 2.2", "read"),
    ("Pressure", "TECHNICAL_ATMOSPHERE", F("98.0665"), "UCUM 2.2", "read"),
    ("Speed", "MILE_PER_HOUR", F("0.44704"), "computed", "computed here"),
    ("Speed", "KILOMETRE_PER_HOUR", F(1000, 3600), "computed", "computed here"),
    ("Speed", "FOOT_PER_MINUTE", F("0.44704") / 88, "Univ. of Nebraska pesticide education, 88 ft/min is 1 mph", "read"),
    ("VolumePerArea", "US_GALLON_PER_ACRE", US_GALLON / ACRE * 10000, "computed", "computed here"),
    ("VolumePerArea", "IMPERIAL_GALLON_PER_ACRE", IMPERIAL_GALLON / ACRE * 10000, "computed", "computed here"),
    ("VolumePerArea", "MILLILITRE_PER_ACRE", F(1, 1000) / ACRE * 10000, "computed", "computed here"),
    ("VolumePerArea", "US_FLUID_OUNCE_PER_ACRE", US_GALLON / 128 / ACRE * 10000, "computed", "computed here"),
    ("VolumePerArea", "IMPERIAL_FLUID_OUNCE_PER_ACRE", IMPERIAL_GALLON / 160 / ACRE * 10000, "computed", "computed here"),
    ("VolumePerArea", "US_PINT_PER_ACRE", US_GALLON / 8 / ACRE * 10000, "computed", "computed here"),
    ("VolumePerArea", "US_QUART_PER_ACRE", US_GALLON / 4 / ACRE * 10000, "computed", "computed here"),
    ("VolumePerArea", "IMPERIAL_PINT_PER_ACRE", IMPERIAL_GALLON / 8 / ACRE * 10000, "computed", "computed here"),
    ("VolumePerArea", "US_GALLON_PER_1000_SQUARE_FEET", US_GALLON / ACRE * 10000 * F("43.56"), "computed", "computed here"),
    ("VolumePerArea", "US_FLUID_OUNCE_PER_1000_SQUARE_FEET", US_GALLON / 128 / (1000 * SQUARE_FOOT) * 10000, "computed", "computed here"),
    ("VolumePerArea", "LITRE_PER_SQUARE_METRE", F(10000), "1 mm of water", "computed here"),
    ("MassPerArea", "OUNCE_PER_ACRE", POUND / 16 / ACRE * 10000, "computed", "computed here"),
    ("MassPerArea", "POUND_PER_ACRE", POUND / ACRE * 10000, "computed", "computed here"),
    ("MassPerArea", "SHORT_TON_PER_ACRE", 2000 * POUND / ACRE * 10000, "computed", "computed here"),
    ("MassPerArea", "GRAM_PER_ACRE", F(1, 1000) / ACRE * 10000, "computed", "computed here"),
    ("MassPerArea", "OUNCE_PER_1000_SQUARE_FEET", POUND / 16 / (1000 * SQUARE_FOOT) * 10000, "computed", "computed here"),
    ("MassPerMass", "PERCENT", F(10), "computed", "computed here"),
    ("MassPerVolume", "PERCENT", F(10), "UCUM 2.2, g% is g/dL", "read"),
    ("VolumePerVolume", "PERCENT", F(10), "computed", "computed here"),
    ("MassPerMass", "PART_PER_MILLION", F(1, 1000), "NIST SP 811", "value from memory"),
    ("MassPerVolume", "PART_PER_MILLION", F(1, 1000), "NIST SP 811", "value from memory"),
    ("MassPerMass", "PART_PER_BILLION", F(1, 10**6), "NIST SP 811", "value from memory"),
    ("MassPerVolume", "PART_PER_BILLION", F(1, 10**6), "NIST SP 811", "value from memory"),
    ("MassPerVolume", "POUND_PER_US_GALLON", POUND * 1000 / US_GALLON, "computed", "computed here"),
    ("MassPerVolume", "POUND_PER_IMPERIAL_GALLON", POUND * 1000 / IMPERIAL_GALLON, "computed", "computed here"),
    ("MassPerVolume", "POUND_PER_100_US_GALLONS", POUND * 10 / US_GALLON, "computed", "computed here"),
    ("MassPerVolume", "OUNCE_PER_US_GALLON", POUND / 16 * 1000 / US_GALLON, "computed", "computed here"),
    ("VolumePerVolume", "US_FLUID_OUNCE_PER_US_GALLON", F("7.8125"), "computed", "computed here"),
    ("VolumePerVolume", "IMPERIAL_FLUID_OUNCE_PER_IMPERIAL_GALLON", F("6.25"), "computed", "computed here"),
    ("VolumePerVolume", "US_TABLESPOON_PER_US_GALLON", F("3.90625"), "computed", "computed here"),
    ("VolumePerVolume", "US_TEASPOON_PER_US_GALLON", F("3.90625") / 3, "computed", "computed here"),
    ("VolumePerVolume", "US_PINT_PER_100_US_GALLONS", F("1.25"), "computed", "computed here"),
    ("VolumePerVolume", "IMPERIAL_PINT_PER_100_IMPERIAL_GALLONS", F("1.25"), "computed", "computed here"),
    ("VolumePerMass", "US_FLUID_OUNCE_PER_SHORT_HUNDREDWEIGHT", US_GALLON / 128 * 1000 / (100 * POUND), "computed", "computed here"),
    ("MassPerMass", "OUNCE_PER_SHORT_HUNDREDWEIGHT", F("0.625"), "computed", "computed here"),
]

PAGES = "read"
MEMORY = "value from memory"
LAND = [
    ("GUNTHA", 121 * SQUARE_YARD, "101.17141056", PAGES),
    ("CENT", ACRE / 100, "40.468564224", PAGES),
    ("DECIMAL", ACRE / 100, "40.468564224", PAGES),
    ("MARLA_REVENUE", 9 * (F("5.5") * FOOT) ** 2, "25.2928526", PAGES),
    ("MARLA_LAHORE", 225 * SQUARE_FOOT, "20.903184", PAGES),
    ("MARLA_HOUSING_SCHEME", 250 * SQUARE_FOOT, "23.22576", MEMORY),
    ("KANAL_REVENUE", 20 * F("272.25") * SQUARE_FOOT, "505.857053", PAGES),
    ("KANAL_LAHORE", 50 * 90 * SQUARE_FOOT, "418.06368", PAGES),
    ("KILLA", 198 * 220 * SQUARE_FOOT, "4046.856", PAGES),
    ("MURABBA", 25 * ACRE, "101171.41", PAGES),
    ("BIGHA_PUCCA", 165 * 165 * SQUARE_FOOT, "2529.285264", PAGES),
    ("BIGHA_HARYANA_KACHCHA", F(3025, 3) * SQUARE_YARD, "843.0951", PAGES),
    ("BIGHA_PUNJAB_4_KANAL", 2420 * SQUARE_YARD, "2023.4282", PAGES),
    ("BIGHA_HIMACHAL", ACRE / 5, "809.3713", PAGES),
    ("BIGHA_UTTARAKHAND", 900 * SQUARE_YARD, "752.5146", PAGES),
    ("BIGHA_WEST_BENGAL", 1600 * SQUARE_YARD, "1337.8038", PAGES),
    ("BIGHA_RAJASTHAN_KACHCHA", 17424 * SQUARE_FOOT, "1618.7426", PAGES),
    ("BIGHA_WESTERN_UTTAR_PRADESH", 6800 * SQUARE_FOOT, "631.741", PAGES),
    ("BIGHA_NEPAL", F("6772.63"), "6772.63", PAGES),
    ("KATHA_BANGLADESH", 720 * SQUARE_FOOT, "66.890", PAGES),
    ("KATHA_ASSAM", 2880 * SQUARE_FOOT, "267.561", PAGES),
    ("KATHA_PATNA", F("1361.25") * SQUARE_FOOT, "126.464", PAGES),
    ("KATHA_NEPAL", F("6772.63") / 20, "338.63", PAGES),
    ("BISWA_121_SQUARE_YARDS", 121 * SQUARE_YARD, "101.171", PAGES),
    ("BISWA_PUCCA", F(3025, 20) * SQUARE_YARD, "126.464", PAGES),
    ("BISWA_50_SQUARE_YARDS", 50 * SQUARE_YARD, "41.806", PAGES),
    ("RAI", F(1600), "1600", MEMORY),
    ("NGAN", F(400), "400", MEMORY),
    ("SQUARE_WAH", F(4), "4", MEMORY),
    ("MU_CHINA", F(10000, 15), "666.66667", PAGES),
    ("MU_CUSTOMS", F("8273.75") * SQUARE_FOOT, "768.657", PAGES),
    ("FEDDAN_EGYPT", 24 * F(175), "4200", PAGES),
    ("FEDDAN_OLDER_TABLES", F("4200.833"), "4200.833", PAGES),
    ("KIRAT", F(175), "175", PAGES),
    ("DUNAM_METRIC", F(1000), "1000", MEMORY),
    ("DUNAM_CYPRUS", 14400 * SQUARE_FOOT, "1337.8", MEMORY),
    ("DUNAM_IRAQ", F(2500), "2500", MEMORY),
    ("DUNAM_OTTOMAN", F(919), "919", MEMORY),
    ("MANZANA_COSTA_RICA", F("6988.96"), "6988.96", PAGES),
    ("MANZANA_HONDURAS", F("6972.25"), "6972.25", PAGES),
    ("MANZANA_NICARAGUA", F("7050.124"), "7050.124", PAGES),
    ("MANZANA_EL_SALVADOR", F("7025.79"), "7025.79", PAGES),
    ("MANZANA_GUATEMALA", F("6987.37"), "6987.37", PAGES),
    ("MANZANA_GUATEMALA_7056", F("7056"), "7056", PAGES),
    ("MANZANA_BELIZE", F("8353"), "8353", PAGES),
    ("MANZANA_ARGENTINA", F("10000"), "10000", PAGES),
    ("MANZANA_ROUNDED", F("7000"), "7000", PAGES),
]


def quoted(text):
    return '"' + text + '"' if "," in text else text


def write(name, title, source, columns, rows):
    with open(name, "w", encoding="utf-8", newline="\n") as out:
        out.write(HEAD.format(title=title, source=source))
        out.write(",".join(columns) + "\n")
        for row in rows:
            out.write(",".join(quoted(str(cell)) for cell in row) + "\n")


write(
    "unit-factors.csv",
    "Exact sizes of units in the base unit of their kind.",
    "column source, with its standing; the base units are m, m2, L, kg, kPa, m/s, L/ha, kg/ha, g/kg, g/L, mL/L, mL/kg",
    ["kind", "unit", "numerator", "denominator", "source", "standing"],
    [(k, u, f.numerator, f.denominator, s, t) for k, u, f, s, t in FACTORS],
)
write(
    "land-units.csv",
    "Land units in m2, exact and as printed.",
    "encyclopaedia, property and government pages, for the manzana a dictionary of units citing the United"
    " Nations 1966 and national decrees; rai, ngan, dunam and the marla of 250 ft2 are values from memory",
    ["unit", "numerator", "denominator", "printed", "standing"],
    [(u, f.numerator, f.denominator, p, t) for u, f, p, t in LAND],
)
