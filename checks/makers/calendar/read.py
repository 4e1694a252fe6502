# Reads checks/fixtures/market/deadlines.ics with the Python library icalendar, an independent reader
# of RFC 5545, and writes what it finds to checks/fixtures/market/deadlines.json.
# Run in this folder: python3 read.py. Made with icalendar 4.0.3.
import json
import icalendar

with open("../../fixtures/market/deadlines.ics", "rb") as file:
    calendar = icalendar.Calendar.from_ical(file.read())
events = [
    {
        "uid": str(event["UID"]),
        "start": event["DTSTART"].dt.isoformat(),
        "end": event["DTEND"].dt.isoformat(),
        "summary": str(event["SUMMARY"]),
        "description": str(event["DESCRIPTION"]),
        "warning": [str(alarm["TRIGGER"].dt) for alarm in event.walk("VALARM")],
    }
    for event in calendar.walk("VEVENT")
]
with open("../../fixtures/market/deadlines.json", "w") as file:
    json.dump({"version": str(calendar["VERSION"]), "events": events}, file, indent=1, ensure_ascii=False)
    file.write("\n")
