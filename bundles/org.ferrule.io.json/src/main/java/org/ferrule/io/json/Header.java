/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.ferrule.io.json.JsonNode.Member;
import org.ferrule.io.json.JsonNode.NumberNode;
import org.ferrule.io.json.JsonNode.ObjectNode;
import org.ferrule.io.json.JsonNode.StringNode;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.check.Severity;

/** The first two keys of a document, its format and its version, and whether they agree with the file name. */
final class Header {

    private final ObjectNode root;
    private final SourceText text;
    private final Problems problems;

    Header(ObjectNode root, SourceText text, Problems problems) {
        this.root = root;
        this.text = text;
        this.problems = problems;
    }

    /** Returns the kind; nothing if it is missing, not known, or not that of the file name, and then says so. */
    Optional<DocumentKind> kind(String fileName) {
        Optional<DocumentKind> byName = DocumentKind.ofFileName(fileName);
        Optional<Member> member = member("format");
        if (member.isEmpty()) {
            problems.add(Severity.ERROR, FormatCode.MISSING_FORMAT, root.start(), root.start() + 1,
                    "the document does not name its format", "\"format\": " + formats(byName));
            return Optional.empty();
        }
        return byValue(member.get().value(), byName).filter(kind -> agrees(kind, byName, fileName, member.get()));
    }

    /** Returns the version, 1 or more; 0 if it is missing or not a version, and then says so. */
    int version() {
        Optional<Member> member = member("version");
        if (member.isEmpty()) {
            problems.add(Severity.ERROR, FormatCode.MISSING_VERSION, root.start(), root.start() + 1,
                    "the document does not say the version of its format", "\"version\": " + DocumentKind.VERSION);
            return 0;
        }
        JsonNode node = member.get().value();
        if (node instanceof NumberNode number && number.spelling().matches("[1-9]\\d{0,8}")) {
            return version(node, Integer.parseInt(number.spelling()));
        }
        problems.add(Severity.ERROR, FormatCode.BAD_VERSION, node, "found " + node.words(), "a whole number from 1");
        return 0;
    }

    private int version(JsonNode node, int version) {
        if (version > DocumentKind.VERSION) {
            problems.add(Severity.WARNING, FormatCode.NEWER_VERSION, node, "version " + version
                    + " of the format is newer than this program, which opens the document read-only",
                    "version " + DocumentKind.VERSION);
        }
        return version;
    }

    private Optional<DocumentKind> byValue(JsonNode node, Optional<DocumentKind> byName) {
        if (!(node instanceof StringNode string)) {
            problems.add(Severity.ERROR, FormatCode.WRONG_TYPE, node, "found " + node.words(), formats(byName));
            return Optional.empty();
        }
        Optional<DocumentKind> kind = DocumentKind.ofFormat(string.value());
        if (kind.isEmpty()) {
            problems.add(Severity.ERROR, FormatCode.UNKNOWN_FORMAT, text.region(node),
                    Layout.string(string.value()) + " is not a format of this program", formats(byName),
                    byName.map(DocumentKind::format).map(Layout::string).orElse(""));
        }
        return kind;
    }

    private boolean agrees(DocumentKind kind, Optional<DocumentKind> byName, String fileName, Member member) {
        if (byName.isEmpty() && !fileName.isEmpty()) {
            problems.add(Severity.WARNING, FormatCode.FILE_NAME, member.value(),
                    "the file name does not say the format", "a name that ends in " + kind.suffix());
        }
        boolean agrees = byName.isEmpty() || byName.get() == kind;
        if (!agrees) {
            problems.add(Severity.ERROR, FormatCode.FORMAT_AND_NAME, member.value(), "the format "
                    + Layout.string(kind.format()) + " does not agree with the file name",
                    formats(byName)
                            + ", or a name that ends in " + kind.suffix());
        }
        return agrees;
    }

    private Optional<Member> member(String key) {
        return root.members().stream().filter(member -> member.key().equals(key)).findFirst();
    }

    private static String formats(Optional<DocumentKind> byName) {
        List<DocumentKind> kinds = byName.map(List::of).orElseGet(() -> Stream.of(DocumentKind.values()).toList());
        return kinds.stream().map(kind -> Layout.string(kind.format())).collect(Collectors.joining(" or "));
    }
}
