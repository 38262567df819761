//! Figures as they are set on the sheet: fractions as fractions, and the same said aloud for those who listen.

use leptos::prelude::*;

/// A piece of a text.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Piece {
    Plain(String),
    Fraction(String, String),
}

/// A text with its fractions set as fractions. Where it holds a length or a size, it is said in words.
#[component]
pub fn Figure(
    /// The text: `6' 2-3/8"`.
    #[prop(into)]
    text: Signal<String>,
    /// How it is said, where that is known.
    #[prop(into, default = String::new().into())]
    spoken: Signal<String>,
) -> impl IntoView {
    view! {
        <span class="figure-set" aria-hidden="true">
            {move || text.with(|text| pieces(text)).into_iter().map(set).collect_view()}
        </span>
        <span class="said">
            {move || spoken.with(|said| if said.is_empty() { text.with(|text| say(text)) } else { said.clone() })}
        </span>
    }
}

fn set(piece: Piece) -> AnyView {
    match piece {
        Piece::Plain(words) => words.into_any(),
        Piece::Fraction(over, under) => {
            view! { <span class="fraction"><sup>{over}</sup>"\u{2044}"<sub>{under}</sub></span> }.into_any()
        }
    }
}

fn digits(text: &str) -> usize {
    text.bytes().take_while(u8::is_ascii_digit).count()
}

/// Splits a text at its fractions. `1/8` is one; `L/360` and `2/3/4` are not.
fn pieces(text: &str) -> Vec<Piece> {
    let mut found = Vec::new();
    let mut plain = String::new();
    let mut rest = text;
    while let Some(letter) = rest.chars().next() {
        let over = digits(rest);
        let under = rest[over..].strip_prefix('/').map_or(0, digits);
        let end = over + 1 + under;
        if over > 0 && under > 0 && over <= 2 && !rest[end..].starts_with(['/', '.']) && !plain.ends_with(['/', '.']) {
            found.push(Piece::Plain(core::mem::take(&mut plain)));
            found.push(Piece::Fraction(rest[..over].to_owned(), rest[over + 1..end].to_owned()));
            rest = &rest[end..];
        } else {
            let step = over.max(letter.len_utf8());
            plain.push_str(&rest[..step]);
            rest = &rest[step..];
        }
    }
    found.push(Piece::Plain(plain));
    found.retain(|piece| *piece != Piece::Plain(String::new()));
    found
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
    use super::{Piece, pieces, say};
    use wasm_bindgen_test::wasm_bindgen_test;

    fn fractions(text: &str) -> Vec<String> {
        let set = |piece| match piece {
            Piece::Fraction(over, under) => Some(format!("{over}|{under}")),
            Piece::Plain(_) => None,
        };
        pieces(text).into_iter().filter_map(set).collect()
    }

    #[wasm_bindgen_test]
    fn fractions_are_found_and_ratios_are_left() {
        assert_eq!(fractions("8' 2-3/4\""), ["3|4"]);
        assert_eq!(fractions("1-3/4 x 11-7/8"), ["3|4", "7|8"]);
        assert_eq!(fractions("L/360, 2-2x10, 1,006 psi"), Vec::<String>::new());
        assert_eq!(fractions("0.5/2.5"), Vec::<String>::new());
    }

    #[wasm_bindgen_test]
    fn nothing_is_lost_when_a_text_is_split() {
        for text in ["8' 2-3/4\"", "\u{2212}1/16", "a/b 3/", "12/2026/1", "F\u{22a5} 7/8", ""] {
            let joined: String = pieces(text)
                .into_iter()
                .map(|piece| match piece {
                    Piece::Plain(words) => words,
                    Piece::Fraction(over, under) => format!("{over}/{under}"),
                })
                .collect();
            assert_eq!(joined, text);
        }
    }

    #[wasm_bindgen_test]
    fn lengths_and_sizes_are_said_in_words() {
        assert_eq!(say("6' 2-3/8\""), "6 feet 2 and 3/8 inches");
        assert_eq!(say("2-2x10"), "2 plies of 2 by 10");
        assert_eq!(say("82 %, bending"), "82 %, bending");
    }
}
