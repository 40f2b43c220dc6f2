/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with places for arguments: {@code {0:section}} stands for argument 0 in the role of a section, and what
 * stands in square brackets is left out when an argument in it is empty.
 */
final class Template {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+):(\\w+)}");
    private static final Pattern OPTIONAL = Pattern.compile("\\[([^\\]]*)]");

    private final String pattern;

    /**
     * A place for an argument.
     *
     * @param index of the argument
     * @param role how it is written
     */
    record Place(int index, Role role) {
        private static Place of(Matcher found) {
            return new Place(Integer.parseInt(found.group(1)), Role.ofWord(found.group(2)));
        }
    }

    Template(String pattern) {
        this.pattern = pattern;
    }

    /** The places in it, in order. */
    List<Place> places() {
        List<Place> places = new ArrayList<>();
        Matcher found = PLACE.matcher(pattern);
        while (found.find()) {
            places.add(Place.of(found));
        }
        return places;
    }

    /** The sentence with its arguments; what they say is never read as a template itself. */
    String fill(Function<Place, String> words) {
        StringBuilder sentence = new StringBuilder();
        Matcher optional = OPTIONAL.matcher(pattern);
        int from = 0;
        while (optional.find()) {
            fillPart(sentence, pattern.substring(from, optional.start()), words);
            if (new Template(optional.group(1)).places().stream().map(words).noneMatch(String::isEmpty)) {
                fillPart(sentence, optional.group(1), words);
            }
            from = optional.end();
        }
        fillPart(sentence, pattern.substring(from), words);
        return sentence.toString();
    }

    private static void fillPart(StringBuilder sentence, String part, Function<Place, String> words) {
        Matcher found = PLACE.matcher(part);
        int from = 0;
        while (found.find()) {
            sentence.append(part, from, found.start()).append(words.apply(Place.of(found)));
            from = found.end();
        }
        sentence.append(part.substring(from));
    }
}
