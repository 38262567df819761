//! The headless command: `framing check` and `framing schema`.

use std::io::{BufRead, Write};
use std::process::ExitCode;

use framing::check::{check, schema, to_line};

const USAGE: &str = "framing: what the screens compute, without a screen

  framing check < cases.jsonl   one JSON object a line in, one a line out:
                                {\"check\":\"header\",\"opening_width\":\"6' 0\\\"\"}
                                {\"check\":\"stud_spacing\",\"pulls\":[\"16\",\"33\",\"50\"]}
                                {\"check\":\"joist\",\"joist_span\":\"15' 0\\\"\"}
                                kinds: header, joist, beam, rafter, ridge, hip_valley,
                                stud, post, notch, span_table, wind, snow, gravity,
                                stud_spacing, nailing, hold_down_point, notch_found,
                                flatness, moisture, shear_wall, perforated_wall,
                                hold_down, anchor_bolts, wall_lines, diaphragm,
                                uplift, schedule, drawn_and_worked, wall_layers, nail,
                                nail_swap, common_rafter, hip_valley_cuts, jack,
                                roof_sheathing, wall_layout, floor_layout, strapping
  framing schema                JSON Schema of what is taken and what is answered

Exit code 0: every line was answered. 2: one or more were refused; the rest were answered.
";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let command: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let done = match command.as_slice() {
        ["check"] => check_lines(),
        ["schema"] => writeln!(std::io::stdout(), "{}", schema()).map(|()| true),
        _ => {
            let told = write!(std::io::stderr(), "{USAGE}");
            told.map(|()| false)
        }
    };
    match done {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::from(2),
        Err(problem) => {
            // Nothing is left to tell it to if this fails too.
            let _ = writeln!(std::io::stderr(), "framing: {problem}. Check where the input and output go.");
            ExitCode::FAILURE
        }
    }
}

/// Answers every line; says whether all were answered. Empty lines are skipped.
fn check_lines() -> std::io::Result<bool> {
    let mut output = std::io::stdout().lock();
    let mut all = true;
    for line in std::io::stdin().lock().lines() {
        let line = line?;
        if line.trim().is_empty() {
            continue;
        }
        let response = check(&line);
        all &= response.answered();
        writeln!(output, "{}", to_line(&response))?;
    }
    Ok(all)
}
