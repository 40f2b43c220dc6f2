/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

/**
 * A stretch of a document's text. Lines and columns count from 1, offsets from 0; columns, offsets and lengths count
 * UTF-16 units, a byte order mark not included.
 *
 * @param line the line where it begins
 * @param column the column where it begins
 * @param offset the offset where it begins
 * @param length its length, 0 for a mere place
 */
public record TextRegion(int line, int column, int offset, int length) {
}
