//! Squaring: diagonals of any four corners, and which corner moves.
