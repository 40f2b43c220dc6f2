/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.math.BigInteger;
import java.util.Comparator;

/** Orders text as people do: numbers within it count by value, so that "6 Fr" comes before "10 Fr"; empty comes last. */
final class NaturalOrder implements Comparator<String> {

    @Override
    public int compare(String a, String b) {
        if (a.isEmpty() || b.isEmpty()) {
            return Boolean.compare(a.isEmpty(), b.isEmpty());
        }
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int iEnd = chunkEnd(a, i);
            int jEnd = chunkEnd(b, j);
            int order = compareChunks(a.substring(i, iEnd), b.substring(j, jEnd));
            if (order != 0) {
                return order;
            }
            i = iEnd;
            j = jEnd;
        }
        return Integer.compare(a.length() - i, b.length() - j);
    }

    private static int chunkEnd(String text, int from) {
        boolean digits = isDigit(text.charAt(from));
        int end = from + 1;
        while (end < text.length() && isDigit(text.charAt(end)) == digits) {
            end++;
        }
        return end;
    }

    private static int compareChunks(String a, String b) {
        if (isDigit(a.charAt(0)) && isDigit(b.charAt(0))) {
            return new BigInteger(a).compareTo(new BigInteger(b));
        }
        return a.compareToIgnoreCase(b);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
