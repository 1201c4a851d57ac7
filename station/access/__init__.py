"""Who signs: PINs, badges, and proofs that a signature was given."""
