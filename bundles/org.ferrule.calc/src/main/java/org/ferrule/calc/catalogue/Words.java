/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.util.Locale;
import java.util.ResourceBundle;

/** The words of one calculator; a translation is a file beside {@code calculators.properties}. */
final class Words {
    private static final String BUNDLE = "org.ferrule.calc.calculators";

    private final ResourceBundle bundle;
    private final String calculator;

    Words(String calculator) {
        this.calculator = calculator;
        this.bundle = ResourceBundle.getBundle(BUNDLE, Locale.ROOT, Words.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** Returns the text with that key, with {@code {0}}, {@code {1}} ... filled in. */
    String say(String key, Object... values) {
        String text = bundle.getString(calculator + "." + key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", values[i].toString());
        }
        return text;
    }

    /** Returns the text with the variant's key, or the one without a variant. */
    String sayVariant(String key, String variant) {
        return bundle.containsKey(calculator + "." + key + "." + variant) ? say(key + "." + variant) : say(key);
    }

    /** Returns the calculator's own caution, or the general one. */
    String caution() {
        String own = calculator + ".caution";
        return bundle.getString(bundle.containsKey(own) ? own : "caution");
    }
}
