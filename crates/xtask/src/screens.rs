//! Pictures of the widget for people to look at.

use crate::build::release;
use crate::failure::Failure;
use crate::flag_value;
use crate::run::quietly;
use crate::test::in_browser;

/// Takes the pictures that `tests/screens.txt` lists, or those whose names contain `--only`.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    if !arguments.iter().any(|argument| argument == "--no-build") {
        release()?;
    }
    let mut cargo = in_browser("run")?;
    cargo.args(["--quiet", "--bin", "screens", "--"]);
    cargo.args(flag_value(arguments, "--only")?);
    let printed = quietly("pictures", &mut cargo, "see that the address in tests/screens.txt is right")?;
    println!("{printed}");
    Ok(())
}
