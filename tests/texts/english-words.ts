/** Function words of English that are no words of German or French: where one stands in a report in these, a text was missed. */
export const ENGLISH_WORDS =
	/(?<![\p{L}\d-])(the|and|not|with|from|which|that|this|these|those|were|been|has|have|its|their|they|where|when|what|who|before|after|between|only|than|then|there|would|should|could|nothing|something|nobody|of|is|are|by|it|to|be|as)(?![\p{L}\d-])/iu;
