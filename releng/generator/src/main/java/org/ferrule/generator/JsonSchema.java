/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * The JSON Schema (draft 2020-12) of one kind of document, from the Ecore. It allows unknown keys, since the program
 * keeps them, and holds figures only loosely to their form: a number and something like a unit.
 */
final class JsonSchema {

    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";
    private static final String ID = "https://ferrule.invalid/schema/";
    private static final String DEFINITIONS = "#/$defs/";
    private static final String FIGURE = "[0-9.][ \\t]*[A-Za-z\u00B5\u03BC\"\u2033\u201D]";
    private static final String PARTIAL_DATE = "^[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?$";

    /** The Ecore's bounds and the schema's, in the order in which they are written. */
    private static final List<Map.Entry<String, String>> BOUNDS = List.of(Map.entry("above", "exclusiveMinimum"),
            Map.entry("below", "exclusiveMaximum"), Map.entry("least", "minimum"), Map.entry("most", "maximum"));

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final EClass document;
    private final Set<EClassifier> needed = new LinkedHashSet<>();
    private final ObjectNode definitions = NODES.objectNode();

    JsonSchema(EClass document) {
        this.document = document;
    }

    /** Returns the kinds of document of a model: the classes that have a file name's ending. */
    static Collection<EClass> documents(EPackage model) {
        return model.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(type -> Annotations.get(type, "suffix").isPresent()).toList();
    }

    /** Returns the name of the schema's file, such as devices.schema.json. */
    String fileName() {
        return Annotations.get(document, "suffix").orElseThrow().substring(1).replace(".json", ".schema.json");
    }

    ObjectNode build() {
        ObjectNode schema = NODES.objectNode().put("$schema", DIALECT).put("$id", ID + fileName());
        schema.put("title", Annotations.label(document));
        schema.setAll(object(document));
        ObjectNode properties = (ObjectNode) schema.get("properties");
        ((ObjectNode) properties.get("format")).put("const", Annotations.get(document, "format").orElseThrow());
        ((ObjectNode) properties.get("version")).put("const", 1);
        define();
        return schema.set("$defs", definitions);
    }

    /** Defining one type may need further ones. */
    private void define() {
        while (definitions.size() < needed.size()) {
            Set.copyOf(needed).stream().filter(type -> !definitions.has(type.getName()))
                    .forEach(type -> definitions.set(type.getName(), definition(type)));
        }
        ObjectNode sorted = NODES.objectNode();
        definitions.properties().stream().sorted(Map.Entry.comparingByKey())
                .forEach(entry -> sorted.set(entry.getKey(), entry.getValue()));
        definitions.removeAll();
        definitions.setAll(sorted);
    }

    private ObjectNode definition(EClassifier type) {
        if (type instanceof EClass object) {
            return object(object);
        }
        ObjectNode text = NODES.objectNode().put("description", documentation(type)).put("type", "string");
        if (type instanceof EEnum words) {
            words.getELiterals().forEach(word -> text.withArray("enum").add(word.getLiteral()));
            return text;
        }
        return text.put("pattern", FIGURE);
    }

    private ObjectNode object(EClass type) {
        ObjectNode schema = NODES.objectNode().put("description", documentation(type)).put("type", "object");
        ObjectNode properties = schema.putObject("properties");
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (!feature.getName().equals("extras")) {
                properties.set(feature.getName(), property(feature));
                if (feature.isRequired()) {
                    schema.withArray("required").add(feature.getName());
                }
            }
        }
        return schema;
    }

    private ObjectNode property(EStructuralFeature feature) {
        ObjectNode property = NODES.objectNode().put("description", documentation(feature));
        if (feature.isMany()) {
            property.put("type", "array").set("items", value(feature));
            if (feature.isRequired()) {
                property.put("minItems", 1);
            }
            return property;
        }
        return property.setAll(value(feature));
    }

    private ObjectNode value(EStructuralFeature feature) {
        EClassifier type = feature.getEType();
        if (type instanceof EDataType && type.getEPackage() != document.getEPackage()) {
            return plain(feature, type.getInstanceClass());
        }
        needed.add(type);
        return NODES.objectNode().put("$ref", DEFINITIONS + type.getName());
    }

    private static ObjectNode plain(EStructuralFeature feature, Class<?> type) {
        ObjectNode value = NODES.objectNode().put("type", jsonType(type));
        BOUNDS.forEach(bound -> Annotations.get(feature, bound.getKey())
                .ifPresent(number -> value.put(bound.getValue(), Integer.parseInt(number))));
        switch (Annotations.get(feature, "text").orElse("")) {
            case "date" -> value.put("format", "date");
            case "partial date" -> value.put("pattern", PARTIAL_DATE);
            default -> {
            }
        }
        return value;
    }

    private static String jsonType(Class<?> type) {
        if (type == boolean.class) {
            return "boolean";
        }
        if (type == int.class || type == Integer.class) {
            return "integer";
        }
        return type == String.class ? "string" : "number";
    }

    private static String documentation(EModelElement element) {
        return EcoreUtil.getAnnotation(element, GenModelPackage.eNS_URI, "documentation");
    }
}
