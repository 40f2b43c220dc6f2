/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Logged Attempt</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What was done: a set-up, or a try of a technique.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.LoggedAttempt#getMove <em>Move</em>}</li>
 *   <li>{@link org.ferrule.model.LoggedAttempt#getOutcome <em>Outcome</em>}</li>
 *   <li>{@link org.ferrule.model.LoggedAttempt#getUnits <em>Units</em>}</li>
 *   <li>{@link org.ferrule.model.LoggedAttempt#getRemark <em>Remark</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getLoggedAttempt()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Attempt'"
 * @generated
 */
public interface LoggedAttempt extends Costed
{
	/**
	 * Returns the value of the '<em><b>Move</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the technique or the set-up.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Move</em>' attribute.
	 * @see #setMove(String)
	 * @see org.ferrule.model.ModelPackage#getLoggedAttempt_Move()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 position='first' label='Technique or set-up'"
	 * @generated
	 */
	String getMove();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LoggedAttempt#getMove <em>Move</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Move</em>' attribute.
	 * @see #getMove()
	 * @generated
	 */
	void setMove(String value);

	/**
	 * Returns the value of the '<em><b>Outcome</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.AttemptOutcome}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How it ended; of a set-up, crossed means that it is in place.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outcome</em>' attribute.
	 * @see org.ferrule.model.AttemptOutcome
	 * @see #isSetOutcome()
	 * @see #unsetOutcome()
	 * @see #setOutcome(AttemptOutcome)
	 * @see org.ferrule.model.ModelPackage#getLoggedAttempt_Outcome()
	 * @model unsettable="true" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 position='after move'"
	 * @generated
	 */
	AttemptOutcome getOutcome();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LoggedAttempt#getOutcome <em>Outcome</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outcome</em>' attribute.
	 * @see org.ferrule.model.AttemptOutcome
	 * @see #isSetOutcome()
	 * @see #unsetOutcome()
	 * @see #getOutcome()
	 * @generated
	 */
	void setOutcome(AttemptOutcome value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.LoggedAttempt#getOutcome <em>Outcome</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetOutcome()
	 * @see #getOutcome()
	 * @see #setOutcome(AttemptOutcome)
	 * @generated
	 */
	void unsetOutcome();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.LoggedAttempt#getOutcome <em>Outcome</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Outcome</em>' attribute is set.
	 * @see #unsetOutcome()
	 * @see #getOutcome()
	 * @see #setOutcome(AttemptOutcome)
	 * @generated
	 */
	boolean isSetOutcome();

	/**
	 * Returns the value of the '<em><b>Units</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.UsedUnit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was taken from the shelf.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Units</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getLoggedAttempt_Units()
	 * @model containment="true"
	 * @generated
	 */
	EList<UsedUnit> getUnits();

	/**
	 * Returns the value of the '<em><b>Remark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In words, without anything that tells who the patient is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Remark</em>' attribute.
	 * @see #setRemark(String)
	 * @see org.ferrule.model.ModelPackage#getLoggedAttempt_Remark()
	 * @model
	 * @generated
	 */
	String getRemark();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LoggedAttempt#getRemark <em>Remark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remark</em>' attribute.
	 * @see #getRemark()
	 * @generated
	 */
	void setRemark(String value);

} // LoggedAttempt
