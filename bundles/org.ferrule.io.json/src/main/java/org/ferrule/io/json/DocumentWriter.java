/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
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
import com.fasterxml.jackson.core.util.ByteArrayBuilder;

/** Writes a document in the canonical form, driven by the Ecore, object after object. */
final class DocumentWriter {

    private final Layout layout;
    private final Pieces pieces;

    /** Knows how objects are to be written that need not be written anew. */
    interface Pieces {

        /** Returns how the object is spelled inside of so many brackets; nothing if it is to be written anew. */
        Optional<String> of(EObject object, int depth);
    }

    DocumentWriter(Layout layout, Pieces pieces) {
        this.layout = layout;
        this.pieces = pieces;
    }

    /** Returns the bytes of the document; the same document gives the same bytes. */
    static byte[] write(Document document) {
        return write(document, (object, depth) -> Optional.empty());
    }

    /** Returns the bytes of the document, of which some pieces are known. */
    static byte[] write(Document document, Pieces pieces) {
        ByteArrayBuilder bytes = new ByteArrayBuilder();
        try (Writer text = new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8))) {
            new DocumentWriter(new Layout(text), pieces).object(document);
            text.append('\n');
        } catch (IOException e) {
            throw new IllegalStateException("bytes in memory cannot fail to be written", e);
        }
        return bytes.toByteArray();
    }

    /** Writes an object where the layout stands. */
    void object(EObject object) throws IOException {
        layout.open('{');
        for (EStructuralFeature feature : Features.inDocumentOrder(object.eClass())) {
            if (isWritten(object, feature)) {
                layout.key(feature.getName());
                value(object.eGet(feature), feature);
            }
        }
        extras((Element) object);
        layout.close('}');
    }

    /** A number that cannot be absent, such as the version, is always written. */
    private static boolean isWritten(EObject object, EStructuralFeature feature) {
        return object.eIsSet(feature) || feature.isRequired() && feature.getEType().getInstanceClass() == int.class;
    }

    private void value(Object value, EStructuralFeature feature) throws IOException {
        if (feature instanceof EAttribute attribute) {
            attribute(value, attribute);
        } else if (feature.isMany()) {
            objects((List<?>) value);
        } else {
            object((EObject) value);
        }
    }

    private void attribute(Object value, EAttribute attribute) throws IOException {
        EDataType type = attribute.getEAttributeType();
        if (attribute.isMany()) {
            layout.arrayOfScalars(((List<?>) value).stream().map(one -> scalar(one, type)).toList());
        } else {
            layout.spelled(scalar(value, type));
        }
    }

    private void objects(List<?> values) throws IOException {
        layout.open('[');
        for (Object value : values) {
            layout.next();
            listed((EObject) value);
        }
        layout.close(']');
    }

    private void listed(EObject object) throws IOException {
        Optional<String> piece = pieces.of(object, layout.depth());
        if (piece.isPresent()) {
            layout.spelled(piece.get());
        } else {
            object(object);
        }
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

    private void extras(Element object) throws IOException {
        if (!object.getExtras().isEmpty()) {
            Set<String> keys = new HashSet<>();
            Features.inDocumentOrder(object.eClass()).forEach(feature -> keys.add(feature.getName()));
            for (ExtraKey extra : object.getExtras()) {
                extra(extra, keys);
            }
        }
    }

    private void extra(ExtraKey extra, Set<String> keys) throws IOException {
        if (!keys.add(extra.getKey())) {
            throw new IllegalArgumentException("the key \"" + extra.getKey() + "\" would be written twice");
        }
        layout.key(extra.getKey());
        layout.kept(parsed(extra), new SourceText(extra.getJson()));
    }

    private static JsonNode parsed(ExtraKey extra) {
        try {
            return TreeReader.read(extra.getJson());
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("the value of the key \"" + extra.getKey() + "\" is not JSON: "
                    + extra.getJson(), e);
        }
    }
}
