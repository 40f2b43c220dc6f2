/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.next;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with numbers in it, such as {@code 2.50 x 15 mm}.
 *
 * @param words what stands before, between and after the numbers
 * @param numbers the numbers as they are written
 */
record Numbers(List<String> words, List<String> numbers) {

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    static Numbers of(String text) {
        List<String> words = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(text);
        int end = 0;
        while (matcher.find()) {
            words.add(text.substring(end, matcher.start()));
            numbers.add(matcher.group());
            end = matcher.end();
        }
        words.add(text.substring(end));
        return new Numbers(List.copyOf(words), List.copyOf(numbers));
    }

    int size() {
        return numbers.size();
    }

    BigDecimal value(int index) {
        return new BigDecimal(numbers.get(index));
    }

    /** Tells whether the texts differ in numbers only. */
    boolean isLike(Numbers other) {
        return words.equals(other.words);
    }

    /** Returns the only number in which the texts differ; nothing if there are more, or none. */
    Optional<Integer> onlyDifference(Numbers other) {
        List<Integer> different = new ArrayList<>();
        for (int i = 0; isLike(other) && i < size(); i++) {
            if (value(i).compareTo(other.value(i)) != 0) {
                different.add(i);
            }
        }
        return different.size() == 1 ? Optional.of(different.get(0)) : Optional.empty();
    }

    /** Returns the text with another number, written like the former one; nothing if it has more decimals. */
    Optional<String> with(int index, BigDecimal number) {
        String before = numbers.get(index);
        int decimals = before.contains(".") ? before.length() - before.indexOf('.') - 1 : 0;
        if (number.signum() < 0 || number.setScale(decimals, RoundingMode.HALF_EVEN).compareTo(number) != 0) {
            return Optional.empty();
        }
        StringBuilder digits = new StringBuilder(number.setScale(decimals, RoundingMode.UNNECESSARY).toPlainString());
        while (before.startsWith("0") && digits.length() < before.length()) {
            digits.insert(0, '0');
        }
        StringBuilder text = new StringBuilder(words.get(0));
        for (int i = 0; i < size(); i++) {
            text.append(i == index ? digits : numbers.get(i)).append(words.get(i + 1));
        }
        return Optional.of(text.toString());
    }
}
