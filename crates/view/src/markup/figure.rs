//! Figures as they are set on the sheet: fractions as fractions, and the same said aloud for those who listen.

use maud::{Markup, html};

/// A piece of a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Piece<'a> {
    Plain(&'a str),
    Fraction(&'a str, &'a str),
}

/// A text with its fractions set as fractions. Where it holds a length or a size, it is said in words.
#[must_use]
pub fn figure(text: &str) -> Markup {
    figure_said(text, &say(text))
}

/// The same, said in words of its own.
#[must_use]
pub fn figure_said(text: &str, said: &str) -> Markup {
    if said == text && !pieces(text).any(|piece| matches!(piece, Piece::Fraction(..))) {
        return html! { span.figure-set { (text) } };
    }
    html! {
        span.figure-set aria-hidden="true" {
            @for piece in pieces(text) {
                @match piece {
                    Piece::Plain(words) => (words),
                    Piece::Fraction(over, under) => span.fraction { sup { (over) } "\u{2044}" sub { (under) } },
                }
            }
        }
        span.said { (said) }
    }
}

fn digits(text: &str) -> usize {
    text.bytes().take_while(u8::is_ascii_digit).count()
}

/// The length of the fraction that a text begins with. `1/8` is one; `L/360` and `2/3/4` are not.
fn fraction_at(text: &str, before: Option<char>) -> Option<(usize, usize)> {
    let over = digits(text);
    let under = text[over..].strip_prefix('/').map_or(0, digits);
    let end = over + 1 + under;
    let is_one = (1..=2).contains(&over)
        && under > 0
        && !text[end..].starts_with(['/', '.'])
        && !before.is_some_and(|letter| matches!(letter, '/' | '.'));
    is_one.then_some((over, end))
}

/// Splits a text at its fractions.
fn pieces(text: &str) -> impl Iterator<Item = Piece<'_>> {
    let mut rest = text;
    core::iter::from_fn(move || {
        let mut at = 0;
        while let Some(letter) = rest[at..].chars().next() {
            let found = fraction_at(&rest[at..], rest[..at].chars().next_back());
            match found {
                Some((over, end)) if at == 0 => {
                    let piece = Piece::Fraction(&rest[..over], &rest[over + 1..end]);
                    rest = &rest[end..];
                    return Some(piece);
                }
                Some(_) => break,
                None => at += digits(&rest[at..]).max(letter.len_utf8()),
            }
        }
        let (plain, after) = rest.split_at(at);
        rest = after;
        (!plain.is_empty()).then_some(Piece::Plain(plain))
    })
}

/// The same said aloud: `6 feet 2 and 3/8 inches`, `2 plies of 2 by 10`.
fn say(text: &str) -> String {
    let letters: Vec<char> = text.chars().collect();
    let at = |place: usize| letters.get(place).copied().unwrap_or(' ');
    let mut said = String::new();
    for (place, letter) in letters.iter().enumerate() {
        let after_digit = place > 0 && at(place - 1).is_ascii_digit();
        let before_digit = at(place + 1).is_ascii_digit();
        match letter {
            '\'' if after_digit => said.push_str(" feet"),
            '"' if after_digit => said.push_str(" inches"),
            'x' if after_digit && before_digit => said.push_str(" by "),
            '-' if after_digit && before_digit => {
                let number = letters[place + 1..].iter().take_while(|letter| letter.is_ascii_digit()).count();
                let joint = match at(place + 1 + number) {
                    '/' => " and ",
                    'x' => " plies of ",
                    _ => "-",
                };
                said.push_str(joint);
            }
            other => said.push(*other),
        }
    }
    said
}

#[cfg(test)]
mod tests {
    use super::{Piece, figure, figure_said, pieces, say};

    fn fractions(text: &str) -> Vec<String> {
        let set = |piece| match piece {
            Piece::Fraction(over, under) => Some(format!("{over}|{under}")),
            Piece::Plain(_) => None,
        };
        pieces(text).filter_map(set).collect()
    }

    #[test]
    fn fractions_are_found_and_ratios_are_left() {
        assert_eq!(fractions("8' 2-3/4\""), ["3|4"]);
        assert_eq!(fractions("1-3/4 x 11-7/8"), ["3|4", "7|8"]);
        assert_eq!(fractions("L/360, 2-2x10, 1,006 psi"), Vec::<String>::new());
        assert_eq!(fractions("0.5/2.5 and 2/3/4"), Vec::<String>::new());
    }

    #[test]
    fn nothing_is_lost_when_a_text_is_split() {
        for text in ["8' 2-3/4\"", "\u{2212}1/16", "a/b 3/", "12/2026/1", "F\u{22a5} 7/8", "1/21/2", ""] {
            let joined: String = pieces(text)
                .map(|piece| match piece {
                    Piece::Plain(words) => words.to_owned(),
                    Piece::Fraction(over, under) => format!("{over}/{under}"),
                })
                .collect();
            assert_eq!(joined, text);
        }
    }

    #[test]
    fn lengths_and_sizes_are_said_in_words() {
        assert_eq!(say("6' 2-3/8\""), "6 feet 2 and 3/8 inches");
        assert_eq!(say("2-2x10"), "2 plies of 2 by 10");
        assert_eq!(say("82 %, bending"), "82 %, bending");
    }

    #[test]
    fn what_was_typed_is_escaped_and_plain_words_stay_plain() {
        assert_eq!(figure("<b>&").into_string(), "<span class=\"figure-set\">&lt;b&gt;&amp;</span>");
        let set = figure_said("+1/16", "One sixteenth more").into_string();
        assert!(set.contains("<sup>1</sup>\u{2044}<sub>16</sub>"), "{set}");
        assert!(set.contains("One sixteenth more"), "{set}");
    }
}
