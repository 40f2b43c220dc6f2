/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Signed Row</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The verdicts of one outer device: a letter for each column, f fits, c fits by claim, t tight, u unknown, b blocked.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.SignedRow#getOuter <em>Outer</em>}</li>
 *   <li>{@link org.ferrule.model.SignedRow#getIn <em>In</em>}</li>
 *   <li>{@link org.ferrule.model.SignedRow#getOut <em>Out</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getSignedRow()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Row'"
 * @generated
 */
public interface SignedRow extends Element
{
	/**
	 * Returns the value of the '<em><b>Outer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The row: path!id#lumen of the outer device.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outer</em>' attribute.
	 * @see #setOuter(String)
	 * @see org.ferrule.model.ModelPackage#getSignedRow_Outer()
	 * @model required="true"
	 * @generated
	 */
	String getOuter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SignedRow#getOuter <em>Outer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outer</em>' attribute.
	 * @see #getOuter()
	 * @generated
	 */
	void setOuter(String value);

	/**
	 * Returns the value of the '<em><b>In</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The verdicts going in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>In</em>' attribute.
	 * @see #setIn(String)
	 * @see org.ferrule.model.ModelPackage#getSignedRow_In()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Going in'"
	 * @generated
	 */
	String getIn();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SignedRow#getIn <em>In</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In</em>' attribute.
	 * @see #getIn()
	 * @generated
	 */
	void setIn(String value);

	/**
	 * Returns the value of the '<em><b>Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The verdicts coming out; left out where they are the same as those going in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Out</em>' attribute.
	 * @see #setOut(String)
	 * @see org.ferrule.model.ModelPackage#getSignedRow_Out()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Coming out'"
	 * @generated
	 */
	String getOut();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SignedRow#getOut <em>Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Out</em>' attribute.
	 * @see #getOut()
	 * @generated
	 */
	void setOut(String value);

} // SignedRow
