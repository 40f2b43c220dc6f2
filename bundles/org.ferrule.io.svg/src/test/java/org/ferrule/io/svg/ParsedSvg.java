/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A file read back by the XML parser of the JDK. */
record ParsedSvg(Document document) {

    static ParsedSvg of(byte[] written) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        return new ParsedSvg(factory.newDocumentBuilder().parse(new ByteArrayInputStream(written)));
    }

    Element root() {
        return document.getDocumentElement();
    }

    List<Element> all() {
        return all("*");
    }

    List<Element> all(String name) {
        NodeList nodes = document.getElementsByTagNameNS("*", name);
        return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList();
    }
}
