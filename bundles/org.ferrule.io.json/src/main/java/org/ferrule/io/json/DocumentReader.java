/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Predicate;

import org.ferrule.io.json.JsonNode.ObjectNode;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.check.Severity;

import com.fasterxml.jackson.core.JsonProcessingException;

/** Reads one document: bytes, text, tree, header, objects, content; each step only if the one before succeeded. */
final class DocumentReader {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final String fileName;
    private final boolean marked;
    private final SourceText text;
    private final Problems problems;
    private final Positions positions;

    DocumentReader(byte[] bytes, String fileName) {
        this.fileName = fileName;
        CharBuffer decoded = CharBuffer.allocate(bytes.length);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CoderResult outcome = decoder.decode(ByteBuffer.wrap(bytes), decoded, true);
        String all = decoded.flip().toString();
        this.marked = all.startsWith(BYTE_ORDER_MARK);
        this.text = new SourceText(marked ? all.substring(1) : all);
        this.problems = new Problems(text);
        this.positions = new Positions(text);
        if (outcome.isError()) {
            int end = text.text().length();
            problems.add(Severity.ERROR, FormatCode.NOT_UTF_8, end, end, "the bytes from here on are not UTF-8",
                    "UTF-8");
        }
    }

    /**
     * Reads the document.
     *
     * @param checking whether what it says is checked too, not only its form
     */
    ReadResult read(boolean checking) {
        Document document = problems.hasErrors() ? null : tree().map(this::document).orElse(null);
        if (document != null && checking) {
            new Content(positions).check(document, problems);
        }
        return new ReadResult(document, checking ? positions : Positions.NONE, problems.inOrder(),
                comparison());
    }

    /** Holds the text alone, which is there anyway, for as long as nobody asks. */
    private Predicate<byte[]> comparison() {
        String source = text.text();
        return marked ? written -> false : written -> source.equals(new String(written, StandardCharsets.UTF_8));
    }

    private Optional<ObjectNode> tree() {
        try {
            JsonNode node = TreeReader.read(text.text());
            if (node instanceof ObjectNode object) {
                return Optional.of(object);
            }
            problems.add(Severity.ERROR, FormatCode.NOT_AN_OBJECT, node, "found " + node.words(), "an object");
        } catch (JsonProcessingException e) {
            SyntaxError error = new SyntaxError(e, text.text());
            problems.add(Severity.ERROR, FormatCode.SYNTAX, error.offset(), error.offset(), error.message(), "");
        }
        return Optional.empty();
    }

    private Document document(ObjectNode root) {
        Header header = new Header(root, text, problems);
        Optional<DocumentKind> kind = header.kind(fileName);
        int version = header.version();
        if (kind.isEmpty() || version < 1) {
            return null;
        }
        boolean newer = version > DocumentKind.VERSION;
        Binder binder = new Binder(text, problems, positions, newer ? Severity.WARNING : Severity.ERROR);
        binder.checkDuplicates(root);
        Document document = (Document) binder.bind(root, kind.get().type());
        return problems.hasErrors() ? null : document;
    }
}
