/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.Document;
import org.ferrule.model.Element;
import org.ferrule.model.ExtraKey;
import org.ferrule.model.Features;

import com.fasterxml.jackson.core.JsonProcessingException;

/** Writes a document in the canonical form, driven by the Ecore. */
final class DocumentWriter {

    /** Returns the bytes of the document; the same document gives the same bytes. */
    byte[] write(Document document) {
        return (object(document) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private String object(EObject object) {
        List<String> entries = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (EStructuralFeature feature : Features.inDocumentOrder(object.eClass())) {
            keys.add(feature.getName());
            if (isWritten(object, feature)) {
                entries.add(Layout.entry(feature.getName(), value(object, feature)));
            }
        }
        ((Element) object).getExtras().forEach(extra -> entries.add(extra(extra, keys)));
        return Layout.object(entries);
    }

    /** A number that cannot be absent, such as the version, is always written. */
    private static boolean isWritten(EObject object, EStructuralFeature feature) {
        return object.eIsSet(feature) || feature.isRequired() && feature.getEType().getInstanceClass() == int.class;
    }

    private String value(EObject object, EStructuralFeature feature) {
        Object value = object.eGet(feature);
        if (feature instanceof EAttribute attribute) {
            return feature.isMany() ? Layout.arrayOfScalars(scalars((List<?>) value, attribute.getEAttributeType()))
                    : scalar(value, attribute.getEAttributeType());
        }
        return feature.isMany() ? Layout.arrayOfObjects(objects((List<?>) value)) : object((EObject) value);
    }

    private List<String> objects(List<?> values) {
        return values.stream().map(value -> object((EObject) value)).toList();
    }

    private static List<String> scalars(List<?> values, EDataType type) {
        return values.stream().map(value -> scalar(value, type)).toList();
    }

    private static String scalar(Object value, EDataType type) {
        if (value instanceof BigDecimal number) {
            return number.toPlainString();
        }
        if (value instanceof Integer || value instanceof Boolean) {
            return value.toString();
        }
        return Layout
                .string(value instanceof Enumerator word ? word.getLiteral() : EcoreUtil.convertToString(type, value));
    }

    private static String extra(ExtraKey extra, Set<String> keys) {
        if (!keys.add(extra.getKey())) {
            throw new IllegalArgumentException("the key \"" + extra.getKey() + "\" would be written twice");
        }
        try {
            return Layout.entry(extra.getKey(),
                    Layout.kept(TreeReader.read(extra.getJson()), new SourceText(extra.getJson())));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("the value of the key \"" + extra.getKey() + "\" is not JSON: "
                    + extra.getJson(), e);
        }
    }
}
