//! Ceiling strapping: strips across the joists, and the shims that bring them into one plane.
