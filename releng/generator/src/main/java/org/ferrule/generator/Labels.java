/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;

/**
 * The English labels of types, features and enum words, by their keys in {@code plugin.properties}; those of enum words
 * are the words of the documents.
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
        labels.put(prefix + "type", Annotations.label(classifier));
        if (classifier instanceof EClass type) {
            type.getEStructuralFeatures()
                    .forEach(f -> labels.put(prefix + f.getName() + "_feature", Annotations.label(f)));
        } else if (classifier instanceof EEnum words) {
            words.getELiterals().forEach(l -> labels.put(prefix + l.getName() + "_literal", l.getLiteral()));
        }
    }
}
