"""Which texts hold a telephone number or are an e-mail address, by two other readers.

Telephone: phonenumbers (the port of libphonenumber), PhoneNumberMatcher, region GB.
E-mail: Python's own parser of RFC 5322 (email._header_value_parser.get_addr_spec).
Run with Debian's python3 and python3-phonenumbers; prints checks/fixtures/leaving/patterns.json.
"""
import json
import platform
from email import _header_value_parser as parser
import phonenumbers

TELEPHONES = [
    "Ring +44 113 496 0123 after six.", "+358 9 4245 1234", "Call (0113) 496 0123", "0113 496 0123",
    "+82 2-312-3456", "+55 11 96123-4567", "+48 22 123 45 67", "+81 3-1234-5678", "+1 206-555-0123",
    "Write to +49 (0)30 901820.", "00 44 113 496 0123", "tel:+441134960123", "+44(0)1134960123",
    "on sale 1994-10-07", "07.10.1994", "7/10/1994", "released 1994-10-07/1994-10-14", "1,234.50 GBP",
    "certificate 40697439", "certificates 40100000 to 40399999", "list 21, line 4", "95 % of 1266 copies",
    "ISBN 0-306-40615-2", "ISBN 978-0-306-40615-7", "6 62 57 66", "0 0 63 88", "12.00 GBP and 14.50 EUR",
    "numbers 5–8/1994 and 9/2002", "lot 10237", "2026-06-18T20:10:00+03:00", "letters 22, 41, 42",
    "1.79±0.05 g", "175±4 lpi", "seen 2024-01-05, 2024-01-06 and 2024-01-11", "serial 031/500",
    "price +12.50", "+5 days", "1994–2007", "63x88 mm", "fee 0.85 of 12 000",
]
EMAILS = [
    "marl@quenbymarl.example", "a.reader+cards@kept.example.org", "o'neill@fen.example", '"two words"@fen.example',
    "x@[192.0.2.7]", "under_score@a-b.example", "UPPER@CASE.EXAMPLE",
    "a..b@fen.example", ".a@fen.example", "a.@fen.example", "a@@fen.example", "a@", "@fen.example", "two words@fen.example",
]

def telephone(text):
    found = phonenumbers.PhoneNumberMatcher(text, "GB", leniency=phonenumbers.Leniency.VALID)
    return [match.raw_string for match in found]

def email(text):
    try:
        spec, rest = parser.get_addr_spec(text)
    except Exception:
        return False
    return not rest and not spec.all_defects

print(json.dumps({
    "made_with": f"Python {platform.python_version()}, phonenumbers {phonenumbers.__version__}",
    "telephones": [{"text": text, "found": telephone(text)} for text in TELEPHONES],
    "emails": [{"text": text, "whole": email(text)} for text in EMAILS],
}, ensure_ascii=False, indent=1))
