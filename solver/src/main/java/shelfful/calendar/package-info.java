/**
 * A week as an iCalendar file (RFC 5545) for any calendar program. The only package that sees the
 * calendar library.
 */
package shelfful.calendar;
