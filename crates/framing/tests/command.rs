//! The headless command as a program: lines in, lines out, exit codes.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::io::Write;
use std::process::{Command, Output, Stdio};

fn framing(arguments: &[&str], input: &str) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_framing"))
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    child.stdin.take().unwrap().write_all(input.as_bytes()).unwrap();
    child.wait_with_output().unwrap()
}

fn lines(output: &Output) -> Vec<serde_json::Value> {
    String::from_utf8(output.stdout.clone()).unwrap().lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}

#[test]
fn a_good_line_is_answered_and_the_exit_code_is_0() {
    let output = framing(&["check"], "{\"check\":\"header\",\"opening_width\":\"6' 0\\\"\"}\n\n");
    assert_eq!(output.status.code(), Some(0));
    let answers = lines(&output);
    assert_eq!(answers.len(), 1);
    assert_eq!(answers[0]["verdict"], "carries it");
    assert!(answers[0]["working"].as_array().unwrap().len() > 5);
}

#[test]
fn a_refused_line_names_its_field_and_the_others_are_answered() {
    let input = "{\"check\":\"header\",\"opening_width\":\"400'\"}\n{\"check\":\"header\"}\nnot json\n{\"check\":\"roof\"}\n\
                 {\"check\":\"header\",\"width\":\"6'\"}\n{\"check\":\"header\",\"opening_width\":6}\n";
    let output = framing(&["check"], input);
    assert_eq!(output.status.code(), Some(2));
    let answers = lines(&output);
    let fields: Vec<&str> =
        answers.iter().map(|answer| answer["refused"][0]["field"].as_str().unwrap_or("answered")).collect();
    assert_eq!(fields, ["opening_width", "answered", "", "check", "width", "opening_width"]);
    let problem = answers[0]["refused"][0]["problem"].as_str().unwrap();
    assert_eq!(problem, "Opening width 400' 0\" was given; from 1' 0\" to 24' 0\" is taken.");
}

#[test]
fn kinds_are_mixed_and_a_refused_one_leaves_the_others() {
    let input = "{\"check\":\"stud_spacing\",\"pulls\":[\"16\",\"wide\"]}\n{\"check\":\"moisture\",\"visits\":[\"17, 16, 15\"]}\n\
                 {\"check\":\"header\"}\n";
    let output = framing(&["check"], input);
    assert_eq!(output.status.code(), Some(2));
    let answers = lines(&output);
    assert_eq!(answers[0]["refused"][0]["field"], "pulls");
    assert_eq!((&answers[1]["verdict"], &answers[2]["verdict"]), (&"within".into(), &"carries it".into()));
}

#[test]
fn every_wrong_field_of_a_line_is_named() {
    let input = "{\"check\":\"header\",\"opening_width\":\"wide\",\"ground_snow\":\"-5 psf\",\"carries\":\"hay\"}";
    let answer = &lines(&framing(&["check"], input))[0];
    let fields: Vec<&str> =
        answer["refused"].as_array().unwrap().iter().map(|refusal| refusal["field"].as_str().unwrap()).collect();
    assert_eq!(fields, ["opening_width", "carries", "ground_snow"]);
}

#[test]
fn the_schema_names_every_input() {
    let output = framing(&["schema"], "");
    assert_eq!(output.status.code(), Some(0));
    let schema = String::from_utf8(output.stdout).unwrap();
    for field in framing::HeaderCase::FIELDS {
        assert!(schema.contains(&format!("\"{field}\"")), "{field}");
    }
    serde_json::from_str::<serde_json::Value>(&schema).unwrap();
}

#[test]
fn an_unknown_command_says_what_there_is() {
    let output = framing(&["frobnicate"], "");
    assert_eq!(output.status.code(), Some(2));
    assert!(String::from_utf8(output.stderr).unwrap().contains("framing check"));
}
