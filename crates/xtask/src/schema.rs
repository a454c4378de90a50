//! The JSON Schema of the catalogue format, kept beside what is served.

use crate::failure::{Failure, failure};
use crate::run::quietly;
use crate::tools::tooled;

const PATH: &str = "www/catalogue.schema.json";

/// Writes the schema that the format's types say.
pub fn command(_: &[String]) -> Result<(), Failure> {
    let mut print = tooled("cargo");
    print.args(["run", "--quiet", "--package", "fitup", "--", "schema"]);
    let schema = quietly("schema", &mut print, "mend what is named above")?;
    std::fs::write(crate::root().join(PATH), schema.trim_end().to_owned() + "\n")
        .map_err(|error| failure(format!("writing {PATH}"), error.to_string(), "see that it is writable"))?;
    println!("{PATH}");
    Ok(())
}
