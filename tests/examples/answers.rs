//! Prints the native answers that the wasm test compares with.

fn main() {
    print!("{}", fitup_tests::answers::answers());
}
