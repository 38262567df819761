//! Hand-cut roofs: planes that meet along lines, and the sticks that follow them.
