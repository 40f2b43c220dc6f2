/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The templates of one language. */
public final class Phrases {
    private static final String WORDS = "words";
    private static final Pattern PLACE = Pattern.compile("\\{(\\d{1,2})}");

    private final ResourceBundle bundle;

    private Phrases(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /** The templates in English. */
    public static Phrases english() {
        return in(Locale.ROOT);
    }

    /** The templates in a language, as far as they are translated; the rest in English. */
    public static Phrases in(Locale language) {
        return beside(Phrases.class, WORDS, language);
    }

    /** The English templates in a properties file of that name beside a class of another bundle. */
    public static Phrases beside(Class<?> neighbour, String name) {
        return beside(neighbour, name, Locale.ROOT);
    }

    private static Phrases beside(Class<?> neighbour, String name, Locale language) {
        ResourceBundle.Control noDefault = ResourceBundle.Control.getNoFallbackControl(
                ResourceBundle.Control.FORMAT_PROPERTIES);
        return new Phrases(ResourceBundle.getBundle(neighbour.getPackageName() + "." + name, language,
                neighbour.getClassLoader(), noDefault));
    }

    /**
     * The template with that key.
     *
     * @throws MissingResourceException naming the key when there is none
     */
    public String get(String key) {
        return bundle.getString(key);
    }

    /** The template with that key, if there is one. */
    Optional<String> find(String key) {
        return bundle.containsKey(key) ? Optional.of(bundle.getString(key)) : Optional.empty();
    }

    /**
     * A phrase with {@code {0}}, {@code {1}} ... filled in; what the values say is never read as a place itself, and a
     * place without a value stays.
     */
    public String fill(String key, String... values) {
        return PLACE.matcher(get(key)).replaceAll(found -> {
            int number = Integer.parseInt(found.group(1));
            return Matcher.quoteReplacement(number < values.length ? values[number] : found.group());
        });
    }
}
