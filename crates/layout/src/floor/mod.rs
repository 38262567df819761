//! Floors: joists, what doubles and trims them, and the sheets on top.
