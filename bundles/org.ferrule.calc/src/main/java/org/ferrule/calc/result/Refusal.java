/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.result;

/**
 * Why there is no value.
 *
 * @param code the reason, in small letters with blanks, such as {@code beyond rated burst}
 * @param text the reason in a sentence
 */
public record Refusal(String code, String text) {
}
