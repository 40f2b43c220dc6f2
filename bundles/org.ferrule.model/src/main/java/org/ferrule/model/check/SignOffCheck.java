/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.DocumentHash;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.SignOff;
import org.ferrule.model.SignedRow;

/** A sign-off has one verdict for each pair, and fingerprints that can be some. */
final class SignOffCheck implements Check {

    private static final Pattern VERDICTS = Pattern.compile("[fctub]*");
    private static final Pattern SHA_256 = Pattern.compile("[0-9a-f]{64}");

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof SignOff signOff) {
            signOff.getRows().forEach(row -> check(row, signOff.getInner().size(), examination));
        } else if (object instanceof DocumentHash hash && hash.getSha256() != null
                && !SHA_256.matcher(hash.getSha256()).matches()) {
            examination.add(ProblemCode.BAD_FINGERPRINT, hash, Literals.DOCUMENT_HASH__SHA256, hash.getSha256());
        }
    }

    private static void check(SignedRow row, int columns, Examination examination) {
        Stream.<EStructuralFeature>of(Literals.SIGNED_ROW__IN, Literals.SIGNED_ROW__OUT)
                .filter(feature -> Objects.nonNull(row.eGet(feature))).forEach(feature -> {
                    String letters = (String) row.eGet(feature);
                    if (letters.length() != columns || !VERDICTS.matcher(letters).matches()) {
                        examination.add(ProblemCode.BAD_VERDICTS, row, feature, Integer.toString(columns));
                    }
                });
    }
}
