-- The file, by its hash, that shows the receipt of a notice: one that a sealed record of the order names. The one that shows its
-- sending stands in `plain`.
ALTER TABLE carrier_notice ADD COLUMN receipt_sha256 text CHECK (receipt_sha256 ~ '^[0-9a-f]{64}$'),
	ADD CHECK (received_on IS NOT NULL OR receipt_sha256 IS NULL);
