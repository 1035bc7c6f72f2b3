"""Reads calendars with python3-icalendar: a list of texts on stdin, a list of lists of events on stdout, as JSON."""
import json
import sys

from icalendar import Calendar


def event_of(component):
    alarms = [part["TRIGGER"].dt.total_seconds() / -60 or 0 for part in component.walk("VALARM")]
    start, end = component["DTSTART"].dt, component["DTEND"].dt
    return {
        "uid": str(component["UID"]),
        "sequence": int(component["SEQUENCE"]),
        "start": start.isoformat(),
        "end": end.isoformat(),
        "title": str(component["SUMMARY"]),
        "status": str(component["STATUS"]),
        "alarms": alarms,
    }


texts = json.load(sys.stdin)
json.dump([[event_of(one) for one in Calendar.from_ical(text).walk("VEVENT")] for text in texts], sys.stdout)
