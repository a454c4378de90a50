//! The core in wasm, against what it says natively.
//!
//! `cargo xtask test --only wasm` writes the native answers first and names the file in
//! `FITUP_NATIVE_ANSWERS`.
#![cfg(target_arch = "wasm32")]

use wasm_bindgen_test::wasm_bindgen_test;

#[wasm_bindgen_test]
fn answers_in_wasm_are_the_native_ones_bit_for_bit() {
    let native = include_str!(env!("FITUP_NATIVE_ANSWERS"));
    let here = fitup_tests::answers::answers();
    assert!(native.lines().count() > 100, "only {} answers to compare", native.lines().count());
    for (native, here) in native.lines().zip(here.lines()) {
        assert_eq!(native, here);
    }
    assert_eq!(native.lines().count(), here.lines().count());
}
