/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.document;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

import org.ferrule.model.Document;
import org.ferrule.model.DocumentHash;
import org.ferrule.model.ModelFactory;

/** Fingerprints of documents, by which it is known whether they are as they were. */
public final class DocumentHashes {
    private DocumentHashes() {
    }

    /**
     * The fingerprint of a document as it is stored.
     *
     * @param path by which it is named
     * @param document for its revision
     * @param bytes as they lie in the file
     */
    public static DocumentHash of(String path, Document document, byte[] bytes) {
        DocumentHash hash = ModelFactory.eINSTANCE.createDocumentHash();
        hash.setFile(path);
        hash.setRevision(document.getRevision());
        hash.setSha256(sha256(bytes));
        return hash;
    }

    /** The SHA-256 of bytes, in hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
