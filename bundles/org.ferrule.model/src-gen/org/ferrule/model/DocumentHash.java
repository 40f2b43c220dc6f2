/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Document Hash</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A document as it was when a case was closed or a chart signed off.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.DocumentHash#getFile <em>File</em>}</li>
 *   <li>{@link org.ferrule.model.DocumentHash#getRevision <em>Revision</em>}</li>
 *   <li>{@link org.ferrule.model.DocumentHash#getSha256 <em>Sha256</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getDocumentHash()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Document'"
 * @generated
 */
public interface DocumentHash extends Element
{
	/**
	 * Returns the value of the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its path relative to the case or the chart, with /.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>File</em>' attribute.
	 * @see #setFile(String)
	 * @see org.ferrule.model.ModelPackage#getDocumentHash_File()
	 * @model required="true"
	 * @generated
	 */
	String getFile();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DocumentHash#getFile <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>File</em>' attribute.
	 * @see #getFile()
	 * @generated
	 */
	void setFile(String value);

	/**
	 * Returns the value of the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its revision.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Revision</em>' attribute.
	 * @see #setRevision(String)
	 * @see org.ferrule.model.ModelPackage#getDocumentHash_Revision()
	 * @model
	 * @generated
	 */
	String getRevision();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DocumentHash#getRevision <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Revision</em>' attribute.
	 * @see #getRevision()
	 * @generated
	 */
	void setRevision(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The SHA-256 of its bytes, in hexadecimal digits.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see org.ferrule.model.ModelPackage#getDocumentHash_Sha256()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='SHA-256'"
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DocumentHash#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

} // DocumentHash
