/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.io.json.JsonNode.ArrayNode;
import org.ferrule.io.json.JsonNode.Member;
import org.ferrule.io.json.JsonNode.ObjectNode;
import org.ferrule.model.Element;
import org.ferrule.model.ExtraKey;
import org.ferrule.model.Features;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.check.Severity;

/** Turns JSON objects into objects of the model, driven by the Ecore. */
final class Binder {

    private final SourceText text;
    private final Problems problems;
    private final Positions positions;
    private final ScalarReader scalars;
    private final Severity severity;

    /** Creates a binder that reports what does not fit the model with this severity. */
    Binder(SourceText text, Problems problems, Positions positions, Severity severity) {
        this.text = text;
        this.problems = problems;
        this.positions = positions;
        this.scalars = new ScalarReader(text, problems, severity);
        this.severity = severity;
    }

    /** Returns the object; what could not be read is missing from it, and then there are problems. */
    EObject bind(ObjectNode node, EClass type) {
        EObject object = EcoreUtil.create(type);
        ObjectPlace place = new ObjectPlace(node);
        positions.put(object, place);
        for (Member member : node.members()) {
            EStructuralFeature feature = type.getEStructuralFeature(member.key());
            if (feature == null || feature == Literals.ELEMENT__EXTRAS) {
                keep((Element) object, member, Features.inDocumentOrder(type));
            } else {
                place.add(type.getFeatureID(feature), member);
                set(object, feature, member);
            }
        }
        return object;
    }

    private void set(EObject object, EStructuralFeature feature, Member member) {
        if (feature.isMany()) {
            many(member.value(), feature).ifPresent(values -> object.eSet(feature, values));
        } else {
            single(member.value(), feature).ifPresent(value -> object.eSet(feature, value));
        }
    }

    private Optional<List<Object>> many(JsonNode node, EStructuralFeature feature) {
        if (!(node instanceof ArrayNode array)) {
            wrongType(node, "an array");
            return Optional.empty();
        }
        List<Object> values = new ArrayList<>();
        array.values().forEach(value -> single(value, feature).ifPresent(values::add));
        return Optional.of(values);
    }

    private Optional<Object> single(JsonNode node, EStructuralFeature feature) {
        if (feature instanceof EAttribute attribute) {
            return scalars.read(node, attribute);
        }
        if (node instanceof ObjectNode object) {
            return Optional.of(bind(object, ((EReference) feature).getEReferenceType()));
        }
        wrongType(node, "an object");
        return Optional.empty();
    }

    private void keep(Element object, Member member, List<EStructuralFeature> features) {
        ExtraKey extra = ModelFactory.eINSTANCE.createExtraKey();
        extra.setKey(member.key());
        extra.setJson(Layout.alone(member.value(), text));
        object.getExtras().add(extra);
        positions.put(extra, new ObjectPlace(member.value()));
        sayUnknown(member, features.stream().map(EStructuralFeature::getName).toList());
    }

    /** A key that resembles a known one is likely a slip; one that does not may be somebody's own. */
    private void sayUnknown(Member member, List<String> known) {
        Optional<String> nearest = Nearest.of(member.key(), known).map(Layout::string);
        problems.add(nearest.isPresent() ? Severity.WARNING : Severity.INFO, FormatCode.UNKNOWN_KEY,
                text.region(member.keyStart(), member.keyEnd()), "the key " + Layout.string(member.key())
                        + " is not known, is kept and has no effect"
                        + nearest.map(key -> "; did you mean " + key + "?").orElse(""),
                "", nearest.orElse(""));
    }

    private void wrongType(JsonNode node, String expected) {
        problems.add(severity, FormatCode.WRONG_TYPE, node, "found " + node.words(), expected);
    }

    /** Reports every key that stands twice in one object, the unknown ones included. */
    void checkDuplicates(JsonNode node) {
        if (node instanceof ArrayNode array) {
            array.values().forEach(this::checkDuplicates);
        } else if (node instanceof ObjectNode object) {
            Set<String> keys = new HashSet<>();
            for (Member member : object.members()) {
                if (!keys.add(member.key())) {
                    problems.add(Severity.ERROR, FormatCode.DUPLICATE_KEY, member.keyStart(), member.keyEnd(),
                            "the key " + Layout.string(member.key()) + " stands twice in this object", "each key once");
                }
                checkDuplicates(member.value());
            }
        }
    }
}
