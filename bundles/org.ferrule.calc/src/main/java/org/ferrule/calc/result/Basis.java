/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.result;

/**
 * What an answer rests on, in words.
 *
 * @param method how it was calculated
 * @param validity where the method holds and what it leaves out
 * @param source where method and figures come from, and how they are known
 * @param caution what to be careful with
 */
public record Basis(String method, String validity, String source, String caution) {
}
