/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Planned Try</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One try of a technique: what it uses up, and the chance that it succeeds if all earlier ones failed, as counts.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.PlannedTry#getSuccesses <em>Successes</em>}</li>
 *   <li>{@link org.ferrule.model.PlannedTry#getFailures <em>Failures</em>}</li>
 *   <li>{@link org.ferrule.model.PlannedTry#getPrior <em>Prior</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getPlannedTry()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Try'"
 * @generated
 */
public interface PlannedTry extends Costed, Sourced
{
	/**
	 * Returns the value of the '<em><b>Successes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How often it succeeded in this laboratory.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Successes</em>' attribute.
	 * @see #isSetSuccesses()
	 * @see #unsetSuccesses()
	 * @see #setSuccesses(int)
	 * @see org.ferrule.model.ModelPackage#getPlannedTry_Successes()
	 * @model unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 least='0'"
	 * @generated
	 */
	int getSuccesses();

	/**
	 * Sets the value of the '{@link org.ferrule.model.PlannedTry#getSuccesses <em>Successes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Successes</em>' attribute.
	 * @see #isSetSuccesses()
	 * @see #unsetSuccesses()
	 * @see #getSuccesses()
	 * @generated
	 */
	void setSuccesses(int value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.PlannedTry#getSuccesses <em>Successes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetSuccesses()
	 * @see #getSuccesses()
	 * @see #setSuccesses(int)
	 * @generated
	 */
	void unsetSuccesses();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.PlannedTry#getSuccesses <em>Successes</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Successes</em>' attribute is set.
	 * @see #unsetSuccesses()
	 * @see #getSuccesses()
	 * @see #setSuccesses(int)
	 * @generated
	 */
	boolean isSetSuccesses();

	/**
	 * Returns the value of the '<em><b>Failures</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How often it failed in this laboratory.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Failures</em>' attribute.
	 * @see #isSetFailures()
	 * @see #unsetFailures()
	 * @see #setFailures(int)
	 * @see org.ferrule.model.ModelPackage#getPlannedTry_Failures()
	 * @model unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 least='0'"
	 * @generated
	 */
	int getFailures();

	/**
	 * Sets the value of the '{@link org.ferrule.model.PlannedTry#getFailures <em>Failures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Failures</em>' attribute.
	 * @see #isSetFailures()
	 * @see #unsetFailures()
	 * @see #getFailures()
	 * @generated
	 */
	void setFailures(int value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.PlannedTry#getFailures <em>Failures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetFailures()
	 * @see #getFailures()
	 * @see #setFailures(int)
	 * @generated
	 */
	void unsetFailures();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.PlannedTry#getFailures <em>Failures</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Failures</em>' attribute is set.
	 * @see #unsetFailures()
	 * @see #getFailures()
	 * @see #setFailures(int)
	 * @generated
	 */
	boolean isSetFailures();

	/**
	 * Returns the value of the '<em><b>Prior</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is assumed before any count.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Prior</em>' containment reference.
	 * @see #setPrior(Prior)
	 * @see org.ferrule.model.ModelPackage#getPlannedTry_Prior()
	 * @model containment="true" required="true"
	 * @generated
	 */
	Prior getPrior();

	/**
	 * Sets the value of the '{@link org.ferrule.model.PlannedTry#getPrior <em>Prior</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Prior</em>' containment reference.
	 * @see #getPrior()
	 * @generated
	 */
	void setPrior(Prior value);

} // PlannedTry
