/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

/**
 * A part of a code that has no place of its own in {@link ProductCode}.
 *
 * @param id application identifier of GS1, such as {@code 240}, or {@code expiryHour} where an HIBC code tells it
 * @param value the value as it stands in the code
 */
public record Element(String id, String value) {
}
