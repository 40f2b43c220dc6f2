/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.Element;
import org.ferrule.model.ExtraKey;
import org.ferrule.model.Features;
import org.ferrule.model.ModelFactory;

/** Makes documents with everything that the Ecore allows in them, the same for the same seed. */
final class RandomDocuments {

    private static final List<String> TEXTS = List.of("", "a", "\u00DCber \u2300 \"x\" \\ / \t\n\r\u0000",
            "\uD83D\uDE00",
            "\uD800", "null", "  blanks  ", "0.070 in min");
    private static final List<String> FIGURES = List.of("0.070 in min", "0.070\" min", ".070 in", "2.6 Fr max", "2.6F",
            "2.6 French", "1.02 mm \u00B10.03", "1.02 \u00B1 0.03 mm", "1.02 mm +0.02/-0.01", "0.88..0.94 mm",
            "1.015 mm sd 0.008 n 12", "1.78 mm", "1.78 mm nom", "0.070 in (1.78 mm)", "unreadable", "");
    private static final List<String> NUMBERS = List.of("0", "1", "1.00", "-0.5", "0.950", "123456789.123456789");
    private static final List<String> EXTRAS = List.of("1.00", "1e5", "-0", "null", "\"\\u0041\"", "[]", "{}",
            "[1, 2.50]", "{\n  \"a\": [\n    {}\n  ]\n}");

    private final Random random;

    RandomDocuments(long seed) {
        this.random = new Random(seed);
    }

    Document next() {
        DocumentKind kind = pick(List.of(DocumentKind.values()));
        Document document = kind.create();
        fill(document);
        document.setFormat(kind.format());
        document.setVersion(DocumentKind.VERSION);
        return document;
    }

    private void fill(EObject object) {
        for (EStructuralFeature feature : Features.inDocumentOrder(object.eClass())) {
            if (random.nextInt(3) > 0) {
                set(object, feature);
            }
        }
        for (int i = random.nextInt(8) - 5; i > 0; i--) {
            ((Element) object).getExtras().add(extra("x" + i));
        }
    }

    private void set(EObject object, EStructuralFeature feature) {
        if (feature.isMany()) {
            object.eSet(feature, IntStream.range(0, random.nextInt(3)).mapToObj(i -> value(feature)).toList());
        } else {
            object.eSet(feature, value(feature));
        }
    }

    private Object value(EStructuralFeature feature) {
        if (feature instanceof EAttribute attribute) {
            return scalar(attribute.getEAttributeType());
        }
        EObject child = EcoreUtil.create(((EReference) feature).getEReferenceType());
        fill(child);
        return child;
    }

    private Object scalar(EDataType type) {
        if (type instanceof EEnum words) {
            return pick(words.getELiterals()).getInstance();
        }
        Class<?> javaType = type.getInstanceClass();
        if (javaType == boolean.class) {
            return random.nextBoolean();
        }
        if (javaType == int.class || javaType == Integer.class) {
            return random.nextInt();
        }
        return javaType == BigDecimal.class ? new BigDecimal(pick(NUMBERS))
                : EcoreUtil.createFromString(type, pick(javaType == String.class ? TEXTS : FIGURES));
    }

    private ExtraKey extra(String key) {
        ExtraKey extra = ModelFactory.eINSTANCE.createExtraKey();
        extra.setKey(key);
        extra.setJson(pick(EXTRAS));
        return extra;
    }

    private <T> T pick(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }
}
