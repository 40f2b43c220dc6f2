/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fact</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A statement about a case that someone has to make, before a technique that needs it may be begun.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Fact#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.Fact#getWords <em>Words</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getFact()
 * @model
 * @generated
 */
public interface Fact extends Element
{
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name by which other elements of the document refer to it; unique among its kind.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.ferrule.model.ModelPackage#getFact_Id()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Fact#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Words</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The statement, as it is asked for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Words</em>' attribute.
	 * @see #setWords(String)
	 * @see org.ferrule.model.ModelPackage#getFact_Words()
	 * @model required="true"
	 * @generated
	 */
	String getWords();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Fact#getWords <em>Words</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Words</em>' attribute.
	 * @see #getWords()
	 * @generated
	 */
	void setWords(String value);

} // Fact
