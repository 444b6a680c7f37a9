// Reads an iCalendar file with ical.js and prints its events as JSON: what a telephone would show of them.
import { readFileSync } from "node:fs";
import ICAL from "ical.js";

const most = 60;
const calendar = new ICAL.Component(ICAL.parse(readFileSync(process.argv[2], "utf8")));
const events = calendar.getAllSubcomponents("vevent").map((component) => {
  const event = new ICAL.Event(component);
  const days = [];
  const turns = event.iterator();
  for (let turn = turns.next(); turn && days.length < most; turn = turns.next()) {
    days.push(turn.toString());
  }
  return {
    uid: event.uid,
    summary: event.summary,
    description: event.description,
    category: component.getFirstPropertyValue("categories"),
    start: event.startDate.toString(),
    end: event.endDate.toString(),
    days,
    alarms: component.getAllSubcomponents("valarm").length,
  };
});
console.log(JSON.stringify(events));
