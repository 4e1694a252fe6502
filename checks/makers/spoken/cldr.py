#!/usr/bin/env python3
"""Witness of numbers in words: the rule-based number formats of Unicode CLDR, as ICU carries them.

Debian's python3-icu.

  python3 checks/makers/spoken/cldr.py > checks/fixtures/film/numbers.json
"""
import json
import sys

import icu

NUMBERS = sorted(
    set(range(0, 131))
    | {200, 300, 301, 400, 500, 600, 617, 700, 800, 888, 900, 999, 1000, 1001, 1010, 1100, 1200, 1234}
    | {1998, 2000, 2003, 2100, 3000, 3600, 8000, 8800, 9999, 10000, 11111, 12345, 20000, 20015, 54321}
    | {96000, 100000, 100001, 110000, 234567, 1000000, 1000100, 2345678, 10000000, 123456789}
)
YEARS = list(range(1800, 2100))
DECIMALS = ["0.97", "0.05", "12.5", "1.79", "8.25", "10.01", "0.101", "62.3"]


def said(locale, rules, numbers):
    form = icu.RuleBasedNumberFormat(icu.URBNFRuleSetTag.SPELLOUT, icu.Locale(locale))
    return {str(n): form.format(n, rules) for n in numbers}


def decimals(locale):
    form = icu.RuleBasedNumberFormat(icu.URBNFRuleSetTag.SPELLOUT, icu.Locale(locale))
    return {text: form.format(float(text)) for text in DECIMALS}


json.dump(
    {
        "icu": icu.ICU_VERSION,
        "en": {
            "cardinal": said("en_GB", "%spellout-cardinal-verbose", NUMBERS),
            "ordinal": said("en_GB", "%spellout-ordinal-verbose", NUMBERS),
            "year": said("en_GB", "%spellout-numbering-year", YEARS),
            "decimal": decimals("en_GB"),
        },
        "pt": {
            "masculine": said("pt_BR", "%spellout-cardinal-masculine", NUMBERS),
            "feminine": said("pt_BR", "%spellout-cardinal-feminine", NUMBERS),
            "ordinal_masculine": said("pt_BR", "%spellout-ordinal-masculine", range(1, 100)),
            "ordinal_feminine": said("pt_BR", "%spellout-ordinal-feminine", range(1, 100)),
            "decimal": decimals("pt_BR"),
        },
        "ko": {
            "cardinal": said("ko", "%spellout-cardinal-sinokorean", NUMBERS),
            "count": said("ko", "%spellout-cardinal-native-attributive", range(1, 100)),
            "ordinal": said("ko", "%spellout-ordinal-native-count", range(1, 100)),
            "decimal": decimals("ko"),
        },
    },
    sys.stdout,
    ensure_ascii=False,
    indent=1,
)
print()
