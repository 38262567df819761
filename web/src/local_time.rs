//! The phone's own time as ISO text.

use js_sys::Date;

/// Now, with the distance to UTC: `2026-05-04T10:42:00-05:00`.
pub fn now() -> String {
    let date = Date::new_0();
    // JavaScript counts minutes from local time to UTC: west is positive there.
    let offset = -(date.get_timezone_offset() as i32);
    let sign = if offset < 0 { '-' } else { '+' };
    format!(
        "{:04}-{:02}-{:02}T{:02}:{:02}:{:02}{sign}{:02}:{:02}",
        date.get_full_year(),
        date.get_month() + 1,
        date.get_date(),
        date.get_hours(),
        date.get_minutes(),
        date.get_seconds(),
        offset.abs() / 60,
        offset.abs() % 60,
    )
}

/// The same for a list: `2026-05-04 10:42`.
pub fn short(iso: &str) -> String {
    iso.chars().take(16).map(|letter| if letter == 'T' { ' ' } else { letter }).collect()
}
