/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EPackage;

/**
 * The English labels of types, features and enum words, by their keys in {@code plugin.properties}: the Ecore's own
 * label where it has one, the word of the documents for an enum, the name as a phrase otherwise.
 */
final class Labels {

    private static final Pattern LINE = Pattern.compile("(?m)^(_UI_\\w+_(?:type|feature|literal)) = .*$");

    private final Map<String, String> labels = new TreeMap<>();

    Labels(EPackage model) {
        model.getEClassifiers().forEach(this::add);
    }

    /** Replaces what EMF made of the names. */
    String in(String properties) {
        return LINE.matcher(properties).replaceAll(m -> Matcher.quoteReplacement(line(m)));
    }

    private String line(MatchResult match) {
        String label = labels.get(match.group(1));
        return label == null ? match.group() : match.group(1) + " = " + label;
    }

    private void add(EClassifier classifier) {
        String prefix = "_UI_" + classifier.getName() + "_";
        labels.put(prefix + "type", Annotations.label(classifier).orElse(phrase(classifier)));
        if (classifier instanceof EClass type) {
            type.getEStructuralFeatures().forEach(f -> labels.put(prefix + f.getName() + "_feature",
                    Annotations.label(f).orElse(phrase(f))));
        } else if (classifier instanceof EEnum words) {
            words.getELiterals().forEach(l -> labels.put(prefix + l.getName() + "_literal", l.getLiteral()));
        }
    }

    private static String phrase(ENamedElement element) {
        String words = element.getName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
