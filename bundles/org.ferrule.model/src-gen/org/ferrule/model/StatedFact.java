/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stated Fact</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What someone stated about a case.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.StatedFact#getFact <em>Fact</em>}</li>
 *   <li>{@link org.ferrule.model.StatedFact#isHolds <em>Holds</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getStatedFact()
 * @model
 * @generated
 */
public interface StatedFact extends Element
{
	/**
	 * Returns the value of the '<em><b>Fact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the fact, as the techniques name it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fact</em>' attribute.
	 * @see #setFact(String)
	 * @see org.ferrule.model.ModelPackage#getStatedFact_Fact()
	 * @model required="true"
	 * @generated
	 */
	String getFact();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StatedFact#getFact <em>Fact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fact</em>' attribute.
	 * @see #getFact()
	 * @generated
	 */
	void setFact(String value);

	/**
	 * Returns the value of the '<em><b>Holds</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it holds. Written even where it does not: not asked yet is another thing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Holds</em>' attribute.
	 * @see #isSetHolds()
	 * @see #unsetHolds()
	 * @see #setHolds(boolean)
	 * @see org.ferrule.model.ModelPackage#getStatedFact_Holds()
	 * @model unsettable="true" required="true"
	 * @generated
	 */
	boolean isHolds();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StatedFact#isHolds <em>Holds</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Holds</em>' attribute.
	 * @see #isSetHolds()
	 * @see #unsetHolds()
	 * @see #isHolds()
	 * @generated
	 */
	void setHolds(boolean value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.StatedFact#isHolds <em>Holds</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetHolds()
	 * @see #isHolds()
	 * @see #setHolds(boolean)
	 * @generated
	 */
	void unsetHolds();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.StatedFact#isHolds <em>Holds</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Holds</em>' attribute is set.
	 * @see #unsetHolds()
	 * @see #isHolds()
	 * @see #setHolds(boolean)
	 * @generated
	 */
	boolean isSetHolds();

} // StatedFact
