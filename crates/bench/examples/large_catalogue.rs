//! Writes a large invented catalogue: copies of a small one, up to so many bytes.
//!
//! `cargo run -p fitup-bench --example large_catalogue -- www/catalogue/demo.json 18000000 > large.json`

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [seed, bytes] = arguments.as_slice() else { return Err("say: SEED BYTES".into()) };
    let seed = serde_json::from_str(&std::fs::read_to_string(seed)?)?;
    println!("{}", fitup_bench::catalogue_text(&seed, bytes.parse()?));
    Ok(())
}
