/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.ferrule.engine.document.DocumentHashes;
import org.ferrule.model.Closing;
import org.ferrule.model.DocumentHash;

/**
 * A document as it was when a case was closed, beside the file of today.
 *
 * @param file its path relative to the case
 * @param revision that it had then; empty where it had none
 * @param sha256 the SHA-256 of its bytes then, in hexadecimal digits
 * @param standing how the file of today stands to it
 */
public record Fingerprint(String file, String revision, String sha256, Standing standing) {
    public Fingerprint {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(revision, "revision");
        Objects.requireNonNull(sha256, "sha256");
        Objects.requireNonNull(standing, "standing");
    }

    /** Compares all documents of a record with the files of today, in the order of the record. */
    public static List<Fingerprint> of(Closing closing, StoredFiles files) {
        return closing.getHashes().stream().map(then -> of(then, files)).toList();
    }

    private static Fingerprint of(DocumentHash then, StoredFiles files) {
        String path = ClosedCase.text(then.getFile());
        String sha256 = ClosedCase.text(then.getSha256());
        return new Fingerprint(path, ClosedCase.text(then.getRevision()), sha256, standing(path, sha256, files));
    }

    private static Standing standing(String path, String sha256, StoredFiles files) {
        try {
            return files.bytes(path).map(DocumentHashes::sha256)
                    .map(today -> today.equals(sha256.toLowerCase(Locale.ROOT)) ? Standing.UNCHANGED : Standing.CHANGED)
                    .orElse(Standing.NOT_FOUND);
        } catch (IOException e) {
            return Standing.NOT_READABLE;
        }
    }
}
