"""Reads an iCalendar file with vobject and prints its events as JSON: what a telephone would show of them."""
import datetime
import itertools
import json
import sys

import vobject

MOST = 60
calendar = vobject.readOne(open(sys.argv[1], encoding="utf-8", newline="").read())
calendar.validate(raiseException=True)
events = []
for event in calendar.contents.get("vevent", []):
    start, end = event.dtstart.value, event.dtend.value
    assert type(start) is datetime.date and type(end) is datetime.date
    # vobject asks dateutil for the turns, which knows times alone; a rule that ends is cut where it says.
    turns = event.getrruleset(True)
    days = [start.isoformat()] if turns is None else [turn.date().isoformat() for turn in itertools.islice(turns, MOST)]
    events.append({
        "uid": event.uid.value,
        "summary": event.summary.value,
        "description": event.description.value,
        "category": event.categories.value[0],
        "start": start.isoformat(),
        "end": end.isoformat(),
        "days": days,
        "alarms": len(event.contents.get("valarm", [])),
    })
json.dump(events, sys.stdout)
