/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Codes on the boxes of devices, as a scanner sends them or a person types them: GS1 element strings (raw, with a
 * symbology prefix, or printed with brackets), bare GTINs, and codes of the HIBC supplier labelling standard.
 * <p>
 * Sources: GS1 General Specifications, sections 3 (identifiers and their formats), 7.12 (century of a date) and 7.9
 * (check digit), from memory; "UDI formats by FDA-accredited issuing agency", version 1.3, 27 January 2017 (sizes);
 * ANSI/HIBC 2.6-2016, from memory.
 * <p>
 * Nothing is dropped silently and nothing is guessed: what does not agree with its format is a
 * {@link org.ferrule.shelf.code.CodeException} that says where and what was expected. One thing cannot be seen: a
 * scanner that swallows the group separator behind a lot number, where lot and what follows are together still short
 * enough for a lot. So what was read should be shown beside the box before it is used.
 */
package org.ferrule.shelf.code;
