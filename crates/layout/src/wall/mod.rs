//! Walls: plates, studs and openings as they are marked, one pull from one end.
